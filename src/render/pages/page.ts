import type { Point } from '../../engine/index.ts';
import type { Primitive, SceneLayer } from '../scene.ts';

/**
 * A printed page as plain data: points of a seventy-second of an inch, x to the right, y down, the corner of the paper at the origin. The
 * screen, the printer and the PDF all show this.
 */
export interface Page {
  /** What the page is, in a few words; and what stands on it, for who cannot see it. */
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** In this order, later ones on top. */
  readonly marks: readonly PageMark[];
}

export type PageMark = PageText | PageRule | PageBox | PagePicture;

/** Ink is for what is read first, quiet for what stands beside it, paper for letters on an inked box. */
export type Tone = 'ink' | 'quiet' | 'paper';
export type Weight = 'regular' | 'bold';

/** One line of letters; `at` is where its baseline meets its anchor. */
export interface PageText {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  readonly tone: Tone;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface PageRule {
  readonly kind: 'rule';
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
  /** Dash and gap; a solid line when left out. */
  readonly dash?: readonly [number, number];
}

export interface PageBox {
  readonly kind: 'box';
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** `tint` is light enough for letters on it in grey print too. */
  readonly fill: 'none' | 'tint' | 'ink';
  /** Width of its edge; 0 for none. */
  readonly edge: number;
}

/** A scene of the field, drawn as large as fits into a rectangle, in its middle. */
export interface PagePicture {
  readonly kind: 'picture';
  readonly scene: SceneLayer;
  /** What is drawn pale under it, in the scene's own view: there for who looks, and out of the way of what counts. */
  readonly faded: readonly Primitive[];
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Paper that pages are laid out for. */
export const papers = {
  letter: { name: 'Letter', width: 612, height: 792 },
  a4: { name: 'A4', width: 595.28, height: 841.89 },
} as const;
export type PaperName = keyof typeof papers;

/** White round what is printed: what any printer can do without. Half an inch. */
export const pageMargin = 36;

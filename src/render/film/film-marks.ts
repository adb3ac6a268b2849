import type { Weight } from '../pages/page.ts';
import { palettes } from '../palettes.ts';

/** The colours of a film's words and of what lies behind them, #rrggbb: those of the workbench on paper. */
export const filmInks = {
  panel: '#fdfcf8',
  tint: '#e3ecf6',
  rule: '#cfd3ca',
  ink: palettes.paper.ink,
  quiet: '#4f5d57',
  chosen: palettes.paper.offense,
  onChosen: '#ffffff',
  onChosenQuiet: '#d5e0ec',
} as const;
export type FilmInk = keyof typeof filmInks;

/** What stands beside the field: px of the picture. */
export type FilmMark = FilmRect | FilmText;

export interface FilmRect {
  readonly kind: 'rect';
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly ink: FilmInk;
}

export interface FilmText {
  readonly kind: 'text';
  readonly text: string;
  /** Where the line begins, or ends with anchor `end`, and the height that it stands on. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: Weight;
  readonly ink: FilmInk;
  readonly anchor: 'start' | 'end';
}

export function rect(left: number, top: number, width: number, height: number, ink: FilmInk): FilmRect {
  return { kind: 'rect', left, top, width, height, ink };
}

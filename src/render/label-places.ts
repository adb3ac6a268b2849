import type { Point } from '../engine/index.ts';
import { distance } from './arrow.ts';
import { defaultDrawOptions } from './draw-scene.ts';
import type { Primitive, View } from './scene.ts';
import { pxPerYard as paperPxPerYard, svgStyles } from './svg-styles.ts';

export type TextMark = Extract<Primitive, { kind: 'text' }>;

/** Where a word may stand: the point at its middle height, and which end of the line is there. */
export type LabelPlace = Pick<TextMark, 'at' | 'anchor'>;

/** A word that belongs to a mark, and the places beside it, best first. */
export interface Label extends Pick<TextMark, 'style' | 'text'> {
  readonly places: readonly LabelPlace[];
}

/** Something that a label should not lie on: a disc, yards. */
export interface Obstacle {
  readonly at: Point;
  readonly radius: number;
}

/** What there is already where labels go. */
export interface LabelRoom {
  /** A label that the edge would cut is not written. */
  readonly view: View;
  /** Words that keep their places, such as the letters of the men: no label lies on one. */
  readonly fixed: readonly TextMark[];
  /** A label lies on one of these only where all its places do, and then on the least of it. */
  readonly obstacles: readonly Obstacle[];
  /** How large the picture is shown, > 0: no letter shrinks below what can be read, so that a small picture has room for fewer. */
  readonly pxPerYard: number;
}

/** The part of the picture that a word covers, yards. */
export interface LabelBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Width of a letter in heights of the font, on average, in the widest of the usual faces: "83 %" is the widest of what is written. */
const letterWidth = { bold: 0.66, plain: 0.58 };
/** Height of capitals, digits and their halo, in heights of the font. */
const lineHeight = 1;

/** What a word covers when a yard takes `pxPerYard` of the page. */
export function labelBox({ style, text, at, anchor }: Omit<TextMark, 'kind'>, pxPerYard: number): LabelBox {
  // Size and weight are the same in every palette.
  const { fontPx = 0, bold = false } = svgStyles.paper[style];
  const size = Math.max(fontPx / paperPxPerYard, defaultDrawOptions.leastFontPx / pxPerYard);
  const width = text.length * size * (bold ? letterWidth.bold : letterWidth.plain);
  const before = { start: 0, middle: 0.5, end: 1 }[anchor];
  const half = (size * lineHeight) / 2;
  // Both sides from the anchor, so that the mirrored word covers the mirrored box to the last bit.
  return {
    left: at.x - before * width,
    top: at.y - half,
    right: at.x + (1 - before) * width,
    bottom: at.y + half,
  };
}

/** Whether two words cover something together; those that only touch do not. */
export function overlaps(a: LabelBox, b: LabelBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/**
 * Gives each label the best of its places where it lies on no other word: the most important label comes first and chooses first. One that
 * finds no room is left out. The result is in the order of `labels`.
 */
export function placeLabels(labels: readonly Label[], room: LabelRoom): readonly TextMark[] {
  const taken = room.fixed.map((mark) => labelBox(mark, room.pxPerYard));
  return labels.flatMap(({ style, text, places }) => {
    const marks = places.map((place): TextMark => ({ kind: 'text', style, text, ...place }));
    const best = bestOf(marks, taken, room);
    if (best === undefined) return [];
    taken.push(labelBox(best, room.pxPerYard));
    return [best];
  });
}

/** Yards that a label keeps off a mark that is not its own, where it can: letters at the very edge of a circle read as part of it. */
const clearance = 0.25;
/** Yards of overlap that count as equal, so that the preferred place is kept whatever the last digit does. */
const equalOverlap = 0.01;

function bestOf(
  marks: readonly TextMark[],
  taken: readonly LabelBox[],
  { view, obstacles, pxPerYard }: LabelRoom,
): TextMark | undefined {
  let best: TextMark | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const mark of marks) {
    const box = labelBox(mark, pxPerYard);
    if (!isInside(box, view) || taken.some((other) => overlaps(box, other))) continue;
    const covered = obstacles.reduce(
      (sum, one) => sum + Math.max(0, one.radius + clearance - distanceTo(box, one.at)),
      0,
    );
    if (covered >= least - equalOverlap) continue;
    best = mark;
    least = covered;
  }
  return best;
}

function isInside({ left, top, right, bottom }: LabelBox, view: View): boolean {
  return left >= view.left && right <= view.left + view.width && top >= view.top && bottom <= view.top + view.height;
}

/** From a box to a point: 0 inside it. */
function distanceTo({ left, top, right, bottom }: LabelBox, { x, y }: Point): number {
  return distance({ x, y }, { x: Math.min(Math.max(x, left), right), y: Math.min(Math.max(y, top), bottom) });
}

/**
 * The eight places round a mark for a word in the middle of each, `side` to the left and right and `height` above and below, best first:
 * above, outward, inward, below, then the corners. Outward is away from the middle of the field, so that the mirrored picture has the mirrored places.
 */
export function placesRound({ x, y }: Point, side: number, height: number): readonly LabelPlace[] {
  const out = x < 0 ? -1 : 1;
  const near = { side: side * 0.87, height: height * 0.78 };
  const offsets = [
    { x: 0, y: -height },
    { x: out * side, y: 0 },
    { x: -out * side, y: 0 },
    { x: 0, y: height },
    { x: out * near.side, y: -near.height },
    { x: -out * near.side, y: -near.height },
    { x: out * near.side, y: near.height },
    { x: -out * near.side, y: near.height },
  ];
  return offsets.map((offset) => ({ at: { x: x + offset.x, y: y + offset.y }, anchor: 'middle' }));
}

import type { Point } from '../engine/index.ts';
import { distance } from './arrow.ts';
import { circle, type Primitive, polyline, text } from './scene.ts';

/** Radius of an attacker's circle, yd: larger than a man, so that two letters inside it read on a phone. */
export const attackerRadius = 1.05;
/** Half the width of a defender's cross, yd. */
export const crossHalf = 0.62;
/** Radius of the ball as drawn, yd. */
const ballRadius = 0.42;
const keeperHalf = 0.62;

/** An attacker: a circle, filled when he has the ball. His letters are drawn apart (`attackerLetters`). */
export function attackerDisc(at: Point, hasBall: boolean): Primitive {
  return circle(hasBall ? 'carrier' : 'attacker', at, attackerRadius);
}

/**
 * The spot that an attacker has, for the middle of his disc. To be drawn above the defenders: two bodies hardly ever stand closer than their
 * shoulders, so that letters on a cross leave its middle in sight, but a cross on letters may leave none to read.
 */
export function attackerLetters(at: Point, label: string, hasBall: boolean): Primitive {
  return text(hasBall ? 'carrierText' : 'attackerText', at, label.slice(0, 3));
}

/** A defender: a cross, with a light ring under it where lines meet. */
export function defenderMark(at: Point): readonly Primitive[] {
  const h = crossHalf;
  const strokes = (style: 'defender' | 'defenderHalo'): readonly Primitive[] => [
    ...polyline(style, [
      { x: at.x - h, y: at.y - h },
      { x: at.x + h, y: at.y + h },
    ]),
    ...polyline(style, [
      { x: at.x - h, y: at.y + h },
      { x: at.x + h, y: at.y - h },
    ]),
  ];
  return [...strokes('defenderHalo'), ...strokes('defender')];
}

/** The goalkeeper: a square with a G. */
export function keeperMark(at: Point): readonly Primitive[] {
  const h = keeperHalf;
  return [
    {
      kind: 'path',
      style: 'keeper',
      steps: [
        { kind: 'move', to: { x: at.x - h, y: at.y - h } },
        { kind: 'line', to: { x: at.x + h, y: at.y - h } },
        { kind: 'line', to: { x: at.x + h, y: at.y + h } },
        { kind: 'line', to: { x: at.x - h, y: at.y + h } },
        { kind: 'close' },
      ],
    },
    text('keeperText', at, 'G'),
  ];
}

export function ballMark(at: Point): Primitive {
  return circle('ball', at, ballRadius);
}

/** The ball in a man's hands: at the edge of his circle, toward the goal, so that it hides no letter. */
export function ballInHands(at: Point): Primitive {
  const far = Math.hypot(at.x, at.y);
  const toward = far === 0 ? { x: 0, y: -1 } : { x: -at.x / far, y: -at.y / far };
  const out = attackerRadius + ballRadius / 2;
  return ballMark({ x: at.x + toward.x * out, y: at.y + toward.y * out });
}

/** Something that a label must not lie on: a disc, yards. */
export interface Obstacle {
  readonly at: Point;
  readonly radius: number;
}

/** Where labels may go round their mark, best first; yards from the mark's middle. */
const labelOffsets: readonly Point[] = [
  { x: 0, y: -1.35 },
  { x: 1.45, y: 0 },
  { x: -1.45, y: 0 },
  { x: 0, y: 1.35 },
  { x: 1.25, y: -1.05 },
  { x: -1.25, y: -1.05 },
  { x: 1.25, y: 1.05 },
  { x: -1.25, y: 1.05 },
];
/** A label's own size, taken as a disc, yd. */
const labelRadius = 0.75;

/**
 * One place for each label beside its mark, clear of marks and of labels already placed as far as eight places allow.
 * Greedy in the order given: on a crowded crease the first ones get the better places.
 */
export function placeLabels(marks: readonly Point[], obstacles: readonly Obstacle[]): readonly Point[] {
  const taken: Obstacle[] = [...obstacles];
  return marks.map((mark) => {
    let best = mark;
    let bestOverlap = Number.POSITIVE_INFINITY;
    for (const offset of labelOffsets) {
      const at = { x: mark.x + offset.x, y: mark.y + offset.y };
      const overlap = overlapOf(at, taken);
      // A hundredth of a yard: equal places keep the preferred order, whatever the last digit does.
      if (overlap < bestOverlap - 0.01) {
        best = at;
        bestOverlap = overlap;
      }
    }
    taken.push({ at: best, radius: labelRadius });
    return best;
  });
}

function overlapOf(at: Point, taken: readonly Obstacle[]): number {
  return taken.reduce((sum, one) => sum + Math.max(0, one.radius + labelRadius - distance(at, one.at)), 0);
}

import type { Point } from '../engine/index.ts';
import { circle, type Primitive, polyline, text } from './scene.ts';

/** How large the marks of people and ball are drawn, yd. */
export interface MarkSizes {
  /** Radius of an attacker's circle. */
  readonly attacker: number;
  /** Half the width of a defender's cross, and of the keeper's square. */
  readonly cross: number;
  readonly keeper: number;
  /** Radius of the ball. */
  readonly ball: number;
}

/** Larger than a man, so that two letters inside the circle read on a phone. */
export const usualSizes: MarkSizes = { attacker: 1.05, cross: 0.62, keeper: 0.62, ball: 0.42 };
/** For a field as small as a stamp: 150 px wide, a circle is 16 px across. */
export const stampSizes: MarkSizes = { attacker: 1.75, cross: 1.2, keeper: 1.1, ball: 0.85 };

export const attackerRadius = usualSizes.attacker;
export const crossHalf = usualSizes.cross;

/** An attacker: a circle, filled when he has the ball. His letters are drawn apart (`attackerLetters`). */
export function attackerDisc(at: Point, hasBall: boolean, { attacker }: MarkSizes = usualSizes): Primitive {
  return circle(hasBall ? 'carrier' : 'attacker', at, attacker);
}

/**
 * The spot that an attacker has, for the middle of his disc. To be drawn above the defenders: two bodies hardly ever stand closer than their
 * shoulders, so that letters on a cross leave its middle in sight, but a cross on letters may leave none to read.
 */
export function attackerLetters(at: Point, label: string, hasBall: boolean): Primitive {
  return text(hasBall ? 'carrierText' : 'attackerText', at, label.slice(0, 3));
}

/** A defender: a cross, with a light ring under it where lines meet. */
export function defenderMark(at: Point, { cross: h }: MarkSizes = usualSizes): readonly Primitive[] {
  return [...crossStrokes('defenderHalo', at, h), ...crossStrokes('defender', at, h)];
}

/** The same in two sheets, all rings under all crosses: for a screen, where each change of style costs time. */
export function defenderMarks(men: readonly Point[], { cross }: MarkSizes): readonly Primitive[] {
  return [
    ...men.flatMap((at) => crossStrokes('defenderHalo', at, cross)),
    ...men.flatMap((at) => crossStrokes('defender', at, cross)),
  ];
}

function crossStrokes(style: 'defender' | 'defenderHalo', { x, y }: Point, h: number): readonly Primitive[] {
  return [
    ...polyline(style, [
      { x: x - h, y: y - h },
      { x: x + h, y: y + h },
    ]),
    ...polyline(style, [
      { x: x - h, y: y + h },
      { x: x + h, y: y - h },
    ]),
  ];
}

/** The goalkeeper: a square, with a G where there is room for it. */
export function keeperMark(at: Point, { keeper: h }: MarkSizes = usualSizes, letter = 'G'): readonly Primitive[] {
  const square: Primitive = {
    kind: 'path',
    style: 'keeper',
    steps: [
      { kind: 'move', to: { x: at.x - h, y: at.y - h } },
      { kind: 'line', to: { x: at.x + h, y: at.y - h } },
      { kind: 'line', to: { x: at.x + h, y: at.y + h } },
      { kind: 'line', to: { x: at.x - h, y: at.y + h } },
      { kind: 'close' },
    ],
  };
  return letter === '' ? [square] : [square, text('keeperText', at, letter)];
}

export function ballMark(at: Point, { ball }: MarkSizes = usualSizes): Primitive {
  return circle('ball', at, ball);
}

/** The ball in a man's hands: at the edge of his circle, toward the goal, so that it hides no letter. */
export function ballInHands(at: Point, sizes: MarkSizes = usualSizes): Primitive {
  const far = Math.hypot(at.x, at.y);
  const toward = far === 0 ? { x: 0, y: -1 } : { x: -at.x / far, y: -at.y / far };
  const out = sizes.attacker + sizes.ball / 2;
  return ballMark({ x: at.x + toward.x * out, y: at.y + toward.y * out }, sizes);
}

import type { Point } from '../engine/index.ts';
import { type PathStep, type Primitive, polygon, polyline, type StyleName } from './scene.ts';

/** Length and half width of an arrow's head, yd: large enough to read on a phone. */
const headLength = 1.05;
const headHalfWidth = 0.5;
/** One wave of a carry's zigzag and its height to either side, yd. */
const zigzagWave = 1.05;
const zigzagHeight = 0.45;
/** Straight stretch before the head of a zigzag, yd: the head then shows where the run really goes. */
const zigzagTail = 0.9;
/** Of a line that is too short for that, this much at most; a shorter one than the second number has no room for a wave, yd. */
const tailShare = 0.3;
const shortestZigzag = 0.35;
/** Shorter lines than this draw nothing, yd: there is no room for a head. */
const shortest = 0.4;

/** A smooth line through the points with a head at the end. The first and last points are where line and head really end. */
export function curvedArrow(style: StyleName, headStyle: StyleName, points: readonly Point[]): readonly Primitive[] {
  if (pathLength(points) < shortest) return [];
  const shaft = trimEnd(points, headLength * 0.8);
  return [{ kind: 'path', style, steps: smoothSteps(shaft) }, arrowHead(headStyle, points)];
}

export function straightArrow(style: StyleName, headStyle: StyleName, from: Point, to: Point): readonly Primitive[] {
  return curvedArrow(style, headStyle, [from, to]);
}

/** The trade's sign for running with the ball: a zigzag with a straight end and a head. */
export function zigzagArrow(style: StyleName, headStyle: StyleName, points: readonly Point[]): readonly Primitive[] {
  if (pathLength(points) < shortest) return [];
  const shaft = trimEnd(points, headLength * 0.8);
  return [...polyline(style, zigzag(shaft)), arrowHead(headStyle, points)];
}

/** A line that ends in a bar across it: the trade's sign for a pick. */
export function barArrow(style: StyleName, points: readonly Point[], halfBar: number): readonly Primitive[] {
  const end = points.at(-1);
  if (end === undefined || pathLength(points) < shortest) return [];
  const along = endDirection(points);
  const bar = [
    { x: end.x - along.y * halfBar, y: end.y + along.x * halfBar },
    { x: end.x + along.y * halfBar, y: end.y - along.x * halfBar },
  ];
  return [{ kind: 'path', style, steps: smoothSteps(points) }, ...polyline(style, bar)];
}

/** Two parallel lines and a head: a shot, told from a pass without colour. */
export function doubleArrow(style: StyleName, headStyle: StyleName, from: Point, to: Point): readonly Primitive[] {
  const length = distance(from, to);
  if (length < shortest) return [];
  const gap = 0.16;
  const end = along(to, from, headLength * 0.8);
  const side = { x: ((to.y - from.y) / length) * gap, y: (-(to.x - from.x) / length) * gap };
  const shaft = (sign: number): readonly Primitive[] =>
    polyline(style, [
      { x: from.x + sign * side.x, y: from.y + sign * side.y },
      { x: end.x + sign * side.x, y: end.y + sign * side.y },
    ]);
  return [...shaft(1), ...shaft(-1), arrowHead(headStyle, [from, to])];
}

/** The points with `gap` yd cut off the front. Returns no points when nothing is left. */
export function trimStart(points: readonly Point[], gap: number): readonly Point[] {
  return [...trimEnd([...points].reverse(), gap)].reverse();
}

/** The points with `gap` yd cut off the end. Returns no points when nothing is left. */
export function trimEnd(points: readonly Point[], gap: number): readonly Point[] {
  let left = gap;
  for (let last = points.length - 1; last > 0; last -= 1) {
    const end = points[last]!;
    const before = points[last - 1]!;
    const piece = distance(before, end);
    if (piece > left) return [...points.slice(0, last), along(end, before, left)];
    left -= piece;
  }
  return [];
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The point `length` yd from `from` toward `to`; `from` itself when the two are one. */
export function along(from: Point, to: Point, length: number): Point {
  const whole = distance(from, to);
  if (whole === 0) return from;
  const share = length / whole;
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

export function pathLength(points: readonly Point[]): number {
  let sum = 0;
  for (let index = 1; index < points.length; index += 1) sum += distance(points[index - 1]!, points[index]!);
  return sum;
}

/** A smooth curve through every point: a Catmull-Rom spline written as cubic pieces, tangent a sixth of the chord between neighbours. */
export function smoothSteps(points: readonly Point[]): readonly PathStep[] {
  if (points.length === 0) return [];
  const steps: PathStep[] = [{ kind: 'move', to: points[0]! }];
  if (points.length === 2) return [...steps, { kind: 'line', to: points[1]! }];
  for (let index = 1; index < points.length; index += 1) {
    const before = points[Math.max(0, index - 2)]!;
    const start = points[index - 1]!;
    const end = points[index]!;
    const after = points[Math.min(points.length - 1, index + 1)]!;
    steps.push({
      kind: 'curve',
      control1: { x: start.x + (end.x - before.x) / 6, y: start.y + (end.y - before.y) / 6 },
      control2: { x: end.x - (after.x - start.x) / 6, y: end.y - (after.y - start.y) / 6 },
      to: end,
    });
  }
  return steps;
}

function arrowHead(style: StyleName, points: readonly Point[]): Primitive {
  const tip = points.at(-1)!;
  const dir = endDirection(points);
  const foot = { x: tip.x - dir.x * headLength, y: tip.y - dir.y * headLength };
  return polygon(style, [
    tip,
    { x: foot.x - dir.y * headHalfWidth, y: foot.y + dir.x * headHalfWidth },
    { x: foot.x + dir.y * headHalfWidth, y: foot.y - dir.x * headHalfWidth },
  ]);
}

// Taken over the head's own length, so that a short last piece does not turn the head away from the run.
function endDirection(points: readonly Point[]): Point {
  const tip = points.at(-1)!;
  const foot = trimEnd(points, headLength).at(-1) ?? points[0]!;
  const length = distance(foot, tip);
  return length === 0 ? { x: 0, y: -1 } : { x: (tip.x - foot.x) / length, y: (tip.y - foot.y) / length };
}

function zigzag(points: readonly Point[]): readonly Point[] {
  const length = pathLength(points);
  if (length < shortestZigzag) return points;
  // A short carry has one wave, as small as it must be: a straight line would say that he runs without the ball.
  const tail = Math.min(zigzagTail, length * tailShare);
  const waves = Math.max(1, Math.floor((length - tail) / zigzagWave));
  const wave = (length - tail) / waves;
  const height = Math.min(zigzagHeight, (zigzagHeight / zigzagWave) * wave);
  const out: Point[] = [points[0]!];
  for (let half = 0; half < waves * 2; half += 1) {
    const { at, direction } = pointAlong(points, (half + 0.5) * (wave / 2));
    const side = half % 2 === 0 ? height : -height;
    out.push({ x: at.x - direction.y * side, y: at.y + direction.x * side });
  }
  out.push(pointAlong(points, waves * wave).at, points.at(-1)!);
  return out;
}

function pointAlong(points: readonly Point[], length: number): { readonly at: Point; readonly direction: Point } {
  let left = length;
  for (let index = 1; index < points.length; index += 1) {
    const start = points[index - 1]!;
    const end = points[index]!;
    const piece = distance(start, end);
    if (piece > 0 && (left <= piece || index === points.length - 1)) {
      const direction = { x: (end.x - start.x) / piece, y: (end.y - start.y) / piece };
      return { at: { x: start.x + direction.x * left, y: start.y + direction.y * left }, direction };
    }
    left -= piece;
  }
  return { at: points.at(-1)!, direction: { x: 0, y: -1 } };
}

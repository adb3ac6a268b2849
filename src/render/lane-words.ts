import type { Point, Trace } from '../engine/index.ts';
import { along, distance } from './arrow.ts';
import { frameAt } from './trace-frame.ts';
import { defenderName, type TraceNames } from './trace-names.ts';

/** How far from the ball's line a defender must be for the lane to be called empty, yd: a man's arm and a long stick. */
export const emptyLane = 2.5;

/** The man on the ball is no obstacle in the lane before the ball has come this far, yd: it leaves beside or above him. */
const clearOfPasser = 2.5;

/** What is said of a lane that no defender is near. */
export const clearLane = 'nobody in the lane';

/** Who stands in the lane of a pass as it is thrown: "nobody in the lane", or the nearest man and how far off it he is. */
export function laneWords(trace: Trace, time: number, from: number, to: number, names: TraceNames): string {
  const frame = frameAt(trace, time);
  const start = frame.offense[from];
  const end = frame.offense[to];
  if (start === undefined || end === undefined) return 'nobody to throw to';
  const release = along(start, end, Math.min(clearOfPasser, distance(start, end)));
  const offs = frame.defense.map((at) => distanceToSegment(at, release, end));
  const nearest = offs.reduce((best, off, index) => (off < offs[best]! ? index : best), 0);
  const off = offs[nearest];
  if (off === undefined || off > emptyLane) return clearLane;
  if (off < 0.75) return `${defenderName(names, nearest)} stands in the lane`;
  return `${defenderName(names, nearest)} is ${yards(off)} off the lane`;
}

/** The nearest defender to an attacker: "ll is 1.4 yd away", or "nobody within 5 yd". */
export function roomWords(trace: Trace, time: number, who: number, names: TraceNames): string {
  const frame = frameAt(trace, time);
  const at = frame.offense[who];
  if (at === undefined) return 'nobody is near';
  const offs = frame.defense.map((one) => distance(one, at));
  const nearest = offs.reduce((best, off, index) => (off < offs[best]! ? index : best), 0);
  const off = offs[nearest];
  if (off === undefined || off > 5) return 'nobody within 5 yd';
  return `${defenderName(names, nearest)} is ${yards(off)} away`;
}

/** Yards to one decimal with their unit: "1.4 yd". */
export function yards(value: number): string {
  return `${(Math.round(value * 10) / 10 + 0).toFixed(1)} yd`;
}

/** Distance from a point to a stretch of straight line, yd; a stretch without length is a point. */
export function distanceToSegment(at: Point, start: Point, end: Point): number {
  const dx = end.x - start.x;
  const dy = end.y - start.y;
  const square = dx * dx + dy * dy;
  if (square === 0) return distance(at, start);
  const share = Math.min(1, Math.max(0, ((at.x - start.x) * dx + (at.y - start.y) * dy) / square));
  return distance(at, { x: start.x + share * dx, y: start.y + share * dy });
}

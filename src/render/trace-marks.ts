import type { Point, Trace, TraceEvent } from '../engine/index.ts';
import { along, distance } from './arrow.ts';
import {
  attackerDisc,
  attackerLetters,
  attackerRadius,
  ballInHands,
  ballMark,
  crossHalf,
  type MarkSizes,
  usualSizes,
} from './people-marks.ts';
import { circle, line, type Primitive, polygon, polyline, type View } from './scene.ts';
import { agentPath, ballPath, type DutyFrame, type TraceFrame } from './trace-frame.ts';
import { attackerName, type TraceNames } from './trace-names.ts';

/** The penalized man waits at the scorer's table until he is released: he is no part of the picture before. */
export function withoutAbsent(frame: TraceFrame, trace: Trace, names: TraceNames): TraceFrame {
  const released = trace.events.some((event) => event.kind === 'released' && event.time <= frame.time);
  if (released) return frame;
  const present = names.defense.length;
  return { ...frame, defense: frame.defense.slice(0, present), duties: frame.duties.slice(0, present) };
}

export function reachMark(at: Point, radius: number | undefined): readonly Primitive[] {
  return radius === undefined ? [] : [circle('reach', at, radius)];
}

export function trails(trace: Trace, time: number, length: number): readonly Primitive[] {
  const runners = trace.agents - 1;
  return Array.from({ length: runners }, (_, agent) => agentPath(trace, agent, time - length, time))
    .filter((path) => path.length > 1 && distance(path[0]!, path.at(-1)!) > attackerRadius)
    .flatMap((path) => polyline('trail', path));
}

/**
 * Flights are dashed, as on paper; the newest one stronger than those before it. `head` is where the ball is between two frames, for a flight
 * that is not over: on a screen the line must not lag behind it.
 */
export function ballMarks(trace: Trace, time: number, length: number, head?: Point): readonly Primitive[] {
  const flights = flightsBetween(trace, time - length, time);
  return flights.flatMap(({ from, to, shot }, index) => {
    const points = ballPath(trace, from, to);
    const newest = index === flights.length - 1;
    const whole = newest && head !== undefined && to === time ? [...points, { x: head.x, y: head.y }] : points;
    return polyline(shot ? 'shot' : newest ? 'pass' : 'passPast', whole);
  });
}

/** The ball in the air, seconds. */
export interface Flight {
  readonly from: number;
  readonly to: number;
  readonly shot: boolean;
}

/** Passes and shots that are in the air at some time from `from` to `to`, each cut to it. */
export function flightsBetween(trace: Trace, from: number, to: number): readonly Flight[] {
  const flights: Flight[] = [];
  for (const [index, event] of trace.events.entries()) {
    if (event.time >= to) break;
    if (event.kind !== 'pass' && event.kind !== 'shot') continue;
    const end = Math.min(landingAfter(trace.events, index) ?? to, to);
    if (end > from) flights.push({ from: Math.max(event.time, from), to: end, shot: event.kind === 'shot' });
  }
  return flights;
}

function landingAfter(events: readonly TraceEvent[], index: number): number | undefined {
  for (let later = index + 1; later < events.length; later += 1)
    if (landingKinds.has(events[later]!.kind)) return events[later]!.time;
  return undefined;
}

const landingKinds: ReadonlySet<TraceEvent['kind']> = new Set<TraceEvent['kind']>([
  'catch',
  'dropped',
  'intercepted',
  'deflected',
  'badPass',
  'goal',
  'save',
  'pipe',
  'wide',
  'blocked',
  'turnover',
]);

export function dutyMarks(one: DutyFrame, defender: number, frame: TraceFrame): readonly Primitive[] {
  const at = frame.defense[defender]!;
  const first = frame.offense[one.a];
  const second = frame.offense[one.b];
  if (first === undefined) return [];
  if (one.duty === 'lane') return dutyLine('duty', at, middle(first, frame.ball), 0);
  const style = one.duty === 'lock' || one.duty === 'ball' ? 'dutyLock' : 'duty';
  const toFirst = dutyLine(style, at, first, attackerRadius);
  return one.duty === 'split' && second !== undefined
    ? [...toFirst, ...dutyLine('duty', at, second, attackerRadius)]
    : toFirst;
}

function dutyLine(style: 'duty' | 'dutyLock', from: Point, to: Point, gap: number): readonly Primitive[] {
  const start = crossHalf * 1.6;
  if (distance(from, to) < start + gap + 0.2) return [];
  return [line(style, along(from, to, start), along(to, from, gap))];
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** The attackers' circles, filled for the man who has the ball; one beyond the view stands at its edge. */
export function attackerDiscs(frame: TraceFrame, view: View, sizes: MarkSizes = usualSizes): readonly Primitive[] {
  return frame.offense.flatMap((at, index) => discInView(at, index === holderOf(frame), view, sizes));
}

/** Their spots, to be drawn above the defenders. */
export function attackerWords(frame: TraceFrame, names: TraceNames, view: View): readonly Primitive[] {
  return frame.offense.map((at, index) =>
    attackerLetters(clampInto(view, at), attackerName(names, index), index === holderOf(frame)),
  );
}

/** In hands, and while it leaves them or comes into them, the ball is drawn at the circle's edge, clear of the letters. */
export function ballInFlightOrHands(frame: TraceFrame, view: View, sizes: MarkSizes = usualSizes): Primitive {
  const near = frame.offense[holderOf(frame)] ?? frame.offense.find((at) => distance(at, frame.ball) < sizes.attacker);
  return near === undefined ? ballMark(frame.ball, sizes) : ballInHands(clampInto(view, near), sizes);
}

function holderOf({ holder }: TraceFrame): number {
  return holder.kind === 'attacker' ? holder.index : -1;
}

/** How far inside the view's edge a man is drawn who stands beyond it, yd: room for his circle and the arrow beside it. */
const edgeRoom = 1.9;

// A man who restarts far out is drawn at the edge, with an arrow that says that he is farther away.
function discInView(at: Point, hasBall: boolean, view: View, sizes: MarkSizes): readonly Primitive[] {
  const shown = clampInto(view, at);
  const disc = attackerDisc(shown, hasBall, sizes);
  if (distance(shown, at) < 1e-9) return [disc];
  const [foot, tip] = [along(shown, at, sizes.attacker + 0.15), along(shown, at, sizes.attacker + 0.7)];
  const side = { x: (tip.y - foot.y) * 0.8, y: (foot.x - tip.x) * 0.8 };
  const corners = [tip, { x: foot.x + side.x, y: foot.y + side.y }, { x: foot.x - side.x, y: foot.y - side.y }];
  return [disc, polygon('beyond', corners)];
}

export function clampInto(view: View, at: Point): Point {
  const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
  return {
    x: clamp(at.x, view.left + edgeRoom, view.left + view.width - edgeRoom),
    y: clamp(at.y, view.top + edgeRoom, view.top + view.height - edgeRoom),
  };
}

import type { LookWindow, Point, Trace, TraceEvent, WeighedMoments } from '../engine/index.ts';
import { along, distance } from './arrow.ts';
import { percent } from './number-text.ts';
import type { MarkSizes } from './people-marks.ts';
import { circle, line, type Primitive, text, type View } from './scene.ts';
import type { TraceFrame } from './trace-frame.ts';
import type { TraceNames } from './trace-names.ts';

/** The lane from the carrier to one mate at one moment. */
export interface LaneOdds {
  /** Offense index of the mate. */
  readonly to: number;
  /** Odds that a pass thrown now arrives and is caught, 0 to 1. */
  readonly completion: number;
}

/** Somebody who is open at one moment. */
export interface OpenMan {
  /** Offense index. */
  readonly who: number;
  /** What is written beside him: "open". */
  readonly word: string;
}

/** From these odds on a lane is drawn heavy; below one half it is dashed. */
export const sureLane = 0.8;
export const evenLane = 0.5;

/** Where the play's own clock begins: the first beat, s after the whistle; `undefined` when none began. */
export function firstBeatAt({ events }: Trace): number | undefined {
  return events.find((event) => event.kind === 'beat')?.time;
}

/** Who is open at `time` (s after the first beat), by the windows of one trial; each man once. */
export function openMenAt(windows: readonly LookWindow[], trial: number, time: number): readonly OpenMan[] {
  const open = new Map<number, OpenMan>();
  for (const window of windows) {
    if (window.trial !== trial || time < window.opens || time > window.closes) continue;
    open.set(window.to, { who: window.to, word: window.kind === 'shot' ? 'free' : 'open' });
  }
  return [...open.values()];
}

/** What was weighed this long ago is no longer how it is, s: the carrier's choices are weighed several times a second. */
const weighedFor = 0.3;

/** The lanes of `holder` (an offense index) at `time` of the trace, by what was weighed last; none while another man has the ball. */
export function lanesAt(
  { time_byMoment, hand_byMoment, completion_byMate }: WeighedMoments,
  time: number,
  holder: number,
): readonly LaneOdds[] {
  const moment = lastAt(time_byMoment, time);
  if (moment < 0 || hand_byMoment[moment] !== holder || time - time_byMoment[moment]! > weighedFor) return [];
  const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== holder);
  return mates.map((to) => ({ to, completion: completion_byMate[moment * 6 + to]! }));
}

/** Index of the last of `times` (rising) that is not after `time`; -1 when all are. */
function lastAt(times: ArrayLike<number>, time: number): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= time) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The lanes from the man who has the ball: the surer the heavier, dashed where fewer than half arrive, with the odds at the mate's end. */
export function laneMarks(frame: TraceFrame, lanes: readonly LaneOdds[], sizes: MarkSizes): readonly Primitive[] {
  const from = frame.holder.kind === 'attacker' ? frame.offense[frame.holder.index] : undefined;
  if (from === undefined) return [];
  const drawn = lanes.flatMap(({ to, completion }) => {
    const mate = frame.offense[to];
    if (mate === undefined || distance(from, mate) < 2 * sizes.attacker + 0.5) return [];
    const [start, end] = [along(from, mate, sizes.attacker), along(mate, from, sizes.attacker + 0.15)];
    const mark = line(laneStyle(completion), start, end);
    const odds = text('laneText', clearPlace(frame, end, start), percent(Math.min(completion, 0.99)));
    return [{ mark, odds }];
  });
  // All lines under all figures.
  return [...drawn.map(({ mark }) => mark), ...drawn.map(({ odds }) => odds)];
}

/** How far from the mate's end of his lane its odds may be written, nearest first, yd. */
const oddsPlaces = [1.4, 2.4, 3.4, 4.4, 5.4];
/** Room that the odds need from the middle of a defender, yd: his cross and half of "83 %". */
const oddsRoom = 1.7;

/** The place nearest to the mate that no cross covers; half way along a lane too short for any. */
function clearPlace({ defense }: TraceFrame, end: Point, start: Point): Point {
  const half = distance(start, end) / 2;
  const places = oddsPlaces.filter((from) => from <= half * 1.6).map((from) => along(end, start, from));
  const isClear = (at: Point): boolean => defense.every((man) => distance(man, at) >= oddsRoom);
  return places.find(isClear) ?? places[0] ?? along(end, start, half);
}

// By the whole percent that is written beside it, so that the line never says other than the figure.
function laneStyle(completion: number): 'laneSure' | 'laneFair' | 'laneUnder' {
  const shown = Math.round(completion * 100) / 100;
  if (shown >= sureLane) return 'laneSure';
  return shown >= evenLane ? 'laneFair' : 'laneUnder';
}

/** Radius of the ring round an open man, in radii of his circle. */
const openRing = 1.35;

/** A ring round each man who is open; the word is drawn apart (`openWords`), above the crosses. */
export function openRings(frame: TraceFrame, open: readonly OpenMan[], sizes: MarkSizes): readonly Primitive[] {
  return open.flatMap(({ who }) => {
    const at = frame.offense[who];
    return at === undefined ? [] : [circle('openRing', at, sizes.attacker * openRing)];
  });
}

export function openWords(frame: TraceFrame, open: readonly OpenMan[], sizes: MarkSizes): readonly Primitive[] {
  return open.flatMap(({ who, word }) => {
    const at = frame.offense[who];
    return at === undefined ? [] : [text('openText', { x: at.x, y: at.y + sizes.attacker * openRing + 0.6 }, word)];
  });
}

/** How long a read is shown after it was taken, s. */
const readShown = 1.2;

/** The taught read that has just been taken, if any. */
export function readAt(trace: Trace, time: number): Extract<TraceEvent, { kind: 'read' }> | undefined {
  for (let index = trace.events.length - 1; index >= 0; index -= 1) {
    const event = trace.events[index]!;
    if (event.time > time || event.kind !== 'read') continue;
    return event.time > time - readShown ? event : undefined;
  }
  return undefined;
}

/** A ring round the man who saw his read, and the read as it is taught. */
export function readMarks(
  trace: Trace,
  frame: TraceFrame,
  names: TraceNames,
  sizes: MarkSizes,
  view: View,
  inWords: boolean,
): readonly Primitive[] {
  const event = readAt(trace, frame.time);
  const at = event === undefined ? undefined : frame.offense[event.who];
  if (event === undefined || at === undefined) return [];
  const ring = circle('readRing', at, sizes.attacker * 1.25);
  const read = (event.lastTen ? names.lastTenReads : names.reads)[event.read];
  if (!inWords || read === undefined) return [ring];
  // On the side where there is room for it.
  const right = at.x < view.left + view.width / 2;
  const x = at.x + (right ? 1 : -1) * (sizes.attacker * 1.25 + 0.3);
  return [ring, text('readText', { x, y: at.y - sizes.attacker - 0.35 }, `read: ${read}`, right ? 'start' : 'end')];
}

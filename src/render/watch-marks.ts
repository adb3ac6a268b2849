import type { LookWindow, Point, Trace, TraceEvent, WeighedMoments } from '../engine/index.ts';
import { along, distance } from './arrow.ts';
import type { Label, LabelPlace } from './label-places.ts';
import { percent } from './number-text.ts';
import type { MarkSizes } from './people-marks.ts';
import { circle, line, type Primitive } from './scene.ts';
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

/** The lanes from the man who has the ball: the surer the heavier, dashed where fewer than half arrive. */
export function laneLines(frame: TraceFrame, lanes: readonly LaneOdds[], sizes: MarkSizes): readonly Primitive[] {
  return drawnLanes(frame, lanes, sizes).map(({ completion, start, end }) => line(laneStyle(completion), start, end));
}

/** The odds of each lane, written on it. */
export function laneLabels(frame: TraceFrame, lanes: readonly LaneOdds[], sizes: MarkSizes): readonly Label[] {
  return drawnLanes(frame, lanes, sizes).map(({ completion, start, end }) => ({
    style: 'laneText',
    text: percent(Math.min(completion, 0.99)),
    places: placesAlong(start, end).filter(({ at }) => isOffCrosses(at, frame)),
  }));
}

interface DrawnLane {
  readonly completion: number;
  /** At the circles' edges. */
  readonly start: Point;
  readonly end: Point;
}

function drawnLanes(frame: TraceFrame, lanes: readonly LaneOdds[], sizes: MarkSizes): readonly DrawnLane[] {
  const from = frame.holder.kind === 'attacker' ? frame.offense[frame.holder.index] : undefined;
  if (from === undefined) return [];
  return lanes.flatMap(({ to, completion }) => {
    const mate = frame.offense[to];
    if (mate === undefined || distance(from, mate) < 2 * sizes.attacker + 0.5) return [];
    return [{ completion, start: along(from, mate, sizes.attacker), end: along(mate, from, sizes.attacker + 0.15) }];
  });
}

/** How far from the mate's end of his lane its odds are best written, how far from either end at least, and how far on the next place is, yd. */
const oddsFromMate = 1.4;
const oddsFromEnd = 0.8;
const oddsStep = 0.5;
/** From the middle of a cross to that of the odds, yd: under one they cannot be read, and are left out. */
const oddsFromCross = 1.25;

function isOffCrosses(at: Point, { defense }: TraceFrame): boolean {
  return defense.every((man) => distance(man, at) >= oddsFromCross);
}

/** From the place that is best toward the man with the ball; half way along a lane too short for any. */
function placesAlong(start: Point, end: Point): readonly LabelPlace[] {
  const length = distance(start, end);
  const count = Math.floor((length - oddsFromEnd - oddsFromMate) / oddsStep) + 1;
  const ways = count < 1 ? [length / 2] : Array.from({ length: count }, (_, index) => oddsFromMate + index * oddsStep);
  return ways.map((way) => ({ at: along(end, start, way), anchor: 'middle' }));
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

/** What is said of each open man, below his ring or else on another side of it. */
export function openLabels(frame: TraceFrame, open: readonly OpenMan[], sizes: MarkSizes): readonly Label[] {
  const off = sizes.attacker * openRing;
  return open.flatMap(({ who, word }) => {
    const at = frame.offense[who];
    if (at === undefined) return [];
    return [
      {
        style: 'openText' as const,
        text: word,
        places: [...placesAcross(at, off + 0.6), ...placesBeside(at, off + 0.3)],
      },
    ];
  });
}

function placesAcross({ x, y }: Point, height: number): readonly LabelPlace[] {
  return [height, -height].map((up) => ({ at: { x, y: y + up }, anchor: 'middle' }));
}

/** Outward first, so that the mirrored picture has the mirrored places. */
function placesBeside({ x, y }: Point, side: number): readonly LabelPlace[] {
  const left: LabelPlace = { at: { x: x - side, y }, anchor: 'end' };
  const right: LabelPlace = { at: { x: x + side, y }, anchor: 'start' };
  return x < 0 ? [left, right] : [right, left];
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

/** Radius of the ring round the man who saw his read, in radii of his circle. */
const readRing = 1.25;

/** A ring round the man who saw his read. */
export function readRings(trace: Trace, frame: TraceFrame, sizes: MarkSizes): readonly Primitive[] {
  const at = frame.offense[readAt(trace, frame.time)?.who ?? -1];
  return at === undefined ? [] : [circle('readRing', at, sizes.attacker * readRing)];
}

/** The read as it is taught, beside the man who saw it. */
export function readLabels(trace: Trace, frame: TraceFrame, names: TraceNames, sizes: MarkSizes): readonly Label[] {
  const event = readAt(trace, frame.time);
  const at = frame.offense[event?.who ?? -1];
  if (event === undefined || at === undefined) return [];
  const read = (event.lastTen ? names.lastTenReads : names.reads)[event.read];
  if (read === undefined) return [];
  const side = sizes.attacker * readRing + 0.3;
  const height = sizes.attacker + 0.35;
  // Toward the middle of the field, where there is room for it.
  const inward = (up: number): readonly LabelPlace[] => [...placesBeside({ x: at.x, y: at.y + up }, side)].reverse();
  const places = [...inward(-height), ...inward(height), ...placesAcross(at, -side - 0.5), ...inward(0)];
  return [{ style: 'readText', text: `read: ${read}`, places }];
}

import type { Action, Beat, Play, Point, RunKind, SpotId } from '../../engine/index.ts';
import { generousClock } from './generous-clock.ts';
import { type Pace, secondsFor } from './pace.ts';
import { lengthOf, type OrderPlace, pointsOf, ScriptWalk, stretches, type Way } from './script-walk.ts';

export type { OrderPlace } from './script-walk.ts';

/** Something that a walk through the script without a defense finds. */
export type WalkFault =
  /** He is sent elsewhere long before he can have come to the end of this run. */
  | {
      readonly kind: 'cutShort';
      readonly who: SpotId;
      readonly order: OrderPlace;
      readonly end: Point;
      readonly needs: number;
      readonly has: number;
      readonly nextBeat: string;
    }
  /** He has a way that takes very long, even if nothing else is asked of him meanwhile. */
  | {
      readonly kind: 'longRun';
      readonly who: SpotId;
      readonly order: OrderPlace;
      readonly end: Point;
      readonly length: number;
      readonly withBall: boolean;
      /** Seconds that a usual man of the level takes. */
      readonly takes: number;
      /** Beats that wait for him to arrive. */
      readonly waiting: readonly string[];
    }
  /** A call tells him to throw or shoot while he still carries the ball to a place. */
  | {
      readonly kind: 'calledEarly';
      readonly who: SpotId;
      readonly order: OrderPlace;
      readonly end: Point;
      readonly takes: number;
      readonly has: number;
    }
  /** He is thrown to while the place where he should stand is still far away. */
  | {
      readonly kind: 'lateForPass';
      readonly who: SpotId;
      readonly order: OrderPlace;
      readonly end: Point;
      readonly short: number;
    }
  /** A straight stretch of his way leads from `from` to `to` through the crease. */
  | {
      readonly kind: 'stretch';
      readonly who: SpotId;
      readonly order: OrderPlace;
      readonly from: Point;
      readonly to: Point;
    };

/** A run may be cut short by this much: turning a stride or two early is not a fault. Yards. */
const strides = 3;
/** A man may be this far from his place when the ball comes: he catches on the way. Yards. */
const onTheWay = 8;
/** Runs that are meant to end before the ball comes; the others are looked for on the way. */
const settlingRuns: ReadonlySet<RunKind> = new Set(['pop', 'replace', 'backUp', 'getBack']);
/** A way that takes a usual man longer is worth a word, s: a through cut from the point to behind the goal, 24 yd, still fits (ours; no source). */
const longWay = 4.5;
/** Runs that are meant to be long. */
const longRuns: ReadonlySet<RunKind> = new Set(['backUp', 'getBack']);
/** A call that comes by less than this before he can throw is no fault, s. */
const earlyCall = 0.5;

/**
 * Walks through a play's own script as on the practice field without a defense, every pass thrown and every run made
 * at the pace, and says which orders do not fit into the time. Reads are left out: they are for when somebody is there.
 */
export function walkThrough(play: Play, pace: Pace): readonly WalkFault[] {
  return findFaults(play, play.beats, play.start.ball, pace);
}

/** The same for the last ten seconds, which may find anybody with the ball: as if everyone was at home and nobody threw. */
export function walkLastTen(play: Play, pace: Pace): readonly WalkFault[] {
  return findFaults(play, play.lastTen?.beats ?? [], undefined, pace);
}

function findFaults(play: Play, beats: readonly Beat[], starter: SpotId | undefined, pace: Pace): readonly WalkFault[] {
  const faults: WalkFault[] = [];
  /** Where each man stands at one time or another: home and the ends of his ways. */
  const known = new Map<SpotId, readonly Point[]>(play.spots.map((spot) => [spot.id, [spot.at]]));
  const walk = new ScriptWalk(play, beats, starter, generousClock(pace), {
    sent(way, before, action) {
      const { who, order, points } = way;
      if (before !== undefined) faults.push(...cutShort(before, order, way.since, beats));
      known.set(who, [...(known.get(who) ?? []), points.at(-1)!]);
      faults.push(...longRun(action, order, points, way.carries, beats, pace));
      for (const [a, b] of stretches(points)) faults.push({ kind: 'stretch', who, order, from: a, to: b });
    },
    started(beat, at) {
      faults.push(...calledEarly(walk, beats, beat, at, pace));
    },
    released(_, __, to, ___, arrives) {
      faults.push(...lateForPass(walk.wayOf(to), arrives));
    },
  });
  walk.run();
  for (const [i, beat] of beats.entries())
    if (!walk.hasStarted(i)) faults.push(...longRunsOf(beat, i, known, beats, pace));
  return faults;
}

/** A beat that the walk never came to: what it sends men to is measured from wherever these were nearest to it. */
function longRunsOf(
  beat: Beat,
  index: number,
  known: ReadonlyMap<SpotId, readonly Point[]>,
  beats: readonly Beat[],
  pace: Pace,
): readonly WalkFault[] {
  return beat.actions.flatMap((action, j) => {
    const points = pointsOf(action);
    const [first] = points;
    if (first === undefined) return [];
    const from = [...(known.get(action.by) ?? [])].sort((a, b) => distance(a, first) - distance(b, first))[0];
    if (from === undefined) return [];
    return longRun(action, { beat: index, action: j }, [from, ...points], action.kind === 'carry', beats, pace);
  });
}

function longRun(
  action: Action,
  order: OrderPlace,
  points: readonly Point[],
  withBall: boolean,
  beats: readonly Beat[],
  pace: Pace,
): readonly WalkFault[] {
  if (action.kind === 'run' && longRuns.has(action.run)) return [];
  const length = lengthOf(points);
  const takes = secondsFor(length, withBall ? pace.usualCarry : pace.usualRun);
  if (takes <= longWay) return [];
  const who = action.by;
  const waiting = beats.filter(({ when }) => when.kind === 'arrival' && when.who === who).map((beat) => beat.id);
  return [{ kind: 'longRun', who, order, end: points.at(-1)!, length, withBall, takes, waiting }];
}

/** A call to throw that comes before the man with the ball is where he carries it. */
function calledEarly(
  walk: ScriptWalk,
  beats: readonly Beat[],
  index: number,
  at: number,
  pace: Pace,
): readonly WalkFault[] {
  const { when, actions } = beats[index]!;
  if (when.kind !== 'call') return [];
  return actions.flatMap((action, i): readonly WalkFault[] => {
    const way = walk.wayOf(action.by);
    if ((action.kind !== 'pass' && action.kind !== 'shot') || way === undefined) return [];
    if (action.by !== walk.holderNow() || !way.carries || way.order.beat === index) return [];
    if (way.until - at <= earlyCall) return [];
    const takes = secondsFor(lengthOf(way.points), pace.usualCarry);
    const has = Math.min(when.seconds, at - way.since);
    const order = { beat: index, action: i };
    return [{ kind: 'calledEarly', who: action.by, order, end: way.points.at(-1)!, takes, has }];
  });
}

function cutShort(way: Way, next: OrderPlace, at: number, beats: readonly Beat[]): readonly WalkFault[] {
  // Two orders of one beat are told as two places at once.
  if (way.order.beat === next.beat) return [];
  // Sent two ways in one moment is a fault however short the way; sent on a stride early is not.
  if (at > way.since && way.motion.left(at - way.since) <= strides) return [];
  const { who, order, since, until } = way;
  const nextBeat = beats[next.beat]!.id;
  return [{ kind: 'cutShort', who, order, end: way.points.at(-1)!, needs: until - since, has: at - since, nextBeat }];
}

function lateForPass(way: Way | undefined, caughtAt: number): readonly WalkFault[] {
  if (way?.run === undefined || !settlingRuns.has(way.run)) return [];
  const short = way.motion.left(caughtAt - way.since);
  if (short <= onTheWay) return [];
  return [{ kind: 'lateForPass', who: way.who, order: way.order, end: way.points.at(-1)!, short }];
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

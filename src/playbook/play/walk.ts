import type { Action, Beat, Play, Point, RunKind, SpotId } from '../../engine/index.ts';
import { endOf } from './check-beats.ts';
import { type Gait, type Pace, secondsFor, yardsIn } from './pace.ts';

/** Where in the script an order stands. */
export interface OrderPlace {
  readonly beat: number;
  readonly action: number;
}

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
/** A wind-up or a look that deceives takes about this long, s. */
const fakeTime = 0.3;
/** A way that takes a usual man longer is worth a word, s: a through cut from the point to behind the goal, 24 yd, still fits (ours; no source). */
const longWay = 4.5;
/** Runs that are meant to be long. */
const longRuns: ReadonlySet<RunKind> = new Set(['backUp', 'getBack']);
/** A call that comes by less than this before he can throw is no fault, s. */
const earlyCall = 0.5;
/** Longer than any script: a walk ends here at the latest. Seconds and events. */
const longest = 90;
const mostEvents = 600;

interface Way {
  readonly order: OrderPlace;
  readonly run: RunKind | undefined;
  readonly points: readonly Point[];
  readonly length: number;
  readonly since: number;
  readonly gait: Gait;
  /** He was running when he was sent. */
  readonly rolling: boolean;
  /** When he is at its end. */
  readonly until: number;
  /** With the ball in his stick. */
  readonly carries: boolean;
}

interface Order {
  readonly to?: SpotId;
  /** Where the order to throw stands. */
  readonly place?: OrderPlace;
  readonly holds: number;
}

type Happening =
  | { readonly at: number; readonly kind: 'begin' }
  | { readonly at: number; readonly kind: 'release'; readonly from: SpotId; readonly turn: number }
  | { readonly at: number; readonly kind: 'catch'; readonly who: SpotId }
  | { readonly at: number; readonly kind: 'arrive'; readonly who: SpotId; readonly way: Way }
  | { readonly at: number; readonly kind: 'call'; readonly beat: number };

/**
 * Walks through a play's own script as on the practice field without a defense, every pass thrown and every run made
 * at the pace, and says which orders do not fit into the time. Reads are left out: they are for when somebody is there.
 */
export function walkThrough(play: Play, pace: Pace): readonly WalkFault[] {
  const walk = new Walk(play, play.beats, play.start.ball, pace);
  walk.run();
  return walk.faults;
}

/** The same for the last ten seconds, which may find anybody with the ball: as if everyone was at home and nobody threw. */
export function walkLastTen(play: Play, pace: Pace): readonly WalkFault[] {
  const walk = new Walk(play, play.lastTen?.beats ?? [], undefined, pace);
  walk.run();
  return walk.faults;
}

/** What happens in a walk, in its order; seconds after its first beat. */
export type WalkEvent =
  /** `holder` has the ball, or is thrown to; undefined when nobody does. */
  | { readonly kind: 'beat'; readonly at: number; readonly beat: number; readonly holder: SpotId | undefined }
  | {
      readonly kind: 'release';
      readonly at: number;
      readonly from: SpotId;
      readonly to: SpotId;
      readonly order: OrderPlace;
      readonly places: ReadonlyMap<SpotId, Point>;
    }
  | { readonly kind: 'catch'; readonly at: number; readonly who: SpotId };

/** What happens in the play's own script when nobody hinders it, at the pace. */
export function recordWalk(play: Play, pace: Pace): readonly WalkEvent[] {
  const walk = new Walk(play, play.beats, play.start.ball, pace);
  walk.run();
  return walk.log;
}

/** The state of one walk: the clock, who has the ball, who is on which way, what each man has been told. */
class Walk {
  readonly faults: WalkFault[] = [];
  readonly log: WalkEvent[] = [];
  private readonly queue: Happening[] = [{ at: 0, kind: 'begin' }];
  private readonly homes: ReadonlyMap<SpotId, Point>;
  private readonly ways = new Map<SpotId, Way>();
  /** Where each man stands at one time or another: home and the ends of his ways. */
  private readonly known: Map<SpotId, readonly Point[]>;
  private readonly orders = new Map<SpotId, Order>();
  private readonly started = new Set<number>();
  private holder: SpotId | undefined;
  /** The man to whom the ball is on its way. */
  private thrownTo: SpotId | undefined;
  private heldSince = 0;
  /** Counts changes of the carrier's orders, so that a release that was planned before one of them is dropped. */
  private turn = 0;

  constructor(
    play: Play,
    private readonly beats: readonly Beat[],
    starter: SpotId | undefined,
    private readonly pace: Pace,
  ) {
    this.homes = new Map(play.spots.map((spot) => [spot.id, spot.at]));
    this.known = new Map(play.spots.map((spot) => [spot.id, [spot.at]]));
    this.holder = starter;
  }

  run(): void {
    for (let i = 0; i < mostEvents; i++) {
      const next = this.takeNext();
      if (next === undefined || next.at > longest) break;
      this.happen(next);
    }
    this.lookAtTheRest();
  }

  /** Beats that this walk never came to: what they send men to is measured from wherever these were nearest to it. */
  private lookAtTheRest(): void {
    for (const [i, beat] of this.beats.entries()) {
      if (this.started.has(i)) continue;
      for (const [j, action] of beat.actions.entries()) {
        const points = pointsOf(action);
        const [first] = points;
        if (first === undefined) continue;
        const known = this.known.get(action.by) ?? [];
        const from = [...known].sort((a, b) => distance(a, first) - distance(b, first))[0];
        if (from === undefined) continue;
        this.checkLong(action, { beat: i, action: j }, [from, ...points], action.kind === 'carry');
      }
    }
  }

  private takeNext(): Happening | undefined {
    if (this.queue.length === 0) return undefined;
    let first = 0;
    for (const [i, each] of this.queue.entries()) if (each.at < this.queue[first]!.at) first = i;
    return this.queue.splice(first, 1)[0];
  }

  private happen(what: Happening): void {
    switch (what.kind) {
      case 'begin':
        this.fire(what.at, (when) => when.kind === 'start');
        return;
      case 'call':
        this.startBeat(what.beat, what.at);
        return;
      case 'arrive':
        if (this.ways.get(what.who) !== what.way) return;
        this.fire(what.at, (when) => when.kind === 'arrival' && when.who === what.who);
        return;
      case 'catch':
        this.holder = what.who;
        this.thrownTo = undefined;
        this.log.push({ kind: 'catch', at: what.at, who: what.who });
        this.heldSince = what.at;
        this.fire(what.at, (when) => when.kind === 'catch' && when.by === what.who);
        this.planRelease(what.at);
        return;
      case 'release':
        this.release(what.from, what.turn, what.at);
        return;
      default:
        exhaustive(what);
    }
  }

  private fire(at: number, matches: (when: Beat['when']) => boolean): void {
    for (const [i, beat] of this.beats.entries()) if (!this.started.has(i) && matches(beat.when)) this.startBeat(i, at);
  }

  private startBeat(index: number, at: number): void {
    if (this.started.has(index)) return;
    this.started.add(index);
    const beat = this.beats[index]!;
    this.log.push({ kind: 'beat', at, beat: index, holder: this.holder ?? this.thrownTo });
    for (const [i, action] of beat.actions.entries()) this.give(action, { beat: index, action: i }, at);
    if (beat.when.kind === 'call') this.checkEarly(index, beat.when.seconds, at);
    for (const [i, other] of this.beats.entries()) {
      if (other.when.kind === 'call' && other.when.beat === beat.id)
        this.queue.push({ at: at + other.when.seconds, kind: 'call', beat: i });
    }
    this.planRelease(at);
  }

  private give(action: Action, order: OrderPlace, at: number): void {
    const told = this.orders.get(action.by) ?? { holds: 0 };
    if (action.kind === 'pass' && this.homes.has(action.to))
      this.orders.set(action.by, { ...told, to: action.to, place: order });
    if (action.kind === 'fake') this.orders.set(action.by, { ...told, holds: told.holds + fakeTime });
    if (action.kind === 'hold') this.orders.set(action.by, { ...told, holds: told.holds + action.seconds });
    if (pointsOf(action).length > 0 && this.homes.has(action.by)) this.send(action, order, at);
  }

  private send(action: Action, order: OrderPlace, at: number): void {
    const from = this.placeOf(action.by, at);
    this.checkCutShort(action.by, order, at);
    const points = [from, ...pointsOf(action)];
    const length = lengthOf(points);
    const carries = this.holder === action.by && (action.kind === 'carry' || action.kind === 'stepIn');
    const gait = carries ? this.pace.carry : this.pace.run;
    const before = this.ways.get(action.by);
    const rolling = before !== undefined && before.until > at;
    const until = at + secondsFor(length, gait, rolling);
    const run = action.kind === 'run' ? action.run : undefined;
    const way: Way = { order, run, points, length, since: at, gait, rolling, until, carries };
    this.ways.set(action.by, way);
    this.known.set(action.by, [...(this.known.get(action.by) ?? []), points.at(-1)!]);
    this.checkLong(action, order, points, carries);
    for (const [a, b] of stretches(points))
      this.faults.push({ kind: 'stretch', who: action.by, order, from: a, to: b });
    this.queue.push({ at: until, kind: 'arrive', who: action.by, way });
  }

  private checkLong(action: Action, order: OrderPlace, points: readonly Point[], withBall: boolean): void {
    if (action.kind === 'run' && longRuns.has(action.run)) return;
    const length = lengthOf(points);
    const takes = secondsFor(length, withBall ? this.pace.usualCarry : this.pace.usualRun);
    if (takes <= longWay) return;
    const waiting = this.beats
      .filter(({ when }) => when.kind === 'arrival' && when.who === action.by)
      .map((beat) => beat.id);
    this.faults.push({
      kind: 'longRun',
      who: action.by,
      order,
      end: points.at(-1)!,
      length,
      withBall,
      takes,
      waiting,
    });
  }

  /** A call to throw that comes before the man with the ball is where he carries it. */
  private checkEarly(index: number, seconds: number, at: number): void {
    for (const [i, action] of this.beats[index]!.actions.entries()) {
      const way = this.ways.get(action.by);
      if ((action.kind !== 'pass' && action.kind !== 'shot') || way === undefined || action.by !== this.holder)
        continue;
      if (!way.carries || way.order.beat === index || way.until - at <= earlyCall) continue;
      const takes = secondsFor(way.length, this.pace.usualCarry);
      const end = way.points.at(-1)!;
      this.faults.push({
        kind: 'calledEarly',
        who: action.by,
        order: { beat: index, action: i },
        end,
        takes,
        has: Math.min(seconds, at - way.since),
      });
    }
  }

  private checkCutShort(who: SpotId, next: OrderPlace, at: number): void {
    const way = this.ways.get(who);
    // Two orders of one beat are told as two places at once.
    if (way === undefined || way.order.beat === next.beat) return;
    const run = yardsIn(at - way.since, way.gait, way.rolling);
    // Sent two ways in one moment is a fault however short the way; sent on a stride early is not.
    if (at > way.since && way.length - run <= strides) return;
    const nextBeat = this.beats[next.beat]!.id;
    this.faults.push({
      kind: 'cutShort',
      who,
      order: way.order,
      end: way.points.at(-1)!,
      needs: way.until - way.since,
      has: at - way.since,
      nextBeat,
    });
  }

  /** If the man with the ball has been told to throw it, plan when it leaves. */
  private planRelease(at: number): void {
    const { holder } = this;
    if (holder === undefined) return;
    const told = this.orders.get(holder);
    if (told?.to === undefined) return;
    const ready = Math.max(at, this.heldSince + this.pace.release) + told.holds;
    const way = this.ways.get(holder);
    const carried = way === undefined || way.since < this.heldSince ? 0 : way.until;
    this.queue.push({ at: Math.max(ready, carried), kind: 'release', from: holder, turn: ++this.turn });
  }

  private release(from: SpotId, turn: number, at: number): void {
    const { to, place } = this.orders.get(from) ?? {};
    if (turn !== this.turn || this.holder !== from || to === undefined || place === undefined) return;
    this.orders.delete(from);
    this.holder = undefined;
    this.thrownTo = to;
    const places = new Map([...this.homes.keys()].map((who) => [who, this.placeOf(who, at)]));
    this.log.push({ kind: 'release', at, from, to, order: place, places });
    const flight = distance(this.placeOf(from, at), this.placeOf(to, at)) / this.pace.passSpeed;
    this.queue.push({ at: at + flight, kind: 'catch', who: to });
    this.fire(at, (when) => when.kind === 'pass' && when.from === from && (when.to === undefined || when.to === to));
    this.checkLate(to, at + flight);
  }

  private checkLate(who: SpotId, caughtAt: number): void {
    const way = this.ways.get(who);
    if (way?.run === undefined || !settlingRuns.has(way.run)) return;
    const short = way.length - yardsIn(caughtAt - way.since, way.gait, way.rolling);
    if (short > onTheWay)
      this.faults.push({ kind: 'lateForPass', who, order: way.order, end: way.points.at(-1)!, short });
  }

  private placeOf(who: SpotId, at: number): Point {
    const way = this.ways.get(who);
    if (way === undefined) return this.homes.get(who)!;
    let left = yardsIn(at - way.since, way.gait, way.rolling);
    for (const [a, b] of stretches(way.points)) {
      const length = distance(a, b);
      if (left < length) return { x: a.x + ((b.x - a.x) * left) / length, y: a.y + ((b.y - a.y) * left) / length };
      left -= length;
    }
    return way.points.at(-1)!;
  }
}

/** The places that an action leads through, as far as they are known. */
function pointsOf(action: Action): readonly Point[] {
  const end = endOf(action);
  const all = action.kind === 'carry' || action.kind === 'run' ? action.path : end === undefined ? [] : [end];
  return all.filter((point) => Number.isFinite(point.x));
}

function lengthOf(points: readonly Point[]): number {
  return stretches(points).reduce((sum, [a, b]) => sum + distance(a, b), 0);
}

function stretches(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((point, i) => [points[i]!, point] as const);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown happening: ${JSON.stringify(value)}`);
}

import type { Action, Beat, Play, Point, RunKind, SpotId } from '../../engine/index.ts';
import { endOf } from './check-beats.ts';

/** Where in the script an order stands. */
export interface OrderPlace {
  readonly beat: number;
  readonly action: number;
}

/** A man on the field: where he is and how fast he runs there. Yards, yd/s. */
export interface Moving {
  readonly x: number;
  readonly y: number;
  readonly vx: number;
  readonly vy: number;
}

/** How a way is run, from the moment that he is sent. */
export interface WayRun {
  /** When he is at its end, s. */
  readonly seconds: number;
  /** Where he is after so many seconds. */
  at(seconds: number): Moving;
  /** Yards that are left of it then, along it. */
  left(seconds: number): number;
}

/** A way that somebody has been sent on. */
export interface Way {
  readonly order: OrderPlace;
  readonly who: SpotId;
  readonly run: RunKind | undefined;
  /** Where he was when he was sent, and the places that he is sent to. */
  readonly points: readonly Point[];
  readonly since: number;
  readonly until: number;
  /** With the ball in his stick. */
  readonly carries: boolean;
  readonly motion: WayRun;
}

/** What a man with the ball has been told to do with it. */
export interface BallOrder {
  /** Whom to throw to; absent for a man who is only told to hold it, to fake or to shoot. */
  readonly to?: SpotId;
  readonly shoots?: true;
  /** Where the order to throw or to shoot stands. */
  readonly place?: OrderPlace;
  /** When the last of it was said. */
  readonly since: number;
  /** He holds it until then. */
  readonly holdUntil: number;
  /** Seconds that he has been told to hold it, added up. */
  readonly holds: number;
  readonly fakes: number;
}

/** How fast everything goes in a walk. */
export interface WalkClock {
  way(who: SpotId, from: Moving, points: readonly Point[], carries: boolean): WayRun;
  /** When the ball leaves the stick of a man who has had it since `heldSince`; undefined for never. `way` is what he is on, if anything. */
  leaves(who: SpotId, order: BallOrder, heldSince: number, way: Way | undefined): number | undefined;
  flight(by: SpotId, from: Point, to: Point): number;
  /** Nothing happens before this, for something that comes to pass at `time`. */
  tick(time: number): number;
  /** Who catches on a run stands where he catches, and has arrived; who throws in a carry stands. Else everybody runs his way to its end. */
  readonly ballEndsRuns: boolean;
}

/** What a walk says while it goes on; seconds after its first beat. */
export interface WalkWatcher {
  sent?(way: Way, before: Way | undefined, action: Action): void;
  started?(beat: number, at: number, holder: SpotId | undefined): void;
  released?(order: OrderPlace, from: SpotId, to: SpotId, leaves: number, arrives: number): void;
  caught?(who: SpotId, at: number): void;
  shot?(order: OrderPlace, who: SpotId, at: number): void;
  ended?(way: Way, at: number): void;
}

type Happening =
  | { readonly at: number; readonly kind: 'begin' }
  | { readonly at: number; readonly kind: 'release'; readonly from: SpotId; readonly turn: number }
  | { readonly at: number; readonly kind: 'catch'; readonly who: SpotId }
  | { readonly at: number; readonly kind: 'arrive'; readonly way: Way }
  | { readonly at: number; readonly kind: 'call'; readonly beat: number };

/** Longer than any script: a walk ends here at the latest. Seconds and events. */
const longest = 90;
const mostEvents = 600;

/** What only the man with the ball can do. */
const ballActions: ReadonlySet<Action['kind']> = new Set(['pass', 'fake', 'shot', 'carry']);

/**
 * Walks through a script as on the practice field without a defense: every pass thrown, every run made, by the clock.
 * Reads are left out: they are for when somebody is there.
 */
export class ScriptWalk {
  private readonly queue: Happening[] = [{ at: 0, kind: 'begin' }];
  private readonly stands: Map<SpotId, Point>;
  private readonly ways = new Map<SpotId, Way>();
  private readonly orders = new Map<SpotId, BallOrder>();
  private readonly started = new Set<number>();
  /** Carries that begin when the ball that is on its way has been caught. */
  private readonly onCatch = new Map<SpotId, { readonly action: Action; readonly order: OrderPlace }>();
  private thrownTo: SpotId | undefined;
  private heldSince = 0;
  /** Counts changes of the carrier's orders, so that a release that was planned before one of them is dropped. */
  private turn = 0;

  constructor(
    play: Pick<Play, 'spots'>,
    private readonly beats: readonly Beat[],
    private holder: SpotId | undefined,
    private readonly clock: WalkClock,
    private readonly watcher: WalkWatcher,
  ) {
    this.stands = new Map(play.spots.map((spot) => [spot.id, spot.at]));
  }

  run(): void {
    for (let i = 0; i < mostEvents; i++) {
      const next = this.takeNext();
      if (next === undefined || next.at > longest) break;
      this.happen(next);
    }
  }

  hasStarted(beat: number): boolean {
    return this.started.has(beat);
  }

  holderNow(): SpotId | undefined {
    return this.holder;
  }

  wayOf(who: SpotId): Way | undefined {
    return this.ways.get(who);
  }

  placeOf(who: SpotId, at: number): Moving {
    const way = this.ways.get(who);
    if (way !== undefined) return way.motion.at(at - way.since);
    return { ...this.stands.get(who)!, vx: 0, vy: 0 };
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
        this.arrive(what.way, what.at);
        return;
      case 'catch':
        this.catchBall(what.who, what.at);
        return;
      case 'release':
        this.release(what.from, what.turn, what.at);
        return;
      default:
        exhaustive(what);
    }
  }

  private arrive(way: Way, at: number): void {
    const { who } = way;
    if (this.ways.get(who) !== way) return;
    this.watcher.ended?.(way, at);
    if (way.run !== undefined || way.carries || this.isStep(way)) this.fireArrival(who, at);
  }

  /** Who picks comes to a stop, but does not arrive. */
  private isStep({ order }: Way): boolean {
    return this.beats[order.beat]!.actions[order.action]!.kind !== 'pick';
  }

  private fireArrival(who: SpotId, at: number): void {
    // A run that ended with the ball in his stick begins nothing that another man was to do with that ball.
    const needsBall = (beat: Beat) => beat.actions.some(({ kind, by }) => by !== who && ballActions.has(kind));
    this.fire(
      at,
      (when, beat) =>
        when.kind === 'arrival' &&
        when.who === who &&
        !(this.clock.ballEndsRuns && this.holder === who && needsBall(beat)),
    );
  }

  private catchBall(who: SpotId, at: number): void {
    this.holder = who;
    this.thrownTo = undefined;
    this.heldSince = at;
    this.watcher.caught?.(who, at);
    const way = this.ways.get(who);
    const metOnRun = this.clock.ballEndsRuns && way !== undefined && way.until > at;
    if (metOnRun) this.stop(way, at);
    const carry = this.onCatch.get(who);
    this.onCatch.delete(who);
    if (carry !== undefined) this.send(carry.action, carry.order, at);
    this.fire(at, (when) => when.kind === 'catch' && when.by === who);
    // The ball met him on his run: what was to begin at the run's end begins here.
    if (metOnRun && way.run !== undefined) this.fireArrival(who, at);
    this.planRelease();
  }

  /** He stands where he is from now on. */
  private stop(way: Way, at: number): void {
    const { x, y } = way.motion.at(at - way.since);
    this.stands.set(way.who, { x, y });
    this.ways.delete(way.who);
    this.watcher.ended?.(way, at);
  }

  private fire(at: number, matches: (when: Beat['when'], beat: Beat) => boolean): void {
    for (const [i, beat] of this.beats.entries())
      if (!this.started.has(i) && matches(beat.when, beat)) this.startBeat(i, at);
  }

  private startBeat(index: number, at: number): void {
    if (this.started.has(index)) return;
    this.started.add(index);
    const beat = this.beats[index]!;
    for (const [i, action] of beat.actions.entries()) this.give(action, { beat: index, action: i }, at);
    this.watcher.started?.(index, at, this.holder ?? this.thrownTo);
    for (const [i, other] of this.beats.entries()) {
      if (other.when.kind === 'call' && other.when.beat === beat.id)
        this.queue.push({ at: this.clock.tick(at + other.when.seconds), kind: 'call', beat: i });
    }
    this.planRelease();
  }

  private give(action: Action, order: OrderPlace, at: number): void {
    const told = this.orders.get(action.by) ?? { since: at, holdUntil: 0, holds: 0, fakes: 0 };
    const tell = (more: Partial<BallOrder>) => this.orders.set(action.by, { ...told, since: at, ...more });
    if (action.kind === 'pass' && this.stands.has(action.to)) tell({ to: action.to, place: order });
    if (action.kind === 'fake') tell({ fakes: told.fakes + 1 });
    if (action.kind === 'hold') tell({ holdUntil: at + action.seconds, holds: told.holds + action.seconds });
    if (action.kind === 'shot') tell({ shoots: true, place: order });
    if (pointsOf(action).length === 0 || !this.stands.has(action.by)) return;
    // First he has to have the ball: a man who runs off from a pass on its way never gets it.
    if (this.clock.ballEndsRuns && this.thrownTo === action.by) this.onCatch.set(action.by, { action, order });
    else this.send(action, order, at);
  }

  private send(action: Action, order: OrderPlace, at: number): void {
    const who = action.by;
    const before = this.ways.get(who);
    const from = this.placeOf(who, at);
    const carries = this.holder === who && (action.kind === 'carry' || action.kind === 'stepIn');
    const motion = this.clock.way(who, from, pointsOf(action), carries);
    const points = [{ x: from.x, y: from.y }, ...pointsOf(action)];
    const run = action.kind === 'run' ? action.run : undefined;
    const way: Way = { order, who, run, points, since: at, until: at + motion.seconds, carries, motion };
    if (before !== undefined && before.until > at) this.watcher.ended?.(before, at);
    this.ways.set(who, way);
    this.watcher.sent?.(way, before, action);
    this.queue.push({ at: this.clock.tick(way.until), kind: 'arrive', way });
  }

  /** If the man with the ball has been told to let it go, plan when it leaves. */
  private planRelease(): void {
    const { holder } = this;
    const order = holder === undefined ? undefined : this.orders.get(holder);
    if (holder === undefined || order?.place === undefined) return;
    const leaves = this.clock.leaves(holder, order, this.heldSince, this.ways.get(holder));
    if (leaves !== undefined) this.queue.push({ at: leaves, kind: 'release', from: holder, turn: ++this.turn });
  }

  private release(from: SpotId, turn: number, at: number): void {
    const { to, place, shoots } = this.orders.get(from) ?? {};
    if (turn !== this.turn || this.holder !== from || place === undefined) return;
    this.orders.delete(from);
    this.holder = undefined;
    const way = this.ways.get(from);
    if (this.clock.ballEndsRuns && way?.carries === true && way.until > at) this.stop(way, at);
    if (shoots === true || to === undefined) {
      this.watcher.shot?.(place, from, at);
      return;
    }
    this.thrownTo = to;
    const arrives = this.clock.tick(at + this.flightTo(from, to, at));
    this.queue.push({ at: arrives, kind: 'catch', who: to });
    this.fire(at, (when) => when.kind === 'pass' && when.from === from && (when.to === undefined || when.to === to));
    this.watcher.released?.(place, from, to, at, arrives);
  }

  /** A man on his way is led along it: the ball flies to where he will be. */
  private flightTo(from: SpotId, to: SpotId, at: number): number {
    const start = this.placeOf(from, at);
    let seconds = this.clock.flight(from, start, this.placeOf(to, at));
    if (!this.clock.ballEndsRuns) return seconds;
    for (let round = 0; round < leadRounds; round++)
      seconds = this.clock.flight(from, start, this.placeOf(to, at + seconds));
    return seconds;
  }
}

/** Rounds in which the lead of a pass and its flight are fitted to each other: each makes the error a third at most. */
const leadRounds = 4;

/** The places that an action leads through, as far as they are known. */
export function pointsOf(action: Action): readonly Point[] {
  const end = endOf(action);
  const all = action.kind === 'carry' || action.kind === 'run' ? action.path : end === undefined ? [] : [end];
  return all.filter((point) => Number.isFinite(point.x));
}

export function lengthOf(points: readonly Point[]): number {
  return stretches(points).reduce((sum, [a, b]) => sum + Math.hypot(a.x - b.x, a.y - b.y), 0);
}

export function stretches(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((point, i) => [points[i]!, point] as const);
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown happening: ${JSON.stringify(value)}`);
}

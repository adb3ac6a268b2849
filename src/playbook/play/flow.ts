import type { Beat, Order, Read, SpotId } from '../../engine/index.ts';
import { unknownName } from '../language/phrase.ts';

/** One script: the play's own beats and reads, or those of the last ten seconds. */
export interface Script {
  readonly beats: readonly Beat[];
  readonly reads: readonly Read[];
}

/**
 * What can happen in a script at all, whatever the defense does. It errs on the side of the coach:
 * what it calls impossible is impossible, what it calls possible may still be unlikely.
 */
export interface Flow {
  /** Beats that something can start. */
  readonly reachable: ReadonlySet<string>;
  /** Spots that may have the ball at some time. */
  readonly holders: ReadonlySet<SpotId>;
  /** Spots that may have the ball at the moment that a beat starts or, with the ball in the air, when it comes down. */
  holdersAt(beat: Beat): ReadonlySet<SpotId>;
  /** Spots that may have the ball at some time from the beat's start on. */
  holdersFrom(beat: Beat): ReadonlySet<SpotId>;
  /** Receivers of the passes that a man may throw. */
  receiversOf(from: SpotId): ReadonlySet<SpotId>;
}

/** Kinds of action by which a man comes to the end of a way, so that others can wait for his arrival. */
const travels: ReadonlySet<Order['kind']> = new Set(['carry', 'run', 'stepIn']);

/** Nothing is taken for granted. */
const none: ReadonlySet<string> = new Set();

/**
 * Follow every possible pass from the men who may start with the ball. The beats in `granted` are taken to start, whatever starts them:
 * that tells what hangs on them. A trigger whose name is not known may come at any time, with the ball at any man of `everyone`.
 */
export function followScript(
  script: Script,
  first: ReadonlySet<SpotId>,
  everyone: ReadonlySet<SpotId>,
  granted: ReadonlySet<string> = none,
): Flow {
  const passes = new Map<SpotId, Set<SpotId>>();
  const arrivals = new Set<SpotId>();
  const reachable = new Set<string>();
  const beat_byId = new Map(script.beats.map((beat) => [beat.id, beat]));
  // Whoever a granted beat finds with the ball has come by it somehow.
  const seeds = granted.size > 0 ? everyone : first;

  function receiversOf(from: SpotId): ReadonlySet<SpotId> {
    return passes.get(from) ?? new Set();
  }

  function closure(from: Iterable<SpotId>): Set<SpotId> {
    const closed = new Set(from);
    // A set grows while it is walked, so this visits what it adds.
    for (const holder of closed) for (const receiver of receiversOf(holder)) closed.add(receiver);
    return closed;
  }

  function holdersAt(beat: Beat, calls = 0): ReadonlySet<SpotId> {
    const { when } = beat;
    // Its trigger may be what is wrong with it.
    if (granted.has(beat.id)) return everyone;
    switch (when.kind) {
      case 'start':
        return first;
      case 'catch':
        return when.by === unknownName ? everyone : new Set([when.by]);
      case 'pass':
        if (when.to !== undefined && when.to !== unknownName) return new Set([when.to]);
        return when.from === unknownName ? everyone : receiversOf(when.from);
      case 'arrival':
        return closure(seeds);
      case 'call': {
        if (when.beat === unknownName) return closure(seeds);
        const called = beat_byId.get(when.beat);
        // Beats that call each other in a ring never start, so what they would find does not matter.
        return called === undefined || calls > script.beats.length ? new Set() : closure(holdersAt(called, calls + 1));
      }
      default:
        return exhaustive(when);
    }
  }

  function canStart(beat: Beat): boolean {
    const { when } = beat;
    if (granted.has(beat.id) || namesOf(when).includes(unknownName)) return true;
    switch (when.kind) {
      case 'start':
        return true;
      case 'catch':
        return [...passes.values()].some((receivers) => receivers.has(when.by));
      case 'pass':
        return when.to === undefined ? receiversOf(when.from).size > 0 : receiversOf(when.from).has(when.to);
      case 'arrival':
        return arrivals.has(when.who);
      case 'call':
        return reachable.has(when.beat);
      default:
        return exhaustive(when);
    }
  }

  /** Note what an action makes possible; whether that was new. */
  function note(action: Order, mayHold: (spot: SpotId) => boolean): boolean {
    if (action.kind === 'pass' && mayHold(action.by) && action.to !== unknownName) {
      const receivers = passes.get(action.by) ?? new Set();
      if (receivers.has(action.to)) return false;
      passes.set(action.by, receivers.add(action.to));
      return true;
    }
    if (!travels.has(action.kind) || arrivals.has(action.by)) return false;
    arrivals.add(action.by);
    return true;
  }

  // Everything only ever becomes possible, so going over the script until nothing is new ends.
  for (let changed = true; changed; ) {
    changed = false;
    const holders = closure(seeds);
    for (const beat of script.beats) {
      if (!reachable.has(beat.id) && canStart(beat)) {
        reachable.add(beat.id);
        changed = true;
      }
      if (!reachable.has(beat.id)) continue;
      const after = closure(holdersAt(beat));
      for (const action of beat.actions) if (note(action, (spot) => after.has(spot))) changed = true;
    }
    for (const read of script.reads) {
      if (read.during !== undefined && !reachable.has(read.during)) continue;
      if (note(read.then, (spot) => holders.has(spot))) changed = true;
    }
  }

  return {
    reachable,
    holders: closure(seeds),
    holdersAt,
    holdersFrom: (beat) => closure(holdersAt(beat)),
    receiversOf,
  };
}

/** Every spot and beat that a trigger names. */
function namesOf(when: Beat['when']): readonly string[] {
  switch (when.kind) {
    case 'start':
      return [];
    case 'catch':
      return [when.by];
    case 'pass':
      return when.to === undefined ? [when.from] : [when.from, when.to];
    case 'arrival':
      return [when.who];
    case 'call':
      return [when.beat];
    default:
      return exhaustive(when);
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown trigger: ${JSON.stringify(value)}`);
}

import type { Action, Beat, Read, SpotId } from '../../engine/index.ts';

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
const travels: ReadonlySet<Action['kind']> = new Set(['carry', 'run', 'stepIn']);

/** Follow every possible pass from the men who may start with the ball. */
export function followScript(script: Script, first: ReadonlySet<SpotId>): Flow {
  const passes = new Map<SpotId, Set<SpotId>>();
  const arrivals = new Set<SpotId>();
  const reachable = new Set<string>();
  const beat_byId = new Map(script.beats.map((beat) => [beat.id, beat]));

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
    switch (when.kind) {
      case 'start':
        return first;
      case 'catch':
        return new Set([when.by]);
      case 'pass':
        return when.to === undefined ? receiversOf(when.from) : new Set([when.to]);
      case 'arrival':
        return closure(first);
      case 'call': {
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
  function note(action: Action, mayHold: (spot: SpotId) => boolean): boolean {
    if (action.kind === 'pass' && mayHold(action.by)) {
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
    const holders = closure(first);
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
    holders: closure(first),
    holdersAt,
    holdersFrom: (beat) => closure(holdersAt(beat)),
    receiversOf,
  };
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown trigger: ${JSON.stringify(value)}`);
}

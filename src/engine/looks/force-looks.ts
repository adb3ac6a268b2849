import type { ChanceModel } from '../chance/model.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import type { ChanceState, ForcedLook } from '../chance/state.ts';

/** One look in one trial that is to be taken whatever else is there. */
export interface ForcedTrial extends ForcedLook {
  readonly trial: number;
}

/** What trials came to in which a look was taken, in their order. Plain data. */
export interface ForcedGoals {
  /** Goals to the chance's end. */
  readonly goals_byForced: Uint8Array;
  /** Goal odds of the shots from the moment on at which the look is taken, added up: what the goals are on average (see `estimateGoals`). */
  readonly odds_byForced: Float32Array;
}

/**
 * What each trial comes to from the moment that its look is taken to the chance's end: what taking it is really worth.
 * The trial runs as it was watched up to that moment, so that the same men stand in the same places.
 */
export function playForced(model: ChanceModel, state: ChanceState, trials: readonly ForcedTrial[]): ForcedGoals {
  const goals_byForced = new Uint8Array(trials.length);
  const odds_byForced = new Float32Array(trials.length);
  for (const [at, each] of trials.entries()) {
    beginTrial(model, state, each.trial);
    state.forced = each;
    state.watching = true;
    while (state.end === null && state.time < each.time) advanceTrial(model, state);
    const before = state.counts.goalOddsSum;
    while (state.end === null) advanceTrial(model, state);
    goals_byForced[at] = state.counts.goals;
    odds_byForced[at] = state.counts.goalOddsSum - before;
  }
  return { goals_byForced, odds_byForced };
}

/** The goals alone. */
export function forceLooks(model: ChanceModel, state: ChanceState, trials: readonly ForcedTrial[]): Uint8Array {
  return playForced(model, state, trials).goals_byForced;
}

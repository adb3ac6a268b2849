import type { ChanceModel } from '../chance/model.ts';
import { runTrial } from '../chance/run.ts';
import type { ChanceState, ForcedLook } from '../chance/state.ts';

/** One look in one trial that is to be taken whatever else is there. */
export interface ForcedTrial extends ForcedLook {
  readonly trial: number;
}

/**
 * Goals of each trial from the moment that its look is taken to the chance's end: what taking it is really worth.
 * The trial runs as it was watched up to that moment, so that the same men stand in the same places.
 */
export function forceLooks(model: ChanceModel, state: ChanceState, trials: readonly ForcedTrial[]): Uint8Array {
  return Uint8Array.from(trials, (each) => {
    runTrial(model, state, each.trial, each);
    return state.counts.goals;
  });
}

import type { ChanceModel } from '../chance/model.ts';
import { type CompiledRead, readMates, type Script } from '../chance/program.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import type { ChanceState } from '../chance/state.ts';
import { bringTo, hasBall } from './gather-decisions.ts';

/** By what a carrier goes while he has the ball from the play. `eye`: by the reads of the play, and by what he himself sees open. */
export type Guidance = 'eye' | 'taughtReads' | { readonly reads: readonly CompiledRead[] };

/**
 * What trials come to in which the play brings this man the ball and he goes by one guidance while he has it, in the full simulation:
 * goal odds from the moment that he can act to the chance's end. Trials in which it does not come to him count nothing.
 * Everybody else, and he himself once the ball has left him, plays as ever.
 */
export function playGuided(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  guidance: Guidance,
  trials: readonly number[],
): Float32Array {
  const guided = typeof guidance === 'object' ? guidedScript(model, guidance.reads) : null;
  return Float32Array.from(trials, (trial) => {
    beginTrial(model, state, trial);
    state.watching = true;
    if (!bringTo(model, state, carrier)) return 0;
    const before = state.counts.goalOddsSum;
    const { script } = state.unit;
    state.watching = false;
    state.byReadsAlone = guidance !== 'eye';
    if (guided !== null) state.unit.script = guided;
    while (state.end === null && hasBall(state, carrier)) advanceTrial(model, state);
    state.byReadsAlone = false;
    if (state.unit.script === guided) state.unit.script = script;
    while (state.end === null) advanceTrial(model, state);
    return state.counts.goalOddsSum - before;
  });
}

function guidedScript({ program }: ChanceModel, reads: readonly CompiledRead[]): Script {
  return { ...program.script, reads, readMates_byCarrier: readMates(reads) };
}

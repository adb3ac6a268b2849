import type { ChanceModel } from './model.ts';
import { type ChanceState, historySteps } from './state.ts';

/** The bodies as this agent knows them: what he saw his reaction time ago. Read only. */
export function seenBy(model: ChanceModel, state: ChanceState, agent: number): Float64Array {
  return state.bodies.history[(state.step - model.reactionSteps_byAgent[agent]) & (historySteps - 1)];
}

/** Write the present picture into the ring of history. */
export function remember(state: ChanceState): void {
  state.bodies.history[state.step & (historySteps - 1)].set(state.bodies.motion);
}

/** Fill the whole history with the present picture: everyone has stood and looked before the whistle. */
export function rememberAll(state: ChanceState): void {
  for (let slot = 0; slot < historySteps; slot++) state.bodies.history[slot].set(state.bodies.motion);
}

import type { DrawKind } from './draw-kinds.ts';
import type { ChanceModel } from './model.ts';
import type { ChanceState } from './state.ts';

/**
 * The number of this event among those of its kind and agent in this trial: the last part of a draw's address.
 * Counting per agent and kind keeps two plays in step: what one man does does not shift another man's luck.
 */
export function drawAddress(model: ChanceModel, state: ChanceState, kind: DrawKind, agent: number): number {
  const at = kind * model.agents + agent;
  return state.drawsUsed[at]++;
}

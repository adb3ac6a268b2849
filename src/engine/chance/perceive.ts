import type { ChanceModel } from './model.ts';
import { type ChanceState, historySteps, stepSeconds, stride } from './state.ts';

/** The bodies as this agent knows them: what he saw his reaction time ago. Read only. */
export function seenBy(model: ChanceModel, state: ChanceState, agent: number): Float64Array {
  return state.bodies.history[(state.step - model.reactionSteps_byAgent[agent]) & (historySteps - 1)];
}

/** Write the present picture into the ring of history. */
export function remember(state: ChanceState): void {
  const { motion, history } = state.bodies;
  const slot = history[state.step & (historySteps - 1)];
  // Number by number, a man a round: for fifty of them the call of `set` takes longer than the copy.
  for (let at = 0; at < motion.length; at += stride) {
    slot[at] = motion[at];
    slot[at + 1] = motion[at + 1];
    slot[at + 2] = motion[at + 2];
    slot[at + 3] = motion[at + 3];
  }
}

/** Fill the whole history with the present picture: everyone has stood and looked before the whistle. */
export function rememberAll(state: ChanceState): void {
  for (let slot = 0; slot < historySteps; slot++) state.bodies.history[slot].set(state.bodies.motion);
}

/** Share of everyone's way that is carried on in the likeliest picture, and in the one in which nobody stops: see `foresee`. */
export const likelyShare = 0.5;
export const wholeShare = 1;

/**
 * The bodies as this agent expects them `ahead` seconds from now: what he saw, carried on a share of everyone's way.
 * Half as a rule, because men stop and turn: measured over five schemes, half misses by 1.0 yd where all of it misses by 1.4 and
 * none of it by 1.3 (docs/models/chance.md). Written to `out`, which is returned.
 */
export function foresee(
  model: ChanceModel,
  state: ChanceState,
  agent: number,
  ahead: number,
  share: number,
  out: Float64Array,
): Float64Array {
  const seen = seenBy(model, state, agent);
  const seconds = share * (ahead + model.reactionSteps_byAgent[agent] * stepSeconds);
  for (let at = 0; at < out.length; at += stride) {
    out[at] = seen[at] + seen[at + 2] * seconds;
    out[at + 1] = seen[at + 1] + seen[at + 3] * seconds;
    out[at + 2] = seen[at + 2];
    out[at + 3] = seen[at + 3];
  }
  return out;
}

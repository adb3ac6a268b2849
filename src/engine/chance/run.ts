import { createChanceState, resetState } from './create-state.ts';
import type { ChanceModel } from './model.ts';
import { createTraceRecorder } from './record.ts';
import { type ChanceState, type ForcedLook, stepSeconds } from './state.ts';
import { stepChance } from './step.ts';
import type { Trace } from './trace.ts';

/** No chance lasts longer than this beyond its penalty: a net under a mistake, never met. Seconds. */
const longestOvertime = 40;

/**
 * Run one trial to its end. The counts are left in `state.counts`, how it ended in `state.end`.
 * With a forced look the script runs untouched until that look is taken; from then on everything goes its way.
 */
export function runTrial(
  model: ChanceModel,
  state: ChanceState,
  trial: number,
  forced: ForcedLook | null = null,
): void {
  beginTrial(model, state, trial);
  state.forced = forced;
  state.watching = forced !== null;
  while (state.end === null) advanceTrial(model, state);
}

/** Make a state ready for a trial that is advanced step by step (a recorder, when there is one, sees its restart). */
export function beginTrial(model: ChanceModel, state: ChanceState, trial: number): void {
  resetState(model, state, trial);
  state.recorder?.frame(state);
}

/** One step of a trial that has not ended. */
export function advanceTrial(model: ChanceModel, state: ChanceState): void {
  stepChance(model, state);
  if (state.end === null && state.time > model.matchup.penalty.seconds + longestOvertime) state.end = 'penaltyOver';
  state.recorder?.frame(state);
  if (state.end !== null) state.recorder?.event({ kind: 'end', time: state.step * stepSeconds, how: state.end });
}

/** Run one trial and keep all of it. The same trial of the same seed gives the same trace, alone or in a batch. */
export function recordTrace(model: ChanceModel, trial: number, forced: ForcedLook | null = null): Trace {
  const state = createChanceState(model);
  const recorder = createTraceRecorder(model);
  state.recorder = recorder;
  runTrial(model, state, trial, forced);
  return recorder.finish();
}

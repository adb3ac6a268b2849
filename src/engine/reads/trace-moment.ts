import { copyState } from '../chance/copy-state.ts';
import type { ChanceModel } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { advanceTrial } from '../chance/run.ts';
import { type ChanceState, stepSeconds } from '../chance/state.ts';
import type { Trace } from '../chance/trace.ts';
import { futureOf } from './future.ts';
import { beginWatched, hasBall } from './gather-decisions.ts';
import type { MomentAction } from './moment-actions.ts';
import type { CarrierMoment } from './moments-of-trial.ts';
import { type MomentMemory, orderMoment } from './value-moment.ts';

/** An action, and the future in which it is shown. */
export interface ShownAction {
  readonly action: MomentAction;
  readonly future: number;
}

/** A moment as it is shown. The times of each trace count from its own first frame. */
export interface MomentTraces {
  /** What led to it; it ends with the picture before the man looks. */
  readonly runUp: Trace;
  /** What comes of each action that was asked for, from that same picture on. */
  readonly after: readonly Trace[];
}

/** Record what led to a moment and what comes of some actions there: `before` and `after` are seconds. */
export function traceMoment(
  model: ChanceModel,
  { state, spare }: MomentMemory,
  moment: CarrierMoment,
  shown: readonly ShownAction[],
  { before, after }: { readonly before: number; readonly after: number },
): MomentTraces {
  const stop = moment.step - 1;
  beginWatched(model, spare, moment.trial);
  while (spare.step < stop - Math.round(before / stepSeconds)) advanceTrial(model, spare);
  const runUp = record(model, spare, () => {
    while (spare.step < stop) advanceTrial(model, spare);
  });
  const until = moment.time + after;
  return {
    runUp,
    after: shown.map(({ action, future }) => {
      const model_ofFuture = futureOf(model, moment, future);
      copyState(spare, state);
      orderMoment(model_ofFuture, state, moment, action);
      return record(model_ofFuture, state, () => {
        while (state.end === null && state.time < until) {
          advanceTrial(model_ofFuture, state);
          if (state.step >= moment.step && !hasBall(state, moment.carrier)) state.watching = false;
        }
      });
    }),
  };
}

/** A recording of what `play` does with a state, as if it began there. */
function record(model: ChanceModel, state: ChanceState, play: () => void): Trace {
  const since = state.time;
  const recorder = createTraceRecorder(model);
  recorder.frame(state);
  state.recorder = recorder;
  play();
  state.recorder = null;
  const trace = recorder.finish();
  return { ...trace, events: trace.events.map((event) => ({ ...event, time: event.time - since })) };
}

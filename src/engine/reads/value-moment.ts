import { copyState } from '../chance/copy-state.ts';
import type { ChanceModel } from '../chance/model.ts';
import { advanceTrial } from '../chance/run.ts';
import type { ChanceState } from '../chance/state.ts';
import { futureOf } from './future.ts';
import { beginWatched, forcedBy, goalsToEnd, leaveToPlay, type Outcome, playTo } from './gather-decisions.ts';
import { type MomentAction, momentActions } from './moment-actions.ts';
import type { CarrierMoment } from './moments-of-trial.ts';

/** How a moment is played on. */
export interface FutureRange {
  /** Number of the first future. */
  readonly first: number;
  /** How many there are, > 0. */
  readonly futures: number;
  /** Of so many of them it is also found what comes after the horizon when it is left to the play, from 0 to `futures`. */
  readonly whole: number;
  /** Seconds of each. */
  readonly horizon: number;
}

/** What a moment comes to in each of its futures. Plain data. */
export interface MomentOutcomes {
  /** By action as `momentActions` numbers them, then by future. */
  readonly outcome_byFuture_byAction: readonly (readonly Outcome[])[];
  /** What came of leaving it to the play and what came after that to the chance's end, for the first `whole` futures: see `learnKeeping`. */
  readonly kept: readonly { readonly goOn: Outcome; readonly after: number }[];
}

/** Two states of the model, as memory. */
export interface MomentMemory {
  readonly state: ChanceState;
  readonly spare: ChanceState;
}

/**
 * What each thing that the man with the ball can do at one look of one trial comes to, in many futures. The trial is as it was up to the look,
 * to the last bit; from there on luck is fresh in each future and the same for all actions (common random numbers), so that their differences are those
 * of the actions.
 *
 * A future ends at the horizon, and a ball that is still in hand is valued as the study of reads does (`learnKeeping`): played to the chance's end
 * the spread of an outcome is twice as wide and a future takes five times as long (docs/models/reads.md).
 */
export function valueMoment(
  model: ChanceModel,
  memory: MomentMemory,
  moment: CarrierMoment,
  range: FutureRange,
): MomentOutcomes {
  bringToMoment(model, memory.spare, moment);
  const actions = momentActions(model.matchup.play, moment.carrier);
  const outcome_byFuture_byAction = actions.map((): Outcome[] => []);
  const kept: { goOn: Outcome; after: number }[] = [];
  for (let number = 0; number < range.futures; number++) {
    const future = futureOf(model, moment, range.first + number);
    actions.forEach((action, at) => {
      copyState(memory.spare, memory.state);
      const outcome = playOn(future, memory.state, moment, action, range.horizon);
      outcome_byFuture_byAction[at].push(outcome);
      if (action.kind !== 'goOn' || number >= range.whole) return;
      kept.push({ goOn: outcome, after: goalsToEnd(future, memory.state) });
    });
  }
  return { outcome_byFuture_byAction, kept };
}

/** Run a trial to the step before a look: in that of the look he acts, before the play can. */
export function bringToMoment(model: ChanceModel, state: ChanceState, { trial, step }: CarrierMoment): void {
  beginWatched(model, state, trial);
  while (state.step < step - 1) advanceTrial(model, state);
}

/** Order a man to do something at his look: nothing has to be said when he leaves it to the play. */
export function orderMoment(model: ChanceModel, state: ChanceState, moment: CarrierMoment, action: MomentAction): void {
  if (action.kind !== 'goOn') state.forced = forcedBy(model.matchup.play, moment.carrier, action, moment);
}

function playOn(
  future: ChanceModel,
  state: ChanceState,
  moment: CarrierMoment,
  action: MomentAction,
  horizon: number,
): Outcome {
  orderMoment(future, state, moment, action);
  if (action.kind !== 'goOn') return playTo(future, state, moment.time + horizon);
  const before = state.counts.goalOddsSum;
  // Through the step of his look: the play may begin in it, and before it does it is nobody's ball.
  while (state.end === null && state.step < moment.step) advanceTrial(future, state);
  const { left } = leaveToPlay(future, state, moment.carrier, moment.time + horizon);
  return { goals: state.counts.goalOddsSum - before, left };
}

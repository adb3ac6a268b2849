import { copyState } from '../chance/copy-state.ts';
import { cueHolds } from '../chance/cues.ts';
import { type ChanceModel, timeLeft } from '../chance/model.ts';
import { compileOrder } from '../chance/program.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import { ballMode, type ChanceState, type ForcedLook, phase, stride } from '../chance/state.ts';
import type { Play } from '../offense/play.ts';
import type { CarrierAction } from './carrier-actions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import { lookNumbers } from './look-numbers.ts';
import { orderOfAction } from './order-of-action.ts';

/** One look round of a carrier who could act. */
export interface CarrierLook {
  /** Step of the trial in which he looks, before anybody moves in it. */
  readonly step: number;
  /** Seconds after the restart, and after the play's first beat. */
  readonly time: number;
  readonly sinceStart: number;
  /** Cues that hold in what he sees, bit i for cue i of his vocabulary. */
  readonly cues: number;
  /** The newest beat of the play to have started; -1 for none. */
  readonly beat: number;
  /** Where he stands, x and y. */
  readonly at: readonly [number, number];
  /** What he makes of what he sees: see `lookNumbers`. */
  readonly numbers: Float64Array;
  /** What each action comes to when it is taken here. */
  readonly outcome_byAction: readonly Outcome[];
}

/** What comes of a decision within the horizon. */
export interface Outcome {
  /** Goals: the odds of the shots, as `estimateGoals` counts them. */
  readonly goals: number;
  /** Seconds of the penalty that are left to a unit that still has the ball then; `null` when it has lost it or the chance is over. */
  readonly left: number | null;
}

/** One trial in which the play brings the ball to the carrier, up to where he lets it go as the play asks him to. Plain data. */
export interface CarrierChance {
  readonly trial: number;
  /** At least one, in the order of time. */
  readonly looks: readonly CarrierLook[];
  /** What it comes to when he leaves it to the play, from the first look on. */
  readonly goOn: Outcome;
  /** What came after that to the chance's end. Goals. */
  readonly after: number;
}

/** A possession of more looks than this (4 s) is followed no further. */
const mostLooks = 20;
/** A script that has not brought him the ball by then does not. Seconds after its start. */
const longestWait = 25;

/**
 * The chances among trials `from` (included) to `to` (excluded) in which the play, run as it is written, brings the ball to this man
 * (offense index), with what he sees at each look round in his first possession of it, and what each action would come to there. Nobody
 * takes a read or an opening before; after it everybody plays as ever, with the luck that he would have had.
 *
 * Outcomes are those of the `horizon` seconds after a look: what happens long after has little to do with the decision and would only blur
 * it. What a ball that is still in hand is worth then is learnt from what came after it (`learnKeeping`). `spare` is a second state of the model.
 */
export function gatherDecisions(
  model: ChanceModel,
  { state, spare }: { readonly state: ChanceState; readonly spare: ChanceState },
  carrier: number,
  actions: readonly CarrierAction[],
  { from, to, horizon }: { readonly from: number; readonly to: number; readonly horizon: number },
): readonly CarrierChance[] {
  const chances: CarrierChance[] = [];
  for (let trial = from; trial < to; trial++) {
    const seen = looksOf(model, state, carrier, trial);
    if (seen.length === 0) continue;
    beginWatched(model, spare, trial);
    const looks = seen.map((look): CarrierLook => {
      // Up to the step before: in his own he acts, before the play can.
      while (spare.step < look.step - 1) advanceTrial(model, spare);
      const outcome_byAction = actions.map((action) => {
        copyState(spare, state);
        state.forced = forcedBy(model.matchup.play, carrier, action, look);
        return playTo(model, state, look.time + horizon);
      });
      return { ...look, outcome_byAction };
    });
    beginWatched(model, state, trial);
    while (state.step < seen[0].step) advanceTrial(model, state);
    const goOn = leaveToPlay(model, state, carrier, seen[0].time + horizon);
    chances.push({ trial, looks, goOn, after: goalsToEnd(model, state) });
  }
  return chances;
}

/** Half a step: times that are sums of steps are not compared to the last bit. */
const half = 0.025;

/** The order that makes a carrier do it at one of his looks, as a read of the play would. */
export function forcedBy(
  play: Play,
  carrier: number,
  action: CarrierAction,
  { time, at: [x, y] }: Pick<CarrierLook, 'time' | 'at'>,
): ForcedLook {
  const order = compileOrder(play, orderOfAction(play, carrier, action, { x, y }));
  return { time: time - half, from: carrier, to: order.kind === 'pass' ? order.to : carrier, order };
}

/** Make a state ready for a trial in which the play runs by itself. */
export function beginWatched(model: ChanceModel, state: ChanceState, trial: number): void {
  beginTrial(model, state, trial);
  state.watching = true;
}

/** Leave it to the play until the ball is out of his hands; from then on everybody plays as ever, to a time. */
export function leaveToPlay(model: ChanceModel, state: ChanceState, carrier: number, until: number): Outcome {
  const before = state.counts.goalOddsSum;
  while (state.end === null && hasBall(state, carrier)) advanceTrial(model, state);
  state.watching = false;
  const { left } = playTo(model, state, until);
  return { goals: state.counts.goalOddsSum - before, left };
}

/** A ball in the air or on the ground is waited for so long. Seconds. */
const settling = 3;

/** Play on to a time, and while a ball is in the air or on the ground a little longer. */
export function playTo(model: ChanceModel, state: ChanceState, until: number): Outcome {
  const before = state.counts.goalOddsSum;
  while (state.end === null && (state.time < until || (!isHeld(state) && state.time < until + settling))) {
    advanceTrial(model, state);
  }
  const kept = state.end === null && isHeld(state) && state.ball.holder < 6;
  return { goals: state.counts.goalOddsSum - before, left: kept ? timeLeft(model, state) : null };
}

/** Play on to the chance's end, and count the goals that come of it. */
export function goalsToEnd(model: ChanceModel, state: ChanceState): number {
  const before = state.counts.goalOddsSum;
  while (state.end === null) advanceTrial(model, state);
  return state.counts.goalOddsSum - before;
}

function isHeld({ ball }: ChanceState): boolean {
  return ball.mode === ballMode.held;
}

export type SeenLook = Omit<CarrierLook, 'outcome_byAction'>;

/** What he sees at his looks round, as far as it goes by the play; none when the play does not bring him the ball. */
function looksOf(model: ChanceModel, state: ChanceState, carrier: number, trial: number): readonly SeenLook[] {
  const looks: SeenLook[] = [];
  beginWatched(model, state, trial);
  state.recorder = {
    event: () => {},
    frame: () => {},
    look: (holder, seen) => {
      if (holder === carrier && state.unit.phase === phase.script) looks.push(lookRound(model, state, carrier, seen));
    },
  };
  const comes = bringTo(model, state, carrier);
  while (comes && state.end === null && looks.length < mostLooks && hasBall(state, carrier)) advanceTrial(model, state);
  state.recorder = null;
  return comes ? looks : [];
}

/** Runs a watched trial on until the man has the ball from the play and can act; false when that does not come. */
export function bringTo(model: ChanceModel, state: ChanceState, carrier: number): boolean {
  while (state.end === null) {
    if (state.unit.phase === phase.script) {
      if (hasBall(state, carrier) && state.time >= state.ball.readyAt) return true;
      if (state.time - state.scriptSince > longestWait) return false;
    } else if (state.scriptSince >= 0) return false;
    advanceTrial(model, state);
  }
  return false;
}

/** Whether it is in his stick, though it may be on its way out of it. */
export function hasBall({ ball, unit }: ChanceState, carrier: number): boolean {
  if (unit.phase !== phase.script || ball.holder !== carrier) return false;
  return ball.mode === ballMode.held || ball.mode === ballMode.windUp || ball.mode === ballMode.shotWindUp;
}

/** What the man with the ball sees as he looks round, at the moment at which a recorder is told of it. */
export function lookRound(model: ChanceModel, state: ChanceState, carrier: number, seen: Float64Array): SeenLook {
  const { options } = model.scratch;
  const cues = cueVocabulary(carrier).reduce(
    (bits, cue, at) => (cueHolds(model, state, carrier, seen, cue, options) ? bits | (1 << at) : bits),
    0,
  );
  const { motion } = state.bodies;
  const at = [motion[stride * carrier], motion[stride * carrier + 1]] as const;
  const { step, time, unit } = state;
  const sinceStart = time - state.scriptSince;
  return { step, time, sinceStart, cues, beat: unit.newestBeat, at, numbers: lookNumbers(model, carrier, seen) };
}

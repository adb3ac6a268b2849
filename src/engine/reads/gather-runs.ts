import { copyState } from '../chance/copy-state.ts';
import type { ChanceModel } from '../chance/model.ts';
import { advanceTrial } from '../chance/run.ts';
import { runnerCueHolds } from '../chance/runner-cues.ts';
import { ballMode, type ChanceState, phase, stepSeconds, task } from '../chance/state.ts';
import { beginWatched, goalsToEnd, type Outcome, playTo } from './gather-decisions.ts';
import { runNumbers } from './run-numbers.ts';
import type { RunOrder } from './run-orders.ts';
import { runnerVocabulary } from './runner-vocabulary.ts';

/** One look round of a man who waits to run. */
export interface RunnerLook {
  /** Cues that hold in what he sees, bit i for cue i of his vocabulary. */
  readonly cues: number;
  /** See `runNumbers`. */
  readonly numbers: Float64Array;
  /** What it comes to when he goes here. */
  readonly outcome: Outcome;
}

/** One trial in which the play comes to the order to run, and what follows when he waits. All outcomes are counted from the order on. Plain data. */
export interface RunnerChance {
  readonly trial: number;
  /** At least one: the first at the order, the others a fifth of a second apart, for as long as the play goes on, he waits, and it is not the longest wait. */
  readonly looks: readonly RunnerLook[];
  /** What it comes to when he goes at none of them but after the longest wait, if then he still can. */
  readonly stays: Outcome;
  /** What it comes to when he goes as the play has it. */
  readonly goOn: Outcome;
  /** What came after that to the chance's end. Goals. */
  readonly after: number;
  /** When he went as the play has it, seconds after the order; `null` when he never did. */
  readonly wentAfter: number | null;
}

/** Looks in a second: so that a look's time is a quotient, which prints as it is written. */
const looksInSecond = 5;
/** Looks at most: a man who has waited for all of them goes. */
export const mostRunLooks = 20;
/** Seconds from the order to a look. */
export function timeOfLook(look: number): number {
  return look / looksInSecond;
}

/** The longest wait. Seconds. */
const longestWait = timeOfLook(mostRunLooks);

/** Half a step: times that are sums of steps are not compared to the last bit. */
const half = stepSeconds / 2;
/** A script that has not come to the order by then does not. Seconds after its start. */
const longestScript = 25;

/** Two states of one model: the trial is held ready in one and played out in the other. */
export interface RunMemory {
  readonly state: ChanceState;
  readonly spare: ChanceState;
}

/**
 * The chances among trials `from` (included) to `to` (excluded) in which the play, run as it is written, comes to this order to run, with
 * what the man sees at each look while he waits, and what going there comes to. None when the play has no such order.
 *
 * Nobody takes a read or an opening before the order; from the order on everybody plays as ever, with the luck that he would have had,
 * whether the man has gone or not: a mate may throw to who comes open, and may shoot before he goes. So the ways to time the run differ in nothing
 * but the run. Outcomes are those of the `horizon` seconds after the order, the same for all of them; more than the longest wait.
 */
export function gatherRuns(
  model: ChanceModel,
  memory: RunMemory,
  order: RunOrder,
  { from, to, horizon }: { readonly from: number; readonly to: number; readonly horizon: number },
): readonly RunnerChance[] {
  const path = pathOf(model, order);
  if (path === null) return [];
  const chances: RunnerChance[] = [];
  for (let trial = from; trial < to; trial++) {
    const given = findOrder(model, memory.state, order, path, trial);
    if (given !== null) chances.push(tryEveryLook(model, memory, { ...given, path, runner: order.runner }, horizon));
  }
  return chances;
}

/** The path of the order as the model keeps it. */
function pathOf({ program }: ChanceModel, { beat, runner }: RunOrder): Float64Array | null {
  for (const action of program.script.beats[beat]?.actions ?? []) {
    if (action.kind === 'run' && action.by === runner) return action.path;
  }
  return null;
}

/** When an order was given, and the last step before it from which the trial can be taken up again: one without a ball in flight. */
interface GivenOrder {
  readonly trial: number;
  readonly step: number;
  readonly resumeAt: number;
}

interface GivenRun extends GivenOrder {
  readonly runner: number;
  readonly path: Float64Array;
}

/** Runs a watched trial on to the order; `null` when that does not come, or finds him with the ball or waiting for it. */
function findOrder(
  model: ChanceModel,
  state: ChanceState,
  { beat, runner }: RunOrder,
  path: Float64Array,
  trial: number,
): GivenOrder | null {
  beginWatched(model, state, trial);
  let resumeAt = 0;
  while (state.end === null && mayStillCome(model, state)) {
    if (state.ball.mode === ballMode.held) resumeAt = state.step;
    advanceTrial(model, state);
    if (state.unit.script !== model.program.script || !(state.unit.beatStarted[beat] >= 0)) continue;
    return isSentAlong(state, runner, path) ? { trial, step: state.step, resumeAt } : null;
  }
  return null;
}

/** Whether the script has yet to begin, or is in its first run. */
function mayStillCome(model: ChanceModel, { unit, scriptSince, time }: ChanceState): boolean {
  if (unit.phase !== phase.script) return !(scriptSince >= 0);
  return unit.script === model.program.script && time - scriptSince <= longestScript;
}

function isSentAlong({ unit, ball, end }: ChanceState, who: number, path: Float64Array): boolean {
  const isSent = unit.task[who] === task.path || unit.task[who] === task.waitToRun;
  return end === null && unit.phase === phase.script && isSent && unit.path[who] === path && ball.holder !== who;
}

function tryEveryLook(model: ChanceModel, memory: RunMemory, run: GivenRun, horizon: number): RunnerChance {
  const { state, spare } = memory;
  beginWatched(model, spare, run.trial);
  while (spare.step < run.resumeAt) advanceTrial(model, spare);
  const until = run.step * stepSeconds + horizon;
  const goingAfter = (seconds: number): Outcome => {
    bringToOrder(model, memory, run, seconds);
    return playTo(model, state, until);
  };
  const looks = looksWhileWaiting(model, memory, run).map((look, at) => ({
    ...look,
    outcome: goingAfter(timeOfLook(at)),
  }));
  const stays = goingAfter(longestWait);
  bringToOrder(model, memory, run, null);
  const { wentAfter, goOn } = playOn(model, state, run, until);
  return { trial: run.trial, looks, stays, goOn, wentAfter, after: goalsToEnd(model, state) };
}

/** Bring `state` to the end of the step in which the order is given, to be carried out after some seconds, or as the play has it (`null`). */
function bringToOrder(model: ChanceModel, { state, spare }: RunMemory, run: GivenRun, after: number | null): void {
  copyState(spare, state);
  const { path, step } = run;
  if (after !== null) state.forcedRun = { path, time: step * stepSeconds + after - half };
  while (state.step < step) advanceTrial(model, state);
  state.watching = false;
}

/** What he sees at each look while the play goes on and he waits. */
function looksWhileWaiting(
  model: ChanceModel,
  memory: RunMemory,
  run: GivenRun,
): readonly Omit<RunnerLook, 'outcome'>[] {
  const { state } = memory;
  bringToOrder(model, memory, run, longestWait);
  const looks = [lookRound(model, state, run.runner)];
  const stepsBetween = Math.round(1 / (looksInSecond * stepSeconds));
  while (looks.length < mostRunLooks) {
    const next = run.step + looks.length * stepsBetween;
    while (state.step < next && waits(state, run)) advanceTrial(model, state);
    if (!waits(state, run)) break;
    looks.push(lookRound(model, state, run.runner));
  }
  return looks;
}

/** Whether he stands waiting while the play still goes on. */
function waits({ unit, ball, end }: ChanceState, { runner, path }: GivenRun): boolean {
  if (end !== null || unit.phase !== phase.script) return false;
  const inPlay = ball.mode === ballMode.held || ball.mode === ballMode.windUp || ball.mode === ballMode.pass;
  return inPlay && unit.task[runner] === task.waitToRun && unit.path[runner] === path;
}

function lookRound(model: ChanceModel, state: ChanceState, runner: number): Omit<RunnerLook, 'outcome'> {
  const cues = runnerVocabulary(runner).reduce(
    (bits, cue, at) => (runnerCueHolds(model, state, runner, cue) ? bits | (1 << at) : bits),
    0,
  );
  return { cues, numbers: runNumbers(model, state, runner) };
}

/** Play the order as the play has it. */
function playOn(
  model: ChanceModel,
  state: ChanceState,
  { step, runner, path }: GivenRun,
  until: number,
): Pick<RunnerChance, 'goOn' | 'wentAfter'> {
  const before = state.counts.goalOddsSum;
  const { unit } = state;
  while (state.end === null && state.time < until && unit.task[runner] === task.waitToRun) advanceTrial(model, state);
  const went = state.end === null && unit.task[runner] === task.path && unit.path[runner] === path;
  const wentAfter = went ? (state.step - step) * stepSeconds : null;
  const { left } = playTo(model, state, until);
  return { goOn: { goals: state.counts.goalOddsSum - before, left }, wentAfter };
}

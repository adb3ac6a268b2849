import type { ChanceModel } from '../chance/model.ts';
import { fastBreakBelow } from '../chance/possession.ts';
import { runTrial } from '../chance/run.ts';
import type { ChanceState } from '../chance/state.ts';
import type { TurnoverKind } from '../chance/trace.ts';
import type { Tally } from './tally.ts';

/** Every way to lose the ball, in the order in which reports list them. */
export const turnoverKinds: readonly TurnoverKind[] = [
  'intercepted',
  'deflected',
  'badPass',
  'dropped',
  'stripped',
  'saved',
  'blocked',
  'wide',
  'rebound',
  'shotClock',
  'outOfBounds',
  'failedClear',
];

type Sums = { -readonly [Key in keyof Tally]: Tally[Key] };

/** Run trials `from` (included) to `to` (excluded) and count them. `state` is memory made for `model`. */
export function runTrials(model: ChanceModel, state: ChanceState, from: number, to: number): Tally {
  const sums = emptySums(from, to, state.begun_byBeat.length);
  for (let trial = from; trial < to; trial++) {
    runTrial(model, state, trial);
    addTrial(sums, state, trial - from);
  }
  return sums;
}

function emptySums(from: number, to: number, beats: number): Sums {
  if (!(to >= from)) throw new RangeError(`invalid trials: ${from} to ${to} (expected from <= to)`);
  const length = to - from;
  return {
    from,
    to,
    goals_byTrial: new Uint8Array(length),
    goalOdds_byTrial: new Float32Array(length),
    shots_byTrial: new Uint8Array(length),
    turnovers_byTrial: new Uint8Array(length),
    firstShot_byTrial: new Float32Array(length),
    firstGoal_byTrial: new Float32Array(length),
    turnovers: Object.fromEntries(turnoverKinds.map((kind) => [kind, 0])) as Record<TurnoverKind, number>,
    shots: 0,
    goals: 0,
    onTarget: 0,
    saves: 0,
    assistedGoals: 0,
    goalOddsSum: 0,
    farShots: 0,
    farGoals: 0,
    assistedShots: 0,
    passes: 0,
    playPasses: 0,
    passesCaught: 0,
    begun: 0,
    begun_byBeat: new Uint32Array(beats),
    losses: 0,
    backSum: 0,
    fastBreaks: 0,
  };
}

function addTrial(sums: Sums, { counts, begun_byBeat }: ChanceState, index: number): void {
  sums.goals_byTrial[index] = counts.goals;
  sums.goalOdds_byTrial[index] = counts.goalOddsSum;
  sums.shots_byTrial[index] = counts.shots;
  sums.turnovers_byTrial[index] = counts.turnovers;
  sums.firstShot_byTrial[index] = counts.firstShot;
  sums.firstGoal_byTrial[index] = counts.firstGoal;
  sums.shots += counts.shots;
  sums.goals += counts.goals;
  sums.onTarget += counts.onTarget;
  sums.saves += counts.saves;
  sums.assistedGoals += counts.assistedGoals;
  sums.assistedShots += counts.assistedShots;
  sums.goalOddsSum += counts.goalOddsSum;
  sums.farShots += counts.farShots;
  sums.farGoals += counts.farGoals;
  sums.passes += counts.passes;
  sums.passesCaught += counts.passesCaught;
  sums.playPasses += counts.playPasses;
  addBegun(sums, begun_byBeat);
  if (counts.turnover === null) return;
  (sums.turnovers as Record<TurnoverKind, number>)[counts.turnover]++;
  sums.losses++;
  sums.backSum += counts.back;
  if (counts.back < fastBreakBelow) sums.fastBreaks++;
}

/** A play has begun when any of its beats has. */
function addBegun(sums: Sums, begun_byBeat: Uint8Array): void {
  let begun = 0;
  for (let beat = 0; beat < begun_byBeat.length; beat++) {
    begun |= begun_byBeat[beat];
    sums.begun_byBeat[beat] += begun_byBeat[beat];
  }
  sums.begun += begun;
}

/**
 * Add tallies that follow one another without a gap.
 * @throws RangeError when they do not: an answer must not depend on which worker was done first.
 */
export function mergeTallies(tallies: readonly Tally[]): Tally {
  const [first] = tallies;
  if (first === undefined) throw new RangeError('missing tallies: nothing to merge');
  const last = tallies[tallies.length - 1];
  const merged = emptySums(first.from, last.to, first.begun_byBeat.length);
  let expected = first.from;
  for (const tally of tallies) {
    if (tally.from !== expected)
      throw new RangeError(`invalid tallies: trial ${tally.from} after ${expected} (expected no gap)`);
    addTally(merged, tally);
    expected = tally.to;
  }
  return merged;
}

const summed = [
  'shots',
  'goals',
  'onTarget',
  'saves',
  'assistedGoals',
  'goalOddsSum',
  'farShots',
  'farGoals',
  'assistedShots',
  'passes',
  'playPasses',
  'passesCaught',
  'begun',
  'losses',
  'backSum',
  'fastBreaks',
] as const;

function addTally(merged: Sums, tally: Tally): void {
  const offset = tally.from - merged.from;
  merged.goals_byTrial.set(tally.goals_byTrial, offset);
  merged.goalOdds_byTrial.set(tally.goalOdds_byTrial, offset);
  merged.shots_byTrial.set(tally.shots_byTrial, offset);
  merged.turnovers_byTrial.set(tally.turnovers_byTrial, offset);
  merged.firstShot_byTrial.set(tally.firstShot_byTrial, offset);
  merged.firstGoal_byTrial.set(tally.firstGoal_byTrial, offset);
  for (const key of summed) merged[key] += tally[key];
  tally.begun_byBeat.forEach((trials, beat) => {
    merged.begun_byBeat[beat] += trials;
  });
  for (const kind of turnoverKinds) (merged.turnovers as Record<TurnoverKind, number>)[kind] += tally.turnovers[kind];
}

import type { ChanceModel } from '../chance/model.ts';
import { fastBreakBelow } from '../chance/possession.ts';
import { runTrial } from '../chance/run.ts';
import type { ChanceState } from '../chance/state.ts';
import type { TurnoverKind } from '../chance/trace.ts';
import { emptySums, type Sums } from './sums.ts';
import type { Tally } from './tally.ts';

/** Run trials `from` (included) to `to` (excluded) and count them. `state` is memory made for `model`. */
export function runTrials(model: ChanceModel, state: ChanceState, from: number, to: number): Tally {
  const sums = emptySums(from, to, state.begun_byBeat.length);
  for (let trial = from; trial < to; trial++) {
    runTrial(model, state, trial);
    addTrial(sums, state, trial - from);
  }
  return sums;
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

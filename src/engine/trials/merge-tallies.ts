import type { TurnoverKind } from '../chance/trace.ts';
import { emptySums, type Sums } from './sums.ts';
import type { Tally } from './tally.ts';
import { turnoverKinds } from './turnover-kinds.ts';

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

import { compareGoals, estimateGoals, type Tally } from '../../engine/index.ts';
import type { OverallAnswer } from './answers-snapshot.ts';
import type { Baseline } from './baseline.ts';
import type { MatchupRecord } from './matchup-record.ts';

/**
 * All schemes that have an answer, together; `null` while one of them has none. Refused schemes are left out. It is compared with
 * the baseline only when that has every one of them.
 */
export function overallAnswer(
  records: readonly MatchupRecord[],
  weights: readonly number[] | undefined,
  baseline: ReadonlyMap<string, Baseline> | null,
  leastTrials: number,
): OverallAnswer | null {
  const counted = records.flatMap((record, at) =>
    record.refused === null ? [{ record, weight: weights?.[at] ?? (weights === undefined ? 1 : 0) }] : [],
  );
  const tallies = counted.flatMap(({ record: { tally } }) => (tally === null ? [] : [tally]));
  const shares = counted.map(({ weight }) => weight);
  if (tallies.length < counted.length || !shares.some((share) => share > 0)) return null;
  const before = counted.flatMap(({ record }): readonly Tally[] => {
    const known = baseline?.get(record.setup.scheme)?.tally ?? null;
    return known === null ? [] : [known];
  });
  const trials = Math.min(...tallies.map((tally) => tally.to));
  return {
    goals: estimateGoals(tallies, shares),
    trials,
    coarse: trials < leastTrials,
    change: before.length === counted.length ? compareGoals(tallies, before, shares) : null,
  };
}

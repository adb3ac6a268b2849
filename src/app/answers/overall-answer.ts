import { compareGoals, estimateGoals, type Tally } from '../../engine/index.ts';
import type { OverallAnswer } from './answers-snapshot.ts';
import { type Baseline, isEdited } from './baseline.ts';
import type { MatchupRecord } from './matchup-record.ts';

/** What all schemes together are compared with, each by scheme; `null` when there is no such thing. */
export interface Compared {
  readonly baseline: ReadonlyMap<string, Baseline> | null;
  readonly setAlone: ReadonlyMap<string, Baseline>;
}

/**
 * All schemes that have an answer, together; `null` while one of them has none. Refused schemes are left out. It is compared with
 * a baseline only when that has every one of them and one of them was edited since, and with the set alone only when a few trials of every one of them are known.
 */
export function overallAnswer(
  records: readonly MatchupRecord[],
  weights: readonly number[] | undefined,
  { baseline, setAlone }: Compared,
  leastTrials: number,
): OverallAnswer | null {
  const counted = records.flatMap((record, at) =>
    record.refused === null ? [{ record, weight: weights?.[at] ?? (weights === undefined ? 1 : 0) }] : [],
  );
  const tallies = counted.flatMap(({ record: { tally } }) => (tally === null ? [] : [tally]));
  const shares = counted.map(({ weight }) => weight);
  if (tallies.length < counted.length || !shares.some((share) => share > 0)) return null;
  const against = (others: ReadonlyMap<string, Baseline> | null): readonly Tally[] =>
    counted.flatMap(({ record }): readonly Tally[] => {
      const before = others?.get(record.setup.scheme);
      // Where nothing was edited it is as it was, counted as far as it is now.
      const known = before?.setup === record.setup ? record.tally : (before?.tally ?? null);
      return known === null ? [] : [known];
    });
  const wasEdited = baseline !== null && counted.some(({ record }) => isEdited(record, baseline));
  const [before, alone] = [against(baseline), against(setAlone)];
  const trials = Math.min(...tallies.map((tally) => tally.to));
  const overAlone = alone.length === counted.length ? compareGoals(tallies, alone, shares) : null;
  return {
    goals: estimateGoals(tallies, shares),
    trials,
    coarse: trials < leastTrials,
    change: wasEdited && before.length === counted.length ? compareGoals(tallies, before, shares) : null,
    overSetAlone: overAlone !== null && overAlone.trials >= leastTrials ? overAlone : null,
  };
}

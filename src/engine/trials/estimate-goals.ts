import { estimateCount } from '../statistics/estimate-count.ts';
import { studentMeanInterval } from '../statistics/mean-interval.ts';
import { addValue, createMoments, type RunningMoments, varianceOf } from '../statistics/running-moments.ts';
import type { Interval } from './report.ts';
import type { Tally } from './tally.ts';

/**
 * Goals per chance with a 95 % interval, from the odds of the shots that were taken instead of the goals that came of them.
 *
 * The last coin of each shot is not thrown: a trial counts what its goals would be on average. That has the same mean, because a shot's odds
 * are those by which its goal is drawn, and a quarter of the spread or less (docs/decisions/0019-goals-from-odds.md), so a quarter of the
 * trials tells as much. Of several tallies (one play against several schemes) it is the mean by `weights`, equal when absent, over the trials
 * that all have run: trial for trial they share their luck, so they are added up before the spread is taken.
 * RangeError when they have no trial in common or no weight.
 */
export function estimateGoals(tallies: readonly Tally[], weights?: readonly number[]): Interval {
  const { from, to } = commonTrials(tallies);
  const moments = createMoments();
  const odds = oddsOf(tallies, weights);
  for (let trial = from; trial < to; trial++) addValue(moments, odds(trial));
  return intervalOf(moments);
}

/** How much better a play is than another, both against the same schemes in the same order, with the same seed. */
export interface GoalChange {
  /** Trials that all have run: only these are compared. */
  readonly trials: number;
  /** Goals per chance of the first less those of the second, with its 95 % interval. */
  readonly difference: Interval;
  /** How much luck they share, -1 to 1: the correlation of their odds trial by trial; 0 when one of them never varies. */
  readonly correlation: number;
}

/** Compare trial by trial; of a play with itself it is 0 (0 to 0). Weights and errors as those of `estimateGoals`. */
export function compareGoals(
  firsts: readonly Tally[],
  seconds: readonly Tally[],
  weights?: readonly number[],
): GoalChange {
  const { from, to } = commonTrials([...firsts, ...seconds]);
  const [first, second] = [oddsOf(firsts, weights), oddsOf(seconds, weights)];
  const [one, other, apart] = [createMoments(), createMoments(), createMoments()];
  for (let trial = from; trial < to; trial++) {
    addValue(one, first(trial));
    addValue(other, second(trial));
    addValue(apart, first(trial) - second(trial));
  }
  const { mean, low, high } = studentMeanInterval(apart);
  return { trials: to - from, difference: { mean, low, high }, correlation: correlationOf(one, other, apart) };
}

/** Var(a - b) = Var a + Var b - 2 Cov(a, b), solved for the covariance. */
function correlationOf(one: RunningMoments, other: RunningMoments, apart: RunningMoments): number {
  const spread = Math.sqrt(varianceOf(one) * varianceOf(other));
  return spread === 0 ? 0 : (varianceOf(one) + varianceOf(other) - varianceOf(apart)) / (2 * spread);
}

function commonTrials(tallies: readonly Tally[]): { readonly from: number; readonly to: number } {
  const from = Math.max(...tallies.map((tally) => tally.from));
  const to = Math.min(...tallies.map((tally) => tally.to));
  if (to > from) return { from, to };
  throw new RangeError(`invalid tallies: trials ${from} to ${to} (expected some in common)`);
}

function oddsOf(
  tallies: readonly Tally[],
  weights: readonly number[] = tallies.map(() => 1),
): (trial: number) => number {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  if (weights.length !== tallies.length || !(all > 0)) {
    throw new RangeError(`invalid weights: ${weights.join(', ')} (expected one for each of ${tallies.length} tallies)`);
  }
  return (trial) => {
    let sum = 0;
    for (let at = 0; at < tallies.length; at++) {
      const { goalOdds_byTrial, from } = tallies[at];
      sum += weights[at] * goalOdds_byTrial[trial - from];
    }
    return sum / all;
  };
}

/** Goals with a 95 % interval from the odds of each trial, as `estimateGoals`: for what was not counted in tallies. */
export function estimateOdds(odds_byTrial: ArrayLike<number>): Interval {
  const moments = createMoments();
  for (let trial = 0; trial < odds_byTrial.length; trial++) addValue(moments, odds_byTrial[trial]);
  return intervalOf(moments);
}

function intervalOf(moments: RunningMoments): Interval {
  const { count, mean } = moments;
  // A few trials without a shot show no spread; that they had none says only that shots are rare.
  if (varianceOf(moments) === 0) return { mean, low: 0, high: mean + estimateCount(new Uint8Array(count)).high };
  const { low, high } = studentMeanInterval(moments);
  return { mean, low: Math.max(0, low), high };
}

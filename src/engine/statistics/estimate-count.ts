import { studentMeanInterval } from './mean-interval.ts';
import { normalQuantile } from './normal-quantile.ts';
import { addValue, createMoments, varianceOf } from './running-moments.ts';
import { type Estimate, wilsonInterval } from './wilson-interval.ts';

/** Quantile of a two-sided 95 % interval. */
const z = normalQuantile(0.975);

/**
 * Mean of a count per trial with its 95 % interval, from whole numbers of 0 and more.
 *
 * A count that never goes above 1 is a share and gets Wilson's interval; any other count gets Student's interval for a mean, which
 * stays wide where there are few trials and never goes below 0. Without trials: mean 0, interval 0 to Infinity.
 * `estimateCount([0, 1, 1, 0])` is .5 (.15 to .85).
 */
export function estimateCount(count_byTrial: ArrayLike<number>): Estimate {
  const trials = count_byTrial.length;
  const moments = createMoments();
  let most = 0;
  for (let trial = 0; trial < trials; trial++) {
    const count = count_byTrial[trial];
    addValue(moments, count);
    if (count > most) most = count;
  }
  if (trials > 0 && most <= 1) return wilsonInterval(Math.round(moments.mean * trials), trials);
  if (trials < 2 || varianceOf(moments) === 0) return scoreInterval(moments.mean, trials);
  const { mean, low, high } = studentMeanInterval(moments);
  return { mean, low: Math.max(0, low), high };
}

/**
 * Score interval for the mean of a Poisson count, for the few trials that show no spread: there Student's interval would
 * have no width. Source: the roots of (mean - m)^2 = z^2 m / trials.
 */
function scoreInterval(mean: number, trials: number): Estimate {
  if (trials === 0) return { mean: 0, low: 0, high: Number.POSITIVE_INFINITY };
  const middle = mean + (z * z) / (2 * trials);
  const half = z * Math.sqrt(mean / trials + (z * z) / (4 * trials * trials));
  return { mean, low: Math.max(0, middle - half), high: middle + half };
}

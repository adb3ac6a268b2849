import { type RunningMoments, varianceOf } from './running-moments.ts';
import { studentQuantile } from './student-quantile.ts';
import { type Estimate, twoSided } from './wilson-interval.ts';

/**
 * Normal interval for a mean: for the hundreds of trials of a simulation.
 *
 * `confidence` above 0 and below 1, .95 when absent. With fewer than two numbers nothing is known of the spread, and the
 * interval is infinite; with none the mean is 0.
 */
export function meanInterval(moments: RunningMoments, confidence = 0.95): Estimate {
  return around(moments, twoSided(confidence));
}

/** Student's interval for a mean: right for a handful of numbers too, if they are about normal. */
export function studentMeanInterval(moments: RunningMoments, confidence = 0.95): Estimate {
  twoSided(confidence);
  if (moments.count < 2) return around(moments, Infinity);
  return around(moments, studentQuantile((1 + confidence) / 2, moments.count - 1));
}

function around(moments: RunningMoments, quantile: number): Estimate {
  const { count, mean } = moments;
  if (count < 2) return { mean, low: -Infinity, high: Infinity };
  const half = quantile * Math.sqrt(varianceOf(moments) / count);
  return { mean, low: mean - half, high: mean + half };
}

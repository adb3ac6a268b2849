import { type Estimate, twoSided } from './wilson-interval.ts';

/**
 * Normal interval for a weighted mean of independent numbers, for hundreds of them: its variance is that of the sum of the weighted distances
 * from the mean (Cochran 1977, Sampling Techniques, 6.3: the ratio estimate). With equal weights `meanInterval` but for n in place of n - 1.
 *
 * `confidence` above 0 and below 1, .95 when absent. RangeError when there is not one weight for each number, or none that counts.
 */
export function weightedMeanInterval(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  confidence = 0.95,
): Estimate {
  let all = 0;
  let sum = 0;
  for (let at = 0; at < weights.length; at++) {
    all += weights[at];
    sum += weights[at] * values[at];
  }
  if (weights.length !== values.length || !(all > 0)) {
    throw new RangeError(`invalid weights: ${weights.length} for ${values.length} numbers, ${all} in all`);
  }
  const mean = sum / all;
  let squares = 0;
  for (let at = 0; at < weights.length; at++) squares += (weights[at] * (values[at] - mean)) ** 2;
  const half = (twoSided(confidence) * Math.sqrt(squares)) / all;
  return { mean, low: mean - half, high: mean + half };
}

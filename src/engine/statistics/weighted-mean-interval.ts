import { studentQuantile } from './student-quantile.ts';
import type { Estimate } from './wilson-interval.ts';

const confidence = 0.95;

/**
 * Student's 95 % interval for a weighted mean: its variance is that of the sum of the weighted distances from the mean (Cochran 1977, Sampling
 * Techniques, 6.3: the ratio estimate), times n / (n - 1) for n independent numbers that count. With equal weights `studentMeanInterval`; of one
 * number without end.
 *
 * Numbers of the same group share their luck, and only groups are independent of one another: the distances of a group are added up before they are
 * squared (Liang and Zeger 1986, Biometrika 73:13; from memory). Without `group_byNumber` each is its own. RangeError when there is not one
 * weight, or one group, for each number, or no weight that counts.
 */
export function weightedMeanInterval(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  group_byNumber?: ArrayLike<number>,
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
  if (group_byNumber !== undefined && group_byNumber.length !== values.length) {
    throw new RangeError(`invalid groups: ${group_byNumber.length} for ${values.length} numbers`);
  }
  const mean = sum / all;
  const distances = new Map<number, number>();
  for (let at = 0; at < weights.length; at++) {
    if (!(weights[at] > 0)) continue;
    const group = group_byNumber?.[at] ?? at;
    distances.set(group, (distances.get(group) ?? 0) + weights[at] * (values[at] - mean));
  }
  let squares = 0;
  for (const distance of distances.values()) squares += distance ** 2;
  const groups = distances.size;
  if (groups < 2) return { mean, low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
  const quantile = studentQuantile((1 + confidence) / 2, groups - 1);
  const half = (quantile * Math.sqrt((squares * groups) / (groups - 1))) / all;
  return { mean, low: mean - half, high: mean + half };
}

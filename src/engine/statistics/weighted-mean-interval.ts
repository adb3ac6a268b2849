import { type Estimate, twoSided } from './wilson-interval.ts';

const confidence = 0.95;

/**
 * Normal 95 % interval for a weighted mean, for hundreds of numbers: its variance is that of the sum of the weighted distances from the mean
 * (Cochran 1977, Sampling Techniques, 6.3: the ratio estimate). With equal weights `meanInterval` but for n in place of n - 1.
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
    const group = group_byNumber?.[at] ?? at;
    distances.set(group, (distances.get(group) ?? 0) + weights[at] * (values[at] - mean));
  }
  let squares = 0;
  for (const distance of distances.values()) squares += distance ** 2;
  const half = (twoSided(confidence) * Math.sqrt(squares)) / all;
  return { mean, low: mean - half, high: mean + half };
}

/**
 * Count, mean and spread of numbers seen one at a time, without keeping them.
 *
 * `squares` is the sum of squared distances from the mean. Merging the parts of a run in the order of its batches gives the
 * same bits on any number of workers; adding one by one and merging agree to rounding.
 *
 * Source: Welford 1962, Technometrics 4:419; merging: Chan, Golub and LeVeque 1983, The American Statistician 37:242.
 */
export interface RunningMoments {
  count: number;
  mean: number;
  squares: number;
}

export function createMoments(): RunningMoments {
  return { count: 0, mean: 0, squares: 0 };
}

/** Take in one finite number. */
export function addValue(moments: RunningMoments, value: number): void {
  moments.count += 1;
  const before = value - moments.mean;
  moments.mean += before / moments.count;
  moments.squares += before * (value - moments.mean);
}

/** Take in everything that `other` has seen; `other` is left alone. */
export function mergeMoments(moments: RunningMoments, other: RunningMoments): void {
  if (other.count === 0) return;
  const count = moments.count + other.count;
  const apart = other.mean - moments.mean;
  moments.squares += other.squares + (apart * apart * moments.count * other.count) / count;
  moments.mean += (apart * other.count) / count;
  moments.count = count;
}

/** Unbiased variance; 0 for fewer than two numbers. */
export function varianceOf(moments: RunningMoments): number {
  return moments.count < 2 ? 0 : moments.squares / (moments.count - 1);
}

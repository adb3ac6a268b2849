import { studentMeanInterval } from './mean-interval.ts';
import { addValue, createMoments } from './running-moments.ts';
import type { Estimate } from './wilson-interval.ts';

/**
 * Interval for the mean of a[k] - b[k] where both come from the same trial k (common random numbers).
 *
 * Far narrower than the difference of two intervals when luck is shared: Var(a - b) = Var a + Var b - 2 Cov(a, b).
 * RangeError when the lengths differ.
 */
export function pairedDifference(a: ArrayLike<number>, b: ArrayLike<number>, confidence = 0.95): Estimate {
  if (a.length !== b.length) throw new RangeError(`invalid pairs: ${a.length} against ${b.length} values`);
  const moments = createMoments();
  for (let k = 0; k < a.length; k++) addValue(moments, a[k]! - b[k]!);
  return studentMeanInterval(moments, confidence);
}

import { betaQuantile } from './beta-distribution.ts';
import { normalQuantile } from './normal-quantile.ts';

/**
 * The value below which the share p of Student's distribution with `freedom` degrees of freedom lies.
 *
 * p from 0 (excluded) to 1 (excluded), freedom >= 1; RangeError otherwise. Odd about one half.
 * From t^2 / (freedom + t^2) being Beta(1/2, freedom / 2) distributed; above a million degrees it is the normal's.
 */
export function studentQuantile(p: number, freedom: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`invalid probability: ${p} (expected above 0 and below 1)`);
  if (!(freedom >= 1)) throw new RangeError(`invalid degrees of freedom: ${freedom} (expected 1 or more)`);
  if (p === 0.5) return 0;
  if (freedom > 1e6) return normalQuantile(p);
  const tail = Math.min(p, 1 - p);
  // freedom / (freedom + t^2) keeps its digits in the tail, where t^2 / (freedom + t^2) is close to 1.
  const rest = betaQuantile(2 * tail, freedom / 2, 0.5);
  const t = Math.sqrt((freedom * (1 - rest)) / rest);
  return p < 0.5 ? -t : t;
}

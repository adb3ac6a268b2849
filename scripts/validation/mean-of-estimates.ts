import type { Estimate } from '../../src/engine/index.ts';

/** The mean of estimates that share no luck, each counting the same: their variances add. 95 % intervals in, a 95 % interval out. RangeError when there is none. */
export function meanOfEstimates(estimates: readonly Estimate[]): Estimate {
  if (estimates.length === 0) throw new RangeError('invalid estimates: none (expected at least one)');
  const mean = estimates.reduce((sum, each) => sum + each.mean, 0) / estimates.length;
  const squares = estimates.reduce((sum, { low, high }) => sum + ((high - low) / 2) ** 2, 0);
  const half = Math.sqrt(squares) / estimates.length;
  return { mean, low: mean - half, high: mean + half };
}

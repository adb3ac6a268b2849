import { normalQuantile } from './normal-quantile.ts';

/** A best guess with the interval around it. */
export interface Estimate {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Wilson's score interval for a share, from `hits` out of `tries`.
 *
 * `confidence` above 0 and below 1, .95 when absent. Without tries everything is possible: mean .5, interval 0 to 1.
 * RangeError for hits outside 0 to tries. `wilsonInterval(81, 263)` is .308 (.2553 to .3662).
 *
 * Source: Wilson 1927, JASA 22:209; Newcombe 1998, Statistics in Medicine 17:857, method 3.
 */
export function wilsonInterval(hits: number, tries: number, confidence = 0.95): Estimate {
  if (!(hits >= 0 && hits <= tries && tries < Infinity)) {
    throw new RangeError(`invalid count: ${hits} of ${tries} (expected hits from 0 to tries)`);
  }
  if (tries === 0) return { mean: 0.5, low: 0, high: 1 };
  const z = twoSided(confidence);
  const share = hits / tries;
  const widened = tries + z * z;
  const middle = (hits + (z * z) / 2) / widened;
  const half = (z * Math.sqrt(tries * share * (1 - share) + (z * z) / 4)) / widened;
  return {
    mean: share,
    low: hits === 0 ? 0 : Math.max(0, middle - half),
    high: hits === tries ? 1 : Math.min(1, middle + half),
  };
}

/** The normal quantile of a two-sided interval. */
export function twoSided(confidence: number): number {
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError(`invalid confidence: ${confidence} (expected above 0 and below 1)`);
  }
  return normalQuantile((1 + confidence) / 2);
}

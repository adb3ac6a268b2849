import { type Estimate, wilsonInterval } from './wilson-interval.ts';

/** Hits out of tries. */
export interface Count {
  readonly hits: number;
  readonly tries: number;
}

/**
 * The difference of two shares that were counted apart, first less second, from -1 to 1, with an interval that stays inside that range and holds for few tries too.
 *
 * `confidence` above 0 and below 1, .95 when absent. A side without tries could be anything: its share counts as .5, its interval as 0 to 1. RangeError as for
 * `wilsonInterval`. 56 of 70 and 48 of 80 differ by .2 (.0524 to .3339).
 *
 * Source: Newcombe 1998, Statistics in Medicine 17:873, method 10 (hybrid score, without correction).
 */
export function shareDifference(first: Count, second: Count, confidence = 0.95): Estimate {
  const one = wilsonInterval(first.hits, first.tries, confidence);
  const other = wilsonInterval(second.hits, second.tries, confidence);
  const mean = one.mean - other.mean;
  return {
    mean,
    low: mean - Math.hypot(one.mean - one.low, other.high - other.mean),
    high: mean + Math.hypot(one.high - one.mean, other.mean - other.low),
  };
}

import { type Count, type Estimate, shareDifference } from '../../engine/index.ts';

/** What can be concluded of one group beside another. */
export interface GroupComparison {
  /** Goals a man-up of the first less those of the second. */
  readonly difference: Estimate;
  /** `better` and `worse` only where luck is no likely cause: the interval leaves out 0. */
  readonly verdict: 'better' | 'worse' | 'unsure';
}

/**
 * Compares what two groups made of their man-ups. `comparisons` is how many such pairs are looked at together: of twenty pairs that are all alike one would seem to differ at 95 %, so
 * each is asked for more the more there are (Bonferroni: 1 - .05 / comparisons).
 */
export function compareGroups(first: Count, second: Count, comparisons = 1): GroupComparison {
  if (!(comparisons >= 1)) throw new RangeError(`invalid number of comparisons: ${comparisons} (expected 1 or more)`);
  const difference = shareDifference(first, second, 1 - 0.05 / comparisons);
  const told = first.tries > 0 && second.tries > 0;
  const verdict = told && difference.low > 0 ? 'better' : told && difference.high < 0 ? 'worse' : 'unsure';
  return { difference, verdict };
}

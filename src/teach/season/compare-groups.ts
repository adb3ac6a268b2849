import { type Count, type Estimate, shareDifference } from '../../engine/index.ts';

/** What can be concluded of one group beside another. */
export interface GroupComparison {
  /** Goals a chance of the first less those of the second. */
  readonly difference: Estimate;
  /** `better` and `worse` only where luck is no likely cause: the interval leaves out 0, as it is told, in whole goals of 100 chances. */
  readonly verdict: 'better' | 'worse' | 'unsure';
}

/**
 * Compares what two groups made of their chances. `comparisons` is how many such pairs are looked at together: of twenty pairs that are all alike one would seem to differ at 95 %, so
 * each is asked for more the more there are (Bonferroni: 1 - .05 / comparisons).
 */
export function compareGroups(first: Count, second: Count, comparisons = 1): GroupComparison {
  if (!(comparisons >= 1)) throw new RangeError(`invalid number of comparisons: ${comparisons} (expected 1 or more)`);
  const difference = shareDifference(first, second, 1 - 0.05 / comparisons);
  return { difference, verdict: verdictOf(first, second, difference) };
}

/** Tries of either group from which anything is called sure: of fewer, score intervals are too short (3 of 3 and 0 of 3 would differ, and by Fisher's exact test one pair in ten that is alike does). */
const fewestTries = 5;

/** Whether there are enough of both groups to compare them at all. */
export function canCompare(first: Count, second: Count): boolean {
  return Math.min(first.tries, second.tries) >= fewestTries;
}

function verdictOf(first: Count, second: Count, { low, high }: Estimate): GroupComparison['verdict'] {
  if (!canCompare(first, second)) return 'unsure';
  if (inHundred(low) > 0) return 'better';
  return inHundred(high) < 0 ? 'worse' : 'unsure';
}

/** As it is told: what is surely more must not read as "by 0". */
function inHundred(share: number): number {
  return Math.round(share * 100);
}

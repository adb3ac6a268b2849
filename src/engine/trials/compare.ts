import { pairedDifference } from '../statistics/paired-difference.ts';
import type { Interval } from './report.ts';
import type { Tally } from './tally.ts';

/** Two runs of the same trials with the same seed: two plays, two schemes, or a play before and after an edit. */
export interface Comparison {
  readonly trials: number;
  /** Goals per chance of each. */
  readonly first: number;
  readonly second: number;
  /** Goals per chance of the first less those of the second, with its 95 % interval. */
  readonly difference: Interval;
  /** How much luck they share, -1 to 1: the correlation of their goals trial by trial; 0 when one of them never varies. */
  readonly correlation: number;
}

/**
 * Compare two tallies trial by trial. Both must cover the same trials: the luck that they share then drops out of the difference.
 * RangeError when they do not.
 */
export function compareTallies(first: Tally, second: Tally): Comparison {
  if (first.from !== second.from || first.to !== second.to) {
    throw new RangeError(
      `invalid tallies: trials ${first.from} to ${first.to} against ${second.from} to ${second.to} (expected the same)`,
    );
  }
  const a = first.goals_byTrial;
  const b = second.goals_byTrial;
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  return {
    trials: a.length,
    first: meanA,
    second: meanB,
    difference: pairedDifference(a, b),
    correlation: correlationOf(a, meanA, b, meanB),
  };
}

function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += values[at];
  return values.length === 0 ? 0 : sum / values.length;
}

function correlationOf(a: ArrayLike<number>, meanA: number, b: ArrayLike<number>, meanB: number): number {
  let [squaresA, squaresB, products] = [0, 0, 0];
  for (let trial = 0; trial < a.length; trial++) {
    const apartA = a[trial] - meanA;
    const apartB = b[trial] - meanB;
    squaresA += apartA * apartA;
    squaresB += apartB * apartB;
    products += apartA * apartB;
  }
  if (squaresA === 0 || squaresB === 0) return 0;
  return products / Math.sqrt(squaresA * squaresB);
}

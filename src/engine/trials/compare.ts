import { pairedDifference } from '../statistics/paired-difference.ts';
import type { Interval } from './report.ts';
import type { Tally } from './tally.ts';

/** Two runs of the same trials with the same seed: two plays, two schemes, or a play before and after an edit. */
export interface Comparison {
  /** Trials that both ran: only these are compared. */
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
 * Compare two tallies trial by trial: the luck that they share then drops out of the difference. Where one stopped earlier, both are
 * cut to the trials that they have in common. RangeError when these are none.
 */
export function compareTallies(first: Tally, second: Tally): Comparison {
  const from = Math.max(first.from, second.from);
  const to = Math.min(first.to, second.to);
  if (to <= from) {
    throw new RangeError(
      `invalid tallies: trials ${first.from} to ${first.to} against ${second.from} to ${second.to} (expected some in common)`,
    );
  }
  const a = first.goals_byTrial.subarray(from - first.from, to - first.from);
  const b = second.goals_byTrial.subarray(from - second.from, to - second.from);
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
  return sum / values.length;
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

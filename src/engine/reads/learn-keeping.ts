import { fitLeastSquares } from '../statistics/least-squares.ts';
import type { CarrierChance, Outcome } from './gather-decisions.ts';

/** Goals that a unit makes from a ball in hand with so many seconds of the penalty left. */
export type Keeping = (left: number) => number;

/** As many chances of no worth are added for each number that is learnt. */
const ridge = 2;
/** Seconds that count as one in the fit: so the ridge weighs on both numbers alike. */
const scale = 30;

/**
 * What keeping the ball is worth, learnt from what came after the horizon where it was left to the play: a straight line in the
 * time that is left, nowhere under 0. With no such chance it is worth nothing.
 */
export function learnKeeping(chances: readonly Pick<CarrierChance, 'goOn' | 'after'>[]): Keeping {
  const kept = chances.flatMap(({ goOn, after }) => (goOn.left === null ? [] : [{ left: goOn.left, after }]));
  if (kept.length === 0) return () => 0;
  const rows = Float64Array.from(kept.flatMap(({ left }) => [1, left / scale]));
  const [base, slope] = fitLeastSquares(
    rows,
    2,
    Float64Array.from(kept, ({ after }) => after),
    ridge,
  );
  return (left) => Math.max(0, base + (slope * left) / scale);
}

/** What an outcome is worth in all, goals. */
export function worthOf({ goals, left }: Outcome, keeping: Keeping): number {
  return goals + (left === null ? 0 : keeping(left));
}

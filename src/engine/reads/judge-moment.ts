import { studentMeanInterval } from '../statistics/mean-interval.ts';
import { addValue, createMoments } from '../statistics/running-moments.ts';
import type { Interval } from '../trials/report.ts';
import { type Keeping, worthOf } from './learn-keeping.ts';
import type { MomentOutcomes } from './value-moment.ts';

/** What one action is worth at a moment. */
export interface JudgedAction {
  /** Goals, mean over the futures with its 95 % interval. */
  readonly worth: Interval;
  /** How much less that is than the best: by the differences in one and the same future, goals. 0 (0 to 0) for the best itself. */
  readonly behind: Interval;
  /** The future, counted from the first, in which it came to what it comes to in the middle: half of them came to no more. */
  readonly middle: number;
}

/** What the actions of a moment are worth beside each other, in their order. */
export interface MomentJudgement {
  readonly actions: readonly JudgedAction[];
  /** The one with the highest mean; the first of equals. */
  readonly best: number;
}

/** Compares the actions of a moment future by future. RangeError without an action or with fewer than two futures. */
export function judgeMoment(
  { outcome_byFuture_byAction }: Pick<MomentOutcomes, 'outcome_byFuture_byAction'>,
  keeping: Keeping,
): MomentJudgement {
  const worths = outcome_byFuture_byAction.map((outcomes) => outcomes.map((outcome) => worthOf(outcome, keeping)));
  const futures = worths[0]?.length ?? 0;
  if (futures < 2) throw new RangeError(`invalid futures: ${futures} (expected two at least)`);
  const means = worths.map((each) => intervalOf(each).mean);
  const best = means.indexOf(Math.max(...means));
  return {
    best,
    actions: worths.map((each) => ({
      worth: intervalOf(each),
      behind: intervalOf(each.map((worth, future) => worths[best][future] - worth)),
      middle: middleOf(each),
    })),
  };
}

function intervalOf(values: readonly number[]): Interval {
  const moments = createMoments();
  for (const value of values) addValue(moments, value);
  const { mean, low, high } = studentMeanInterval(moments);
  return { mean, low, high };
}

function middleOf(worths: readonly number[]): number {
  const order = worths.map((_, future) => future).sort((one, other) => worths[one] - worths[other] || one - other);
  return order[(order.length - 1) >> 1]!;
}

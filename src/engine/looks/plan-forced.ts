import { estimateCount } from '../statistics/estimate-count.ts';
import type { Estimate } from '../statistics/wilson-interval.ts';
import type { ForcedTrial } from './force-looks.ts';
import type { LookSummary } from './summarize.ts';

/** Trials that force a look for each of the likeliest looks: half of its value's interval is then about .06 goals. */
export const forcedPerLook = 200;
/** Looks whose value is found out: more than are reported, because the promising ones are not always the good ones. */
export const forcedLooks = 12;

/**
 * The trials that have to be run to know what each look is worth: up to `perLook` for each of the first `looks` and for each that the play
 * throws itself (`own`), spread evenly over the trials in which it came open. The plan follows from its arguments alone. In order of looks,
 * then of trials.
 */
export function planForced(
  summaries: readonly LookSummary[],
  perLook = forcedPerLook,
  looks = forcedLooks,
  own: readonly { readonly from: number; readonly to: number }[] = [],
): ForcedTrial[] {
  const isOwn = (look: LookSummary): boolean => own.some(({ from, to }) => from === look.from && to === look.to);
  return summaries
    .filter((look, at) => at < looks || isOwn(look))
    .flatMap(({ windows, from, to }) =>
      spread(windows, perLook).map((window) => ({ trial: window.trial, time: window.seenAt, from, to })),
    );
}

/** At most `most` of the items, evenly spaced, first in the middle of its stretch. */
function spread<T>(items: readonly T[], most: number): readonly T[] {
  if (items.length <= most) return items;
  return Array.from({ length: most }, (_, at) => items[Math.floor(((at + 0.5) * items.length) / most)]!);
}

/**
 * A worth that rests on fewer replays than this says next to nothing: half of its interval is .3 goals and more. Reports in words leave
 * it out; numbers for other programs keep it with its count.
 */
export const leastReplays = 10;

/** What a look is worth: goals from the moment that the carrier can first have seen it to the chance's end, 95 % interval. */
export interface LookValue {
  readonly from: number;
  readonly to: number;
  /** Trials that forced it. */
  readonly trials: number;
  readonly value: number;
  readonly valueLow: number;
  readonly valueHigh: number;
}

/**
 * Add up what a plan's trials scored, look by look in the plan's order: the goals of `playForced(model, state, plan)`, or their odds, which
 * `estimateOdds` has to put an interval to.
 * A look that had gone before the carrier could have seen it is thrown into what was there by then, and is worth just that.
 * RangeError when there is not one count for each trial of the plan.
 */
export function valueLooks(
  plan: readonly ForcedTrial[],
  goals_byForced: ArrayLike<number>,
  estimate: (goals: ArrayLike<number>) => Estimate = estimateCount,
): LookValue[] {
  if (plan.length !== goals_byForced.length) {
    throw new RangeError(`invalid goals: ${goals_byForced.length} for ${plan.length} forced trials`);
  }
  const goals_byPair = new Map<number, number[]>();
  plan.forEach(({ from, to }, at) => {
    const pair = from * 6 + to;
    const goals = goals_byPair.get(pair) ?? [];
    goals.push(goals_byForced[at]);
    goals_byPair.set(pair, goals);
  });
  return [...goals_byPair].map(([pair, goals]) => {
    const { mean, low, high } = estimate(goals);
    const [from, to] = [Math.floor(pair / 6), pair % 6];
    return { from, to, trials: goals.length, value: mean, valueLow: low, valueHigh: high };
  });
}

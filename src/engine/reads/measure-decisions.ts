import { weightedMeanInterval } from '../statistics/weighted-mean-interval.ts';
import type { Interval } from '../trials/report.ts';
import type { DecisionTable } from './decision-table.ts';

/** Goals a chance by one way to decide, and how much more that is than leaving it to the play, in the same chances. 95 %. */
export interface ValuedDecisions {
  readonly goals: Interval;
  readonly gain: Interval;
}

/** What some ways to decide come to in a table, given what each chance comes to by them. */
export interface Measure {
  goals(worth_byChance: ArrayLike<number>): Interval;
  /** How much more `worths` come to than `others`, pair by pair. */
  difference(worth_byChance: ArrayLike<number>, other_byChance: ArrayLike<number>): Interval;
  decisions(worth_byChance: ArrayLike<number>): ValuedDecisions;
}

/** Measures over all chances of a table by their weights. */
export function measureIn(table: DecisionTable): Measure {
  return measureWhere(table, () => true);
}

/**
 * Measures over the chances of a table for which `counts` holds, by their weights; chances that were played with the same luck are no independent
 * evidence, and intervals allow for it. RangeError as soon as it is used when there is no chance.
 */
export function measureWhere(table: DecisionTable, counts: (chance: number) => boolean): Measure {
  const counted = Array.from(table.goOn_byChance, (_, chance) => chance).filter(counts);
  const weights = Float64Array.from(counted, (chance) => table.weight_byChance[chance]);
  const lucks = counted.map((chance) => table.luck_byChance?.[chance] ?? chance);
  const interval = (of: (chance: number) => number): Interval =>
    withinReach(weightedMeanInterval(Float64Array.from(counted, of), weights, lucks));
  const goals = (worths: ArrayLike<number>): Interval => interval((chance) => worths[chance]);
  const difference = (worths: ArrayLike<number>, others: ArrayLike<number>): Interval =>
    interval((chance) => worths[chance] - others[chance]);
  return {
    goals,
    difference,
    decisions: (worths) => ({ goals: goals(worths), gain: difference(worths, table.goOn_byChance) }),
  };
}

/** A chance brings no goal or one, near enough, so that no mean is further off than that, however few chances tell of it. */
const furthest = 1;

function withinReach({ mean, low, high }: Interval): Interval {
  return { mean, low: Math.max(low, mean - furthest), high: Math.min(high, mean + furthest) };
}

import {
  addValue,
  brierIfRight,
  brierScore,
  createMoments,
  type Estimate,
  expectedHits,
  type Forecast,
  studentMeanInterval,
  wilsonInterval,
} from '../../engine/index.ts';
import type { Chance } from '../../playbook/index.ts';

/** What the simulation said of the chances that were called with it, and what came. */
export interface PlanAndResult {
  readonly chances: number;
  readonly goals: number;
  /** Goals that should have come, and the range that luck alone spans 95 times in 100 if the simulation is right. */
  readonly expected: Estimate;
  /** Mean squared miss of a forecast: .25 is that of who always says half. */
  readonly brier: number;
  /** That of the same forecasts on average if they are right. */
  readonly brierIfRight: number;
  /** That of who always says the share that came in the end: to do better than that is to tell one chance from another. */
  readonly brierOfShare: number;
  /** How much smaller than that the mean squared miss is, with a 95 % interval (Student, by chances); undefined for fewer than two. */
  readonly gain: Estimate | undefined;
  readonly bins: readonly PlanBin[];
}

/** Chances of which about the same was expected. */
export interface PlanBin {
  /** Expected goals from `from` (included) to `to` (excluded). */
  readonly from: number;
  readonly to: number;
  readonly chances: number;
  readonly goals: number;
  /** Mean of what was expected in it. */
  readonly expected: number;
  /** What came, with Wilson's interval. */
  readonly came: Estimate;
}

const edges = [0, 0.2, 0.3, 0.4, 0.5, Number.POSITIVE_INFINITY] as const;

/** Holds our chances that had a forecast against what came of them; undefined when none had one. */
export function planAndResult(chances: readonly Chance[]): PlanAndResult | undefined {
  const forecasts = chances.flatMap(({ side, expected, result }): Forecast[] =>
    // A chance ends with its goal; a penalty that goes on after it may have been expected to bring more than one.
    side === 'ours' && expected !== undefined ? [{ odds: Math.min(1, expected.goals), came: result === 'goal' }] : [],
  );
  if (forecasts.length === 0) return undefined;
  const goals = forecasts.filter(({ came }) => came).length;
  const share = goals / forecasts.length;
  return {
    chances: forecasts.length,
    goals,
    expected: expectedHits(forecasts),
    brier: brierScore(forecasts)!,
    brierIfRight: brierIfRight(forecasts)!,
    brierOfShare: share * (1 - share),
    gain: gainOver(forecasts, share),
    bins: edges.slice(0, -1).flatMap((from, at) => binOf(forecasts, from, edges[at + 1]!)),
  };
}

function gainOver(forecasts: readonly Forecast[], share: number): Estimate | undefined {
  if (forecasts.length < 2) return undefined;
  const moments = createMoments();
  for (const { odds, came } of forecasts) {
    const hit = came ? 1 : 0;
    addValue(moments, (share - hit) ** 2 - (odds - hit) ** 2);
  }
  return studentMeanInterval(moments);
}

function binOf(forecasts: readonly Forecast[], from: number, to: number): readonly PlanBin[] {
  const inside = forecasts.filter(({ odds }) => odds >= from && odds < to);
  if (inside.length === 0) return [];
  const goals = inside.filter(({ came }) => came).length;
  const expected = inside.reduce((sum, { odds }) => sum + odds, 0) / inside.length;
  return [{ from, to, chances: inside.length, goals, expected, came: wilsonInterval(goals, inside.length) }];
}

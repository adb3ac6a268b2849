import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { compareGoals, estimateGoals } from './estimate-goals.ts';
import type { Interval } from './report.ts';
import { runTrials } from './run-trials.ts';
import type { Tally } from './tally.ts';

const trials = 400;
function tallyOf(choice: Parameters<typeof sampleMatchup>[0]): Tally {
  const model = compileChance(sampleMatchup({ level: 'pro', penalty: { seconds: 30 }, ...choice }), 5);
  return runTrials(model, createChanceState(model), 0, trials);
}
/** A tally in which only the odds of each trial matter. */
function oddsTally(odds: readonly number[], from = 0): Tally {
  return { ...base, from, to: from + odds.length, goalOdds_byTrial: Float32Array.from(odds) };
}
const half = ({ low, high }: Interval): number => (high - low) / 2;
const base = tallyOf({});

describe('goals from the odds of the shots', () => {
  it('are the goals that are counted, on average', () => {
    // Trial by trial the goal less the odds is 0 in the mean: within 4 standard errors.
    const apart = Array.from(base.goals_byTrial, (goals, trial) => goals - base.goalOdds_byTrial[trial]!);
    const mean = apart.reduce((sum, one) => sum + one, 0) / trials;
    const variance = apart.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (trials - 1);
    expect(Math.abs(mean)).toBeLessThan(4 * Math.sqrt(variance / trials));
    expect(base.goals).toBeGreaterThan(40);
  });

  it('are known as well from a third of the trials', () => {
    const { mean } = estimateGoals([base]);
    // 95 % of a share: 1.96 root of p (1 - p) / n (Wald).
    const counted = 1.96 * Math.sqrt((mean * (1 - mean)) / trials);
    expect(half(estimateGoals([base]))).toBeLessThan(counted / Math.sqrt(3));
  });

  it('of a few trials without a shot may still be many', () => {
    const { mean, low, high } = estimateGoals([oddsTally([0, 0, 0, 0, 0, 0, 0, 0])]);
    expect([mean, low]).toEqual([0, 0]);
    expect(high).toBeGreaterThan(0.3);
  });

  it.each([
    ['equal', undefined, 0.25],
    ['three to one', [3, 1], 0.375],
    ['one alone', [0, 2], 0],
  ])('over several schemes are weighed: %s', (_, weights, mean) => {
    const tallies = [oddsTally([0.5, 0.25, 0.75]), oddsTally([0, 0, 0])];
    expect(estimateGoals(tallies, weights).mean).toBeCloseTo(mean, 12);
  });

  it('over several schemes take the luck into account that they share', () => {
    // The same twice is known no better than once; against each other it is known for sure.
    const up = oddsTally([0.25, 0.75, 0.25, 0.75]);
    const down = oddsTally([0.75, 0.25, 0.75, 0.25]);
    expect(half(estimateGoals([up, up]))).toBeCloseTo(half(estimateGoals([up])), 12);
    expect(estimateGoals([up, down]).mean).toBe(0.5);
  });

  it('are taken over the trials in common, of which there must be some, and with a weight for each', () => {
    const late = oddsTally([0.5, 0.25], 2);
    expect(estimateGoals([oddsTally([0, 0, 0.25, 0.75]), late]).mean).toBeCloseTo(0.4375, 12);
    expect(() => estimateGoals([oddsTally([0, 0]), late])).toThrow(RangeError);
    expect(() => estimateGoals([])).toThrow(RangeError);
    expect(() => estimateGoals([base], [1, 1])).toThrow(RangeError);
    expect(() => estimateGoals([base], [0])).toThrow(RangeError);
  });
});

describe('the change that an edit makes', () => {
  it('is exactly nothing where nothing changed', () => {
    const { difference, correlation } = compareGoals([base, base], [base, base]);
    expect(difference).toEqual({ mean: 0, low: 0, high: 0 });
    expect(correlation).toBeCloseTo(1, 12);
  });

  it('is the difference of the means, known better than if luck were not shared', () => {
    const edited = tallyOf({ keeper: { bodyReach: 0.3 } });
    const { trials: compared, difference, correlation } = compareGoals([edited], [base]);
    expect(compared).toBe(trials);
    expect(difference.mean).toBeCloseTo(estimateGoals([edited]).mean - estimateGoals([base]).mean, 12);
    expect(half(difference)).toBeLessThan(Math.hypot(half(estimateGoals([edited])), half(estimateGoals([base]))));
    expect(correlation).toBeGreaterThan(0.2);
  });

  it.each([
    ['together', [0.2, 0.4, 0.6], [0.1, 0.2, 0.3], 1],
    ['against each other', [0.2, 0.4, 0.6], [0.6, 0.4, 0.2], -1],
    ['one never varies', [0.2, 0.4, 0.6], [0.5, 0.5, 0.5], 0],
  ])('shares luck: %s', (_, first, second, correlation) => {
    expect(compareGoals([oddsTally(first)], [oddsTally(second)]).correlation).toBeCloseTo(correlation, 6);
  });
});

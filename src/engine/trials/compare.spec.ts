import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { estimateCount } from '../statistics/estimate-count.ts';
import { compareTallies } from './compare.ts';
import { mergeTallies } from './merge-tallies.ts';
import { runTrials } from './run-trials.ts';
import type { Tally } from './tally.ts';

const trials = 300;
function tallyOf(choice: Parameters<typeof sampleMatchup>[0], to = trials): Tally {
  const model = compileChance(sampleMatchup({ penalty: { seconds: 20 }, ...choice }), 5);
  return runTrials(model, createChanceState(model), 0, to);
}

const base = tallyOf({});

describe('two runs of the same trials are compared trial by trial', () => {
  it('with themselves: no difference, all luck shared', () => {
    const { difference, correlation } = compareTallies(base, base);
    expect(difference).toEqual({ mean: 0, low: 0, high: 0 });
    expect(correlation).toBeCloseTo(1, 12);
  });

  it('with an edit: the difference of the means, in an interval narrower than two apart would give', () => {
    const edited = tallyOf({ keeper: { bodyReach: 0.3 } });
    const { first, second, difference, correlation } = compareTallies(edited, base);
    expect(difference.mean).toBeCloseTo(first - second, 12);
    expect(correlation).toBeGreaterThan(0.2);
    const half = (tally: Tally) => {
      const { low, high } = estimateCount(tally.goals_byTrial);
      return (high - low) / 2;
    };
    // Independent luck would give the root of the sum of squares.
    expect((difference.high - difference.low) / 2).toBeLessThan(Math.hypot(half(edited), half(base)));
  });

  it('and only over the trials that both ran', () => {
    const goals = (from: number, counts: readonly number[]): Tally => ({
      ...base,
      from,
      to: from + counts.length,
      goals_byTrial: Uint8Array.from(counts),
    });
    const longer = goals(0, [1, 0, 1, 1, 0]);
    // Trials 1 and 2 alone: 0 against 1, and 1 against 0.
    const { trials, first, second, difference } = compareTallies(longer, goals(1, [1, 0]));
    expect([trials, first, second, difference.mean]).toEqual([2, 0.5, 0.5, 0]);
    expect(compareTallies(longer, goals(0, [0, 0, 1, 1, 0])).trials).toBe(5);
  });

  it('of which there must be some', () => {
    const late = { ...base, from: base.to, to: 2 * base.to };
    expect(() => compareTallies(base, late)).toThrow(RangeError);
  });
});

describe('tallies of batches', () => {
  it('merge to the tally of the whole', () => {
    const model = compileChance(sampleMatchup({ penalty: { seconds: 20 } }), 5);
    const state = createChanceState(model);
    const parts = [
      runTrials(model, state, 0, 90),
      runTrials(model, state, 90, 100),
      runTrials(model, state, 100, trials),
    ];
    const { goalOddsSum, ...counted } = mergeTallies(parts);
    const { goalOddsSum: whole, ...same } = base;
    expect(counted).toEqual(same);
    // Sums of odds are rounded in another order.
    expect(goalOddsSum).toBeCloseTo(whole, 9);
  });

  it('do not merge with a gap, out of order, or out of nothing', () => {
    const model = compileChance(sampleMatchup({ penalty: { seconds: 20 } }), 5);
    const state = createChanceState(model);
    const [a, b, c] = [runTrials(model, state, 0, 2), runTrials(model, state, 2, 4), runTrials(model, state, 4, 5)];
    expect(() => mergeTallies([a, c])).toThrow(RangeError);
    expect(() => mergeTallies([b, a])).toThrow(RangeError);
    expect(() => mergeTallies([])).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { meanOfEstimates } from './mean-of-estimates.ts';
import { mean } from './pro-measures.ts';

describe('the mean of estimates', () => {
  it('is as sure as one estimate from all the numbers, where they spread alike', () => {
    const some = [1, 2, 3, 4, 5, 6, 7, 8];
    const parts = [some, some.map((each) => each + 10)];
    const whole = meanOfEstimates(parts.map((part) => mean(part)));
    expect(whole.mean).toBe(9.5);
    // Half as wide in the square: twice as many numbers of the same spread.
    const [one] = parts.map((part) => mean(part));
    expect((whole.high - whole.low) ** 2).toBeCloseTo((one!.high - one!.low) ** 2 / 2, 12);
  });

  it('is the estimate itself for one', () => {
    const only = { mean: 0.3, low: 0.2, high: 0.4 };
    const same = meanOfEstimates([only]);
    for (const part of ['mean', 'low', 'high'] as const) expect(same[part]).toBeCloseTo(only[part], 12);
  });

  it('of nothing is not known', () => {
    expect(() => meanOfEstimates([])).toThrow(RangeError);
  });
});

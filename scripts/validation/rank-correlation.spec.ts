import { describe, expect, it } from 'vitest';
import { rankCorrelation } from './rank-correlation.ts';

describe('rank correlation', () => {
  it.each([
    [[1, 2, 3, 4], [10, 20, 30, 400], 1],
    [[1, 2, 3, 4], [4, 3, 2, 1], -1],
    // 1 - 6 * (sum of squared differences of place) / (n (n^2 - 1)), with squares 1, 1, 4, 1, 1.
    [[1, 2, 3, 4, 5], [2, 1, 5, 3, 4], 0.6],
    // Equal numbers: places 0, 1.5, 1.5, 3 against 0, 1, 2, 3; worked out by hand, 4.5 / sqrt(4.5 * 5).
    [[1, 2, 2, 3], [1, 2, 3, 4], 4.5 / Math.sqrt(22.5)],
  ])('of %j and %j is %d', (ones, others, expected) => {
    expect(rankCorrelation(ones, others)).toBeCloseTo(expected, 12);
    expect(rankCorrelation(others, ones)).toBeCloseTo(expected, 12);
  });

  it('is not known of numbers that are all alike', () => {
    expect(rankCorrelation([1, 1, 1], [1, 2, 3])).toBeUndefined();
    expect(rankCorrelation([], [])).toBeUndefined();
  });

  it('wants pairs', () => {
    expect(() => rankCorrelation([1], [1, 2])).toThrow(RangeError);
  });
});

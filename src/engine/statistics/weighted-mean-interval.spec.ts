import { describe, expect, it } from 'vitest';
import { weightedMeanInterval } from './weighted-mean-interval.ts';

describe('a weighted mean', () => {
  it('has the interval of a plain one when all weigh the same', () => {
    // Mean 3, standard deviation with n: square root of 2; 1.959964 of its standard error either way.
    const { mean, low, high } = weightedMeanInterval([1, 2, 3, 4, 5], [2, 2, 2, 2, 2]);
    const half = 1.959964 * Math.sqrt(2 / 5);
    expect(mean).toBeCloseTo(3, 12);
    expect(low).toBeCloseTo(3 - half, 5);
    expect(high).toBeCloseTo(3 + half, 5);
  });

  it('does not care for what weighs nothing', () => {
    expect(weightedMeanInterval([1, 2, 3, 99], [1, 1, 1, 0])).toEqual(weightedMeanInterval([1, 2, 3], [1, 1, 1]));
  });

  it('refuses weights that do not fit', () => {
    expect(() => weightedMeanInterval([1, 2], [1])).toThrow(RangeError);
    expect(() => weightedMeanInterval([1], [0])).toThrow(RangeError);
  });
});

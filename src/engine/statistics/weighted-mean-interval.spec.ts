import { describe, expect, it } from 'vitest';
import { block, createDraws, unit } from '../random/draws.ts';
import { weightedMeanInterval } from './weighted-mean-interval.ts';

describe('a weighted mean', () => {
  it('has the interval of a plain one when all weigh the same', () => {
    // Mean 3, variance 2.5; Student's t of 4 degrees of freedom at .975 is 2.776 (every table of it).
    const { mean, low, high } = weightedMeanInterval([1, 2, 3, 4, 5], [2, 2, 2, 2, 2]);
    const half = 2.776445 * Math.sqrt(2.5 / 5);
    expect(mean).toBeCloseTo(3, 12);
    expect(low).toBeCloseTo(3 - half, 5);
    expect(high).toBeCloseTo(3 + half, 5);
  });

  it('knows nothing of the spread of one number', () => {
    expect(weightedMeanInterval([2, 9], [1, 0])).toEqual({ mean: 2, low: -Infinity, high: Infinity });
    expect(weightedMeanInterval([2, 4], [1, 1], [5, 5]).high).toBe(Infinity);
  });

  it('holds the truth 95 times of 100 though numbers are few', () => {
    const draws = createDraws(4);
    const runs = 2000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const values = Array.from({ length: 8 }, (_, at) => {
        block(draws, run, at, 0, 0);
        return unit(draws.words[0]);
      });
      const { low, high } = weightedMeanInterval(values, new Float64Array(8).fill(1));
      if (low <= 0.5 && high >= 0.5) held += 1;
    }
    // Three standard errors of a share of .95, and .01 because the numbers are flat and not normal.
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(3 * Math.sqrt((0.95 * 0.05) / runs) + 0.01);
  });

  it('does not care for what weighs nothing', () => {
    expect(weightedMeanInterval([1, 2, 3, 99], [1, 1, 1, 0])).toEqual(weightedMeanInterval([1, 2, 3], [1, 1, 1]));
  });

  it('learns nothing from being told the same again', () => {
    const once = weightedMeanInterval([1, 2, 4], [1, 3, 2]);
    const again = weightedMeanInterval([1, 4, 2, 1, 2, 4], [1, 2, 3, 1, 3, 2], [0, 2, 1, 0, 1, 2]);
    expect(again.mean).toBeCloseTo(once.mean, 12);
    expect(again.low).toBeCloseTo(once.low, 12);
    expect(again.high).toBeCloseTo(once.high, 12);
  });

  it('is surer where the luck of a group cancels out', () => {
    const apart = weightedMeanInterval([1, 3, 3, 1], [1, 1, 1, 1]);
    expect(apart.high).toBeGreaterThan(2.5);
    expect(weightedMeanInterval([1, 3, 3, 1], [1, 1, 1, 1], [7, 7, 8, 8])).toEqual({ mean: 2, low: 2, high: 2 });
  });

  it('holds the truth 95 times of 100 though numbers come in groups', () => {
    const draws = createDraws(3);
    const runs = 1000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const groups = Array.from({ length: 600 }, (_, at) => at % 100);
      // What the six of a group share has half of the variance: 1/12 each, and the truth is 1.
      const values = groups.map((group, at) => {
        block(draws, run, group, 0, 0);
        const shared = unit(draws.words[0]);
        block(draws, run, at, 1, 0);
        return shared + unit(draws.words[0]);
      });
      const { low, high } = weightedMeanInterval(values, new Float64Array(600).fill(1), groups);
      if (low <= 1 && high >= 1) held += 1;
    }
    // Three standard errors of a share of .95, and .005 because 100 groups are not many.
    const spread = 3 * Math.sqrt((0.95 * 0.05) / runs) + 0.005;
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(spread);
  });

  it('refuses weights that do not fit', () => {
    expect(() => weightedMeanInterval([1, 2], [1])).toThrow(RangeError);
    expect(() => weightedMeanInterval([1], [0])).toThrow(RangeError);
    expect(() => weightedMeanInterval([1, 2], [1, 1], [0])).toThrow(RangeError);
  });
});

import outsideBetaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { createDraws, uniform } from '../random/draws.ts';
import { betaBinomialOdds, shrunkShare } from './beta-binomial.ts';
import { betaCdf, betaQuantile } from './beta-distribution.ts';
import { logGamma } from './log-gamma.ts';
import { meanInterval, studentMeanInterval } from './mean-interval.ts';
import { pairedDifference } from './paired-difference.ts';
import { quartiles, sortedQuantile } from './quantile.ts';
import { addValue, createMoments, mergeMoments, varianceOf } from './running-moments.ts';
import { studentQuantile } from './student-quantile.ts';
import { wilsonInterval } from './wilson-interval.ts';

describe('wilsonInterval', () => {
  // The first four: Newcombe 1998, Statistics in Medicine 17:857, table I, method 3. The others computed independently.
  it.each([
    [81, 263, 0.255289, 0.36621],
    [15, 148, 0.062386, 0.160487],
    [0, 20, 0, 0.161125],
    [1, 29, 0.006113, 0.171755],
    [8, 10, 0.490162, 0.943318],
    [5, 10, 0.236593, 0.763407],
    [0, 10, 0, 0.277533],
  ])('of %s / %s is %s to %s', (hits, tries, low, high) => {
    const interval = wilsonInterval(hits, tries);
    expect(interval.mean).toBe(hits / tries);
    expect(interval.low).toBeCloseTo(low, 6);
    expect(interval.high).toBeCloseTo(high, 6);
  });

  it('knows nothing without tries, and ends at 1 when all hit', () => {
    expect(wilsonInterval(0, 0)).toEqual({ mean: 0.5, low: 0, high: 1 });
    expect(wilsonInterval(10, 10).high).toBe(1);
    expect(wilsonInterval(10, 10).low).toBeCloseTo(1 - 0.277533, 6);
  });

  it.each([
    [3, 2, 0.95],
    [-1, 2, 0.95],
    [Number.NaN, 2, 0.95],
    [1, 2, 1],
  ])('refuses %s of %s at %s', (hits, tries, confidence) => {
    expect(() => wilsonInterval(hits, tries, confidence)).toThrow(RangeError);
  });
});

describe('logGamma', () => {
  it.each([
    [0.5, Math.log(Math.sqrt(Math.PI))],
    [1, 0],
    [2, 0],
    [5, Math.log(24)],
    [11, Math.log(3628800)],
    [171, 706.5730622457874], // log(170!)
  ])('of %s', (x, value) => {
    expect(logGamma(x)).toBeCloseTo(value, 11);
  });

  it.each([0, -1, Number.NaN])('refuses %s', (x) => {
    expect(() => logGamma(x)).toThrow(RangeError);
  });
});

describe('the beta distribution', () => {
  it.each([
    [0.5, 1, 1, 0.5],
    [0.3, 2, 1, 0.09],
    [0.3, 1, 2, 1 - 0.49],
    [0.5, 7, 7, 0.5],
    // Beta(2, 3) in closed form: 6 x^2 - 8 x^3 + 3 x^4.
    [0.4, 2, 3, 6 * 0.16 - 8 * 0.064 + 3 * 0.0256],
  ])('has below %s of Beta(%s, %s) the share %s', (x, a, b, share) => {
    expect(betaCdf(x, a, b)).toBeCloseTo(share, 13);
  });

  const shapes = [0.3, 0.5, 1, 1.4, 2, 8.6, 14.8, 25.2, 130, 900];
  const probabilities = [0.001, 0.025, 0.1, 0.5, 0.9, 0.975, 0.999];

  it('has the quantiles that an outside library has', () => {
    for (const a of shapes) {
      for (const b of shapes) {
        for (const p of probabilities) {
          expect(Math.abs(betaQuantile(p, a, b) - outsideBetaQuantile(p, a, b))).toBeLessThan(1e-9);
        }
      }
    }
  });

  it('has quantiles that its shares lead back from', () => {
    for (const a of shapes) {
      for (const b of shapes) {
        for (const p of probabilities) {
          const x = betaQuantile(p, a, b);
          // Where the density is huge (shape under 1, at the edge) a share cannot be met closer than doubles allow.
          if (x > 1e-9 && x < 1 - 1e-9) expect(betaCdf(x, a, b)).toBeCloseTo(p, 9);
        }
      }
    }
  });

  // Exact (Clopper-Pearson) and Jeffreys intervals of 8 of 10, computed independently.
  it.each([
    ['exact, low', 0.025, 8, 3, 0.443905],
    ['exact, high', 0.975, 9, 2, 0.974789],
    ['Jeffreys, low', 0.025, 8.5, 2.5, 0.497226],
    ['Jeffreys, high', 0.975, 8.5, 2.5, 0.955941],
  ])('bounds 8 of 10: %s', (_name, p, a, b, bound) => {
    expect(betaQuantile(p, a, b)).toBeCloseTo(bound, 6);
  });

  it('has ends and refuses the rest', () => {
    expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3), betaCdf(0, 2, 3), betaCdf(1, 2, 3)]).toEqual([0, 1, 0, 1]);
    expect(() => betaQuantile(1.1, 2, 3)).toThrow(RangeError);
    expect(() => betaQuantile(0.5, 0, 3)).toThrow(RangeError);
    expect(() => betaCdf(Number.NaN, 2, 3)).toThrow(RangeError);
    expect(() => betaCdf(0.5, 2, Infinity)).toThrow(RangeError);
  });
});

describe('studentQuantile', () => {
  // Any table of the t distribution, two-sided 95 and 99 %.
  it.each([
    [0.975, 1, 12.7062],
    [0.975, 2, 4.30265],
    [0.975, 10, 2.22814],
    [0.975, 30, 2.04227],
    [0.995, 5, 4.03214],
    [0.975, 1e7, 1.95996],
  ])('at %s with %s degrees is %s', (p, freedom, t) => {
    expect(studentQuantile(p, freedom)).toBeCloseTo(t, 4);
    expect(studentQuantile(1 - p, freedom)).toBeCloseTo(-t, 4);
  });

  it('is 0 in the middle and refuses the rest', () => {
    expect(studentQuantile(0.5, 3)).toBe(0);
    for (const p of [0, 1, Number.NaN]) expect(() => studentQuantile(p, 3)).toThrow(RangeError);
    expect(() => studentQuantile(0.9, 0)).toThrow(RangeError);
  });
});

const momentsOf = (values: readonly number[]) => {
  const moments = createMoments();
  for (const value of values) addValue(moments, value);
  return moments;
};

describe('running moments', () => {
  it('are mean and variance', () => {
    const moments = momentsOf([2, 4, 4, 4, 5, 5, 7, 9]);
    expect(moments.mean).toBe(5);
    expect(varianceOf(moments)).toBeCloseTo(32 / 7, 12);
  });

  it('survive a large offset that a sum of squares would not', () => {
    expect(varianceOf(momentsOf([1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16]))).toBeCloseTo(30, 6);
  });

  it('merge to what adding one by one gives, and in one order to the same bits', () => {
    const draws = createDraws(8);
    const values = Array.from({ length: 1000 }, (_, k) => uniform(draws, k, 0, 0, 0));
    const batches = [0, 1, 2, 3].map((k) => momentsOf(values.slice(250 * k, 250 * k + 250)));
    const merged = [1, 2].map(() => {
      const whole = createMoments();
      for (const batch of batches) mergeMoments(whole, batch);
      return whole;
    });
    expect(merged[0]).toEqual(merged[1]);
    const plain = momentsOf(values);
    expect(merged[0]!.count).toBe(1000);
    expect(merged[0]!.mean).toBeCloseTo(plain.mean, 14);
    expect(varianceOf(merged[0]!)).toBeCloseTo(varianceOf(plain), 14);
  });

  it('of nothing change nothing', () => {
    const moments = momentsOf([1, 2]);
    mergeMoments(moments, createMoments());
    expect(moments).toEqual(momentsOf([1, 2]));
    expect(varianceOf(momentsOf([3]))).toBe(0);
  });
});

describe('intervals for a mean', () => {
  it('are the textbook ones', () => {
    const moments = momentsOf([2, 4, 4, 4, 5, 5, 7, 9]);
    const error = Math.sqrt(32 / 7 / 8);
    expect(meanInterval(moments).high).toBeCloseTo(5 + 1.959963984540054 * error, 12);
    expect(studentMeanInterval(moments).low).toBeCloseTo(5 - 2.364624251592785 * error, 9);
  });

  it('are infinite where the spread is unknown', () => {
    for (const interval of [meanInterval, studentMeanInterval]) {
      expect(interval(momentsOf([3]))).toEqual({ mean: 3, low: -Infinity, high: Infinity });
      expect(interval(createMoments())).toEqual({ mean: 0, low: -Infinity, high: Infinity });
    }
  });

  it('hold the true mean as often as they say', () => {
    const draws = createDraws(12);
    const runs = 2000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const { low, high } = studentMeanInterval(
        momentsOf(Array.from({ length: 12 }, (_, k) => uniform(draws, run, k, 1, 0))),
      );
      if (low <= 0.5 && high >= 0.5) held++;
    }
    // Four standard errors of a share of .95.
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / runs));
  });
});

describe('pairedDifference', () => {
  it('narrows with shared luck as theory says', () => {
    // X = e^U, Y = e^(1.1 U): variance of the difference .00658668 with one U for both, .570198 with two.
    const draws = createDraws(3);
    const n = 20_000;
    const at = (kind: number, power: number) =>
      Array.from({ length: n }, (_, k) => Math.exp(power * uniform(draws, k, 0, kind, 0)));
    const width = (b: readonly number[]) => {
      const { low, high } = pairedDifference(at(0, 1), b);
      return ((high - low) / (2 * 1.96)) ** 2 * n;
    };
    // Four standard errors of a sample variance, about sqrt(2 / n) of it, kurtosis near 2 to 3.
    expect(Math.abs(width(at(0, 1.1)) / 0.00658668 - 1)).toBeLessThan(0.06);
    expect(Math.abs(width(at(1, 1.1)) / 0.570198 - 1)).toBeLessThan(0.06);
  });

  it('of two plays that score .30 and .25, both at once .22, varies by .1075 and not by .3975', () => {
    // Of 100 trials: both score in 22, the first alone in 8, the second alone in 3.
    const first = Array.from({ length: 100 }, (_, k) => (k < 30 ? 1 : 0));
    const second = Array.from({ length: 100 }, (_, k) => (k < 22 || (k >= 30 && k < 33) ? 1 : 0));
    const { mean, low, high } = pairedDifference(first, second);
    expect(mean).toBeCloseTo(0.05, 12);
    const variance = ((high - low) / (2 * studentQuantile(0.975, 99))) ** 2 * 100;
    expect(variance).toBeCloseTo((0.1075 * 100) / 99, 9);
  });

  it('refuses lists of two lengths', () => {
    expect(() => pairedDifference([1], [1, 2])).toThrow(RangeError);
  });
});

describe('sortedQuantile', () => {
  // R: quantile(c(1, 2, 4, 8, 16), type = 7).
  it.each([
    [0, 1],
    [0.1, 1.4],
    [0.25, 2],
    [0.5, 4],
    [0.9, 12.8],
    [1, 16],
  ])('at %s is %s', (p, value) => {
    expect(sortedQuantile([1, 2, 4, 8, 16], p)).toBeCloseTo(value, 12);
  });

  it('has an answer for one number, and none for none', () => {
    expect(sortedQuantile([7], 0.3)).toBe(7);
    expect(sortedQuantile([], 0.3)).toBeUndefined();
    expect(quartiles([])).toBeUndefined();
    expect(quartiles([3, 1, 2])).toEqual({ q1: 1.5, median: 2, q3: 2.5 });
    expect(() => sortedQuantile([1], Number.NaN)).toThrow(RangeError);
  });
});

describe('shrunkShare', () => {
  it('is the rat tumour example: Beta(1.4, 8.6) and 4 of 14 give .225', () => {
    // Gelman et al., Bayesian Data Analysis, section 5.1: posterior Beta(5.4, 18.6), sd .083516.
    const { mean, low, high } = shrunkShare(4, 14, { mean: 0.14, weight: 10 });
    expect(mean).toBeCloseTo(5.4 / 24, 12);
    expect(Math.sqrt((mean * (1 - mean)) / 25)).toBeCloseTo(0.083516, 6);
    expect(low).toBeCloseTo(outsideBetaQuantile(0.025, 5.4, 18.6), 9);
    expect(high).toBeCloseTo(outsideBetaQuantile(0.975, 5.4, 18.6), 9);
  });

  it('is the usual share before anything was counted', () => {
    expect(shrunkShare(0, 0, { mean: 0.37, weight: 40 }).mean).toBeCloseTo(0.37, 12);
  });

  it.each([
    [3, 2, 0.3, 5],
    [1, 2, 0, 5],
    [1, 2, 0.3, 0],
    [1, Number.NaN, 0.3, 5],
  ])('refuses %s of %s with prior %s worth %s', (hits, tries, mean, weight) => {
    expect(() => shrunkShare(hits, tries, { mean, weight })).toThrow(RangeError);
  });
});

describe('betaBinomialOdds', () => {
  it("are scipy's betabinom.pmf(3, 10, 2, 3), and sum to 1", () => {
    expect(betaBinomialOdds(3, 10, 2, 3)).toBeCloseTo(0.143856143856, 12);
    let sum = 0;
    for (let k = -1; k <= 11; k++) sum += betaBinomialOdds(k, 10, 2, 3);
    expect(sum).toBeCloseTo(1, 12);
  });
});

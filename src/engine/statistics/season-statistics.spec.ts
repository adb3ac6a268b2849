import { describe, expect, it } from 'vitest';
import { betaBinomialOdds, shrunkShare } from './beta-binomial.ts';
import { brierIfRight, brierScore, expectedHits } from './forecast-score.ts';
import { shareDifference } from './share-difference.ts';
import { sharePosterior } from './share-posterior.ts';

describe('the difference of two shares', () => {
  // Newcombe 1998, Statistics in Medicine 17:873, table II, method 10; written down from memory.
  it.each([
    [56, 70, 48, 80, 0.0524, 0.3339],
    [9, 10, 3, 10, 0.1705, 0.809],
    [6, 7, 2, 7, 0.0582, 0.8062],
    [5, 56, 0, 29, -0.0381, 0.1926],
    [0, 10, 0, 20, -0.1611, 0.2775],
    [0, 10, 0, 10, -0.2775, 0.2775],
    [10, 10, 0, 20, 0.6791, 1],
    [10, 10, 0, 10, 0.6075, 1],
  ])('%d of %d less %d of %d', (a, m, b, n, low, high) => {
    const found = shareDifference({ hits: a, tries: m }, { hits: b, tries: n });
    expect(found.mean).toBeCloseTo(a / m - b / n, 12);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });

  it('is wider when it is to be surer, and could be anything where nothing was tried', () => {
    const usual = shareDifference({ hits: 9, tries: 10 }, { hits: 3, tries: 10 });
    const surer = shareDifference({ hits: 9, tries: 10 }, { hits: 3, tries: 10 }, 0.99);
    expect(surer.low).toBeLessThan(usual.low);
    expect(surer.high).toBeGreaterThan(usual.high);
    const nothing = shareDifference({ hits: 3, tries: 10 }, { hits: 0, tries: 0 });
    expect(nothing.low).toBeLessThan(-0.5);
    expect(nothing.high).toBeGreaterThan(0.38);
  });
});

describe('a share drawn toward what is usual', () => {
  it('is that of the textbook: 4 of 14 rats after 70 other groups', () => {
    // Gelman et al., Bayesian Data Analysis, section 5.1: Beta(1.4, 8.6) and 4 of 14 have mean .223 with rounded shape; exact .225, sd .083516.
    const { mean, low, high } = shrunkShare(4, 14, { mean: 0.14, weight: 10 });
    expect(mean).toBeCloseTo(0.225, 12);
    const [a, b] = [5.4, 18.6];
    expect(Math.sqrt((a * b) / ((a + b) ** 2 * (a + b + 1)))).toBeCloseTo(0.083516, 6);
    expect(low).toBeGreaterThan(mean - 2 * 0.083516);
    expect(high).toBeLessThan(mean + 2.3 * 0.083516);
  });

  it('has the odds of scipy', () => {
    expect(betaBinomialOdds(3, 10, 2, 3)).toBeCloseTo(0.143856143856, 10);
  });
});

describe('forecasts and what came', () => {
  it('score by their squared distance', () => {
    // Brier 1950 in the form for a yes or no; the three cases are those of every textbook.
    expect(brierScore([{ odds: 1, came: true }])).toBe(0);
    expect(brierScore([{ odds: 0.7, came: true }])).toBeCloseTo(0.09, 12);
    expect(brierScore([{ odds: 0.7, came: false }])).toBeCloseTo(0.49, 12);
    expect(brierScore([])).toBeUndefined();
    expect(() => brierScore([{ odds: 1.2, came: true }])).toThrow(RangeError);
  });

  it('score as they must when they are right', () => {
    const forecasts = Array.from({ length: 100 }, (_, n) => ({ odds: 0.3, came: n < 30 }));
    expect(brierScore(forecasts)).toBeCloseTo(0.21, 12);
    expect(brierIfRight(forecasts)).toBeCloseTo(0.21, 12);
  });

  it('say how often it should come, and how far luck reaches', () => {
    const { mean, low, high } = expectedHits(Array.from({ length: 100 }, () => ({ odds: 0.3, came: false })));
    // sqrt(21) x 1.959964 = 8.9817.
    expect(mean).toBeCloseTo(30, 10);
    expect(low).toBeCloseTo(21.0183, 4);
    expect(high).toBeCloseTo(38.9817, 4);
    expect(expectedHits([])).toEqual({ mean: 0, low: 0, high: 0 });
    expect(expectedHits([{ odds: 0.9, came: true }])).toMatchObject({ low: expect.any(Number), high: 1 });
  });
});

describe('shares of several kinds', () => {
  it('move from what was believed to what was counted', () => {
    const before = { box: 3, jump: 1 };
    expect(sharePosterior(before, 4, {})).toEqual({ box: 0.75, jump: 0.25 });
    expect(sharePosterior(before, 4, { jump: 4 })).toEqual({ box: 0.375, jump: 0.625 });
    expect(sharePosterior({}, 4, { jump: 1, net: 3 })).toEqual({ jump: 0.25, net: 0.75 });
    expect(sharePosterior(before, 4, { jump: 4000 }).jump).toBeGreaterThan(0.99);
  });

  it('refuse what is no weight', () => {
    expect(() => sharePosterior({ box: -1 }, 4, {})).toThrow(RangeError);
    expect(() => sharePosterior({ box: 1 }, 0, {})).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { estimateCount } from './estimate-count.ts';

/** Counts as one number a trial: ones first. */
function shares(hits: number, tries: number): number[] {
  return Array.from({ length: tries }, (_, trial) => (trial < hits ? 1 : 0));
}

describe('a count that is a share gets the interval of a share', () => {
  // Newcombe 1998, Statistics in Medicine 17:857, table I, method 3 (Wilson's score without correction): 81/263, 15/148, 0/20, 1/29.
  it.each([
    { hits: 81, tries: 263, low: 0.2553, high: 0.3662 },
    { hits: 15, tries: 148, low: 0.0624, high: 0.1605 },
    { hits: 0, tries: 20, low: 0, high: 0.1611 },
    { hits: 1, tries: 29, low: 0.0061, high: 0.1718 },
  ])('$hits of $tries', ({ hits, tries, low, high }) => {
    const estimate = estimateCount(shares(hits, tries));
    expect(estimate.mean).toBeCloseTo(hits / tries, 12);
    expect(estimate.low).toBeCloseTo(low, 4);
    expect(estimate.high).toBeCloseTo(high, 4);
  });
});

describe('a count that goes above 1 gets the interval of a mean', () => {
  it('by its spread', () => {
    // Mean 1, variance 2/3 x 150/149; half width t(149) sqrt(variance / 150), t(149) = 1.976013: worked by hand.
    const counts = Array.from({ length: 150 }, (_, trial) => trial % 3);
    const half = 1.976013 * Math.sqrt(((2 / 3) * (150 / 149)) / 150);
    const { mean, low, high } = estimateCount(counts);
    expect(mean).toBeCloseTo(1, 12);
    expect(low).toBeCloseTo(1 - half, 6);
    expect(high).toBeCloseTo(1 + half, 6);
  });

  it('that is wide where there are few', () => {
    // Mean .6, variance .8, t(4) = 2.776445: half width 1.110578.
    const { low, high } = estimateCount([0, 2, 0, 1, 0]);
    expect(low).toBe(0);
    expect(high).toBeCloseTo(0.6 + 1.110578, 5);
  });

  it('that holds the true mean at least 93 times in 100, with as few counts as a worth is told from', () => {
    // 10 counts of 0, 1 or 2 with odds .6, .32, .08 (true mean .48), 4,000 times, with the luck of one seed.
    let luck = 12345;
    const draw = (): number => {
      luck = (Math.imul(luck, 1664525) + 1013904223) >>> 0;
      const uniform = luck / 2 ** 32;
      return uniform < 0.08 ? 2 : uniform < 0.4 ? 1 : 0;
    };
    let held = 0;
    for (let run = 0; run < 4000; run++) {
      const { low, high } = estimateCount(Array.from({ length: 10 }, draw));
      if (low <= 0.48 && high >= 0.48) held++;
    }
    // .95 less 6 standard errors of the share.
    expect(held / 4000).toBeGreaterThan(0.93);
  });

  it('that has a width even when every trial gave the same, and never goes below 0', () => {
    const { low, high } = estimateCount([2, 2, 2]);
    expect(low).toBeGreaterThan(0.5);
    expect(high).toBeGreaterThan(2);
    expect(estimateCount([0, 0, 0, 0, 0, 0, 9]).low).toBe(0);
  });
});

it('without trials nothing is known of a count', () => {
  expect(estimateCount([])).toEqual({ mean: 0, low: 0, high: Number.POSITIVE_INFINITY });
});

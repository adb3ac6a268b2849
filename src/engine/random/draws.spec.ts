import { describe, expect, it } from 'vitest';
import { block, createDraws, normal, normalPair, standardNormal, uniform, unit } from './draws.ts';

/** Counts of `n` draws in 64 equal bins, as chi-square with 63 degrees of freedom (mean 63, sd sqrt(126) = 11.2). */
function chiSquare(n: number, draw: (k: number) => number): number {
  const counts = new Float64Array(64);
  for (let k = 0; k < n; k++) counts[Math.floor(draw(k) * 64)]!++;
  const expected = n / 64;
  return counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

describe('uniform', () => {
  const draws = createDraws(20260101);
  const fourthWord = (k: number) => {
    block(draws, k, 1, 1, 1);
    return unit(draws.words[3]!);
  };

  // Four standard deviations of chi-square around its mean: 63 +- 45.
  it.each([
    ['trial', (k: number) => uniform(draws, k, 0, 0, 0)],
    ['who', (k: number) => uniform(draws, 0, k, 0, 0)],
    ['kind', (k: number) => uniform(draws, 0, 0, k, 0)],
    ['index', (k: number) => uniform(draws, 0, 0, 0, k)],
    ['seed', (k: number) => uniform(createDraws(k), 0, 0, 0, 0)],
    ['fourth word of a block', (k: number) => fourthWord(k)],
  ] as const)('is spread evenly along %s', (_name, draw) => {
    const statistic = chiSquare(20_000, draw);
    expect(statistic).toBeGreaterThan(18);
    expect(statistic).toBeLessThan(108);
  });

  it('depends on the address only, not on what was drawn before', () => {
    const first = uniform(draws, 3, 4, 5, 6);
    for (let k = 0; k < 10; k++) uniform(draws, k, 0, 0, 0);
    expect(uniform(createDraws(20260101), 3, 4, 5, 6)).toBe(first);
  });

  it('differs between two seeds that share their low 32 bits', () => {
    expect(uniform(createDraws(7), 0, 0, 0, 0)).not.toBe(uniform(createDraws(7 + 2 ** 32), 0, 0, 0, 0));
  });

  it('takes -1 as an address', () => {
    expect(uniform(draws, 1, -1, 2, 3)).toBe(uniform(draws, 1, 0xffffffff, 2, 3));
  });
});

describe('unit and standardNormal', () => {
  it('stay inside their ranges at both ends', () => {
    expect(unit(0)).toBe(0);
    expect(unit(0xffffffff)).toBeLessThan(1);
    expect(standardNormal(0)).toBeCloseTo(-6.3379, 3);
    expect(standardNormal(0xffffffff)).toBe(-standardNormal(0));
  });
});

describe('normalPair', () => {
  it('gives independent standard normals', () => {
    const draws = createDraws(99);
    const n = 40_000;
    let [sum, square, fourth, cross] = [0, 0, 0, 0];
    for (let k = 0; k < n; k++) {
      normalPair(draws, k, 2, 3, 4);
      const a = draws.normals[0]!;
      sum += a;
      square += a * a;
      fourth += a ** 4;
      cross += a * draws.normals[1]!;
    }
    // Four standard errors: the moments' variances are 1, 2, 96 and 1 over n.
    expect(Math.abs(sum / n)).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(square / n - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
    expect(Math.abs(fourth / n - 3)).toBeLessThan(4 * Math.sqrt(96 / n));
    expect(Math.abs(cross / n)).toBeLessThan(4 / Math.sqrt(n));
  });

  it('begins with the number that normal gives', () => {
    const draws = createDraws(5);
    normalPair(draws, 1, 2, 3, 4);
    expect(normal(createDraws(5), 1, 2, 3, 4)).toBe(draws.normals[0]);
  });
});

describe('createDraws', () => {
  it.each([-1, 0.5, Number.NaN, 2 ** 53])('refuses the seed %s', (seed) => {
    expect(() => createDraws(seed)).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { normalQuantile } from './normal-quantile.ts';

describe('normalQuantile', () => {
  // Wichura 1988 prints these three for PPND16; the 0.975 and 0.995 points stand in every table of the normal distribution.
  it.each([
    [0.25, -0.6744897501960817],
    [0.001, -3.090232306167814],
    [1e-20, -9.262340089798409],
    [0.975, 1.959963984540054],
    [0.995, 2.5758293035489004],
    [0.5, 0],
  ])('at %s is %s', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 14);
  });

  it('is odd about one half, to the last bit', () => {
    for (const p of [0.5, 0.25, 0.125, 2 ** -5, 2 ** -12, 2 ** -30])
      expect(normalQuantile(1 - p)).toBe(0 - normalQuantile(p));
  });

  it('has infinite ends and refuses what is no probability', () => {
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
    for (const p of [-0.1, 1.1, Number.NaN]) expect(() => normalQuantile(p)).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { curvePlane } from './curve-plane.ts';

const gains = [
  { mean: 0.01, low: -0.01, high: 0.03 },
  { mean: -0.06, low: -0.083, high: -0.04 },
];

describe('the plane of a curve', () => {
  it('holds every interval, to a whole hundredth, with none in the middle', () => {
    const { reach, down, height } = curvePlane(gains, 4, 0.02);
    expect(reach).toBe(0.09);
    expect(down(0)).toBe((down(reach) + down(-reach)) / 2);
    for (const end of [down(reach), down(-reach)]) {
      expect(end).toBeGreaterThan(0);
      expect(end).toBeLessThan(height);
    }
    expect(down(0.03)).toBeLessThan(down(0));
  });

  it('is not drawn larger than its least for small gains', () => {
    expect(curvePlane(gains.slice(0, 1), 4, 0.05).reach).toBe(0.05);
    expect(curvePlane([], 4, 0.05).reach).toBe(0.05);
  });

  it('goes from left to right in step with time', () => {
    const { across } = curvePlane(gains, 4, 0.05);
    const [first, middle, last] = [0, 2, 4].map((seconds) => Number.parseFloat(across(seconds)));
    expect(middle).toBe((first! + last!) / 2);
    expect(last).toBeGreaterThan(first!);
    expect(last).toBeLessThan(100);
  });
});

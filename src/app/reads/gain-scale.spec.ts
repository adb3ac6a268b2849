import { describe, expect, it } from 'vitest';
import { gainScale } from './gain-scale.ts';

describe('the scale of some gains', () => {
  it.each([
    ['none', [], 0.1],
    ['small ones', [{ mean: 0.01, low: -0.02, high: 0.04 }], 0.1],
    ['one that reaches far up', [{ mean: 0.1, low: -0.02, high: 0.25 }], 0.25],
    ['one that reaches far down', [{ mean: -0.1, low: -0.3, high: 0.1 }], 0.3],
  ])('holds %s, with none in the middle', (_, gains, reach) => {
    expect(gainScale(gains, 0.1)).toEqual({ from: -reach, to: reach });
  });
});

import { describe, expect, it } from 'vitest';
import { goalsScale } from './goals-scale.ts';

describe('the scale of some goals a chance', () => {
  it.each([
    ['ends at the tenths around them', [0.21, 0.28, 0.44], 0.2, 0.5],
    ['never begins below none', [-0.03, 0.08], 0, 0.1],
    ['has a width even for nothing', [0, 0], 0, 0.1],
    ['is the usual one without any', [], 0, 0.8],
  ])('%s', (_, values, from, to) => {
    const scale = goalsScale(values.map((mean) => ({ mean, low: mean, high: mean })));
    expect(scale.from).toBeCloseTo(from, 9);
    expect(scale.to).toBeCloseTo(to, 9);
  });
});

import { describe, expect, it } from 'vitest';
import { clockText } from './clock-text.ts';

describe('the clock', () => {
  it.each([
    [0, '0.0'],
    [-0, '0.0'],
    [-0.04, '0.0'],
    [-0.049_999, '0.0'],
    [0.04, '0.0'],
    [-0.06, '-0.1'],
    [-1.5, '-1.5'],
    [3.21, '3.2'],
    [12, '12.0'],
  ])('shows %d s as %s', (seconds, shown) => {
    expect(clockText(seconds)).toBe(shown);
  });
});

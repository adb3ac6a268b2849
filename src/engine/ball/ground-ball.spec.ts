import { describe, expect, it } from 'vitest';
import { drawGroundBall, groundBallOddsInto, groundBallSoftness } from './ground-ball.ts';

function oddsOf(arrivals: readonly number[], first = 0, end = arrivals.length): Float64Array {
  const odds = new Float64Array(arrivals.length);
  groundBallOddsInto(odds, Float64Array.from(arrivals), first, end);
  return odds;
}

describe('ground ball', () => {
  it('is even for equal arrivals and sums to 1', () => {
    expect(Array.from(oddsOf([1, 1, 1, 1]))).toEqual([0.25, 0.25, 0.25, 0.25]);
    expect(oddsOf([0.4, 1.3, 0.9]).reduce((a, b) => a + b)).toBeCloseTo(1, 12);
  });

  it('for two men is the logistic of the difference', () => {
    const odds = oddsOf([1, 1 + groundBallSoftness]);
    expect(odds[0]).toBeCloseTo(1 / (1 + Math.exp(-1)), 12);
  });

  it('does not care when, only by how much', () => {
    const early = oddsOf([0.2, 0.5, 0.9]);
    const late = oddsOf([5.2, 5.5, 5.9]);
    for (let i = 0; i < 3; i++) expect(late[i]).toBeCloseTo(early[i], 12);
  });

  it('leaves out who cannot come and who is outside the range', () => {
    expect(Array.from(oddsOf([Number.POSITIVE_INFINITY, 2]))).toEqual([0, 1]);
    expect(Array.from(oddsOf([0, 2, 3], 1, 2))).toEqual([0, 1, 0]);
    expect(Array.from(oddsOf([Number.POSITIVE_INFINITY]))).toEqual([0]);
  });

  it('draws by the odds', () => {
    const odds = Float64Array.of(0.25, 0, 0.75);
    expect(drawGroundBall(odds, 0, 3, 0)).toBe(0);
    expect(drawGroundBall(odds, 0, 3, 0.2499)).toBe(0);
    expect(drawGroundBall(odds, 0, 3, 0.25)).toBe(2);
    expect(drawGroundBall(odds, 0, 3, 1 - 1e-16)).toBe(2);
    expect(drawGroundBall(new Float64Array(3), 0, 3, 0.5)).toBe(-1);
  });
});

import { describe, expect, it } from 'vitest';
import { catchOdds, defaultCatchParameters, drawCatch, expectedCatchOdds, heldTouchOdds } from './catch.ts';
import { createPlacement, drawPlacementInto, meanSquareError } from './pass-placement.ts';

const nobody = Number.POSITIVE_INFINITY;

describe('catch', () => {
  it.each([0.5, 0.85, 0.97])('an accurate, unhurried pass is caught as his grade says: %f', (catching) => {
    expect(catchOdds(catching, 20, 0, nobody)).toBeCloseTo(catching, 12);
  });

  it('gets harder with error, speed and traffic, and never above his grade', () => {
    const odds = (speed: number, error: number, traffic: number) => catchOdds(0.9, speed, error, traffic);
    expect(odds(20, 0.5, nobody)).toBeLessThan(odds(20, 0.2, nobody));
    expect(odds(35, 0, nobody)).toBeLessThan(odds(25, 0, nobody));
    expect(odds(20, 0, 1)).toBeLessThan(odds(20, 0, 2));
    expect(odds(20, 0, 3)).toBe(odds(20, 0, nobody));
  });

  it.each([
    // Adjacent and skip at 9 and 18 yd, college, high school and 14U (common practice, no source), with the level presets' catching, scatter and speed.
    { level: 'college', catching: 0.97, scatter: 0.022, speed: 23.5, adjacent: 0.97, skip: 0.9 },
    { level: 'high school', catching: 0.93, scatter: 0.032, speed: 19, adjacent: 0.93, skip: 0.82 },
    { level: '14U', catching: 0.88, scatter: 0.045, speed: 15, adjacent: 0.85, skip: 0.65 },
  ])('$level: adjacent and skip are caught about as often as the trade says', (row) => {
    const at = (distance: number) =>
      expectedCatchOdds(row.catching, row.speed, meanSquareError(distance, row.scatter, 1, 1), nobody);
    // Loose on purpose: the trade's figures are round guesses.
    expect(Math.abs(at(9) - row.adjacent)).toBeLessThan(0.05);
    expect(Math.abs(at(18) - row.skip)).toBeLessThan(0.08);
  });

  it('a ball out of reach goes past, a bad one inside it drops', () => {
    expect(catchOdds(1, 20, defaultCatchParameters.reach, nobody)).toBe(0);
    expect(drawCatch(1, 20, 3, nobody, 0)).toBe('past');
    expect(drawCatch(0.5, 20, 0, nobody, 0.6)).toBe('dropped');
    expect(drawCatch(0.5, 20, 0, nobody, 0.4)).toBe('caught');
  });

  it('draws as often as it says', () => {
    const count = { caught: 0, dropped: 0, past: 0 };
    for (let i = 0; i < 1000; i++) count[drawCatch(0.9, 28, 1.8, 2, (i + 0.5) / 1000)]++;
    expect(count.caught / 1000).toBeCloseTo(catchOdds(0.9, 28, 1.8, 2), 2);
    expect(count.past).toBeGreaterThan(0);
    expect(count.dropped).toBeGreaterThan(0);
  });

  it('a stick on a slow ball holds it more often', () => {
    expect(heldTouchOdds(0.9, 12)).toBeGreaterThan(2 * heldTouchOdds(0.9, 32));
    expect(heldTouchOdds(0, 20)).toBe(0);
  });
});

describe('placement', () => {
  it('scatters more along than across, with distance, speed and a widening', () => {
    const out = createPlacement();
    drawPlacementInto(out, 12, 0.02, 1, 1, 1, 1);
    expect(out.along).toBeCloseTo(1.5 * out.across, 12);
    const near = meanSquareError(6, 0.02, 1, 1);
    expect(meanSquareError(12, 0.02, 1, 1)).toBeGreaterThan(near);
    expect(meanSquareError(6, 0.02, 1.3, 1)).toBeGreaterThan(near);
    expect(meanSquareError(6, 0.02, 1, 1.5)).toBeGreaterThan(near);
  });

  it('has the stated mean square', () => {
    const out = createPlacement();
    // Two-point normals have mean square 1, so the mean over them is the model's.
    let sum = 0;
    for (const a of [-1, 1]) {
      for (const b of [-1, 1]) {
        drawPlacementInto(out, 15, 0.03, 0.9, 1.2, a, b);
        sum += (out.across * out.across + out.along * out.along) / 4;
      }
    }
    expect(sum).toBeCloseTo(meanSquareError(15, 0.03, 0.9, 1.2), 12);
  });
});

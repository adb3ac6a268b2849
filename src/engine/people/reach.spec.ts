import { describe, expect, it } from 'vitest';
import { arrivalTime, carriedTime, createPhiTable, phiAt, reachableAt, reachRadius } from './reach.ts';

/** Principal branch of Lambert's W by Newton's rule, for the closed form of a start from rest. */
function lambertW(z: number): number {
  let w = Math.log1p(z);
  for (let k = 0; k < 50; k++) w -= (w * Math.exp(w) - z) / (Math.exp(w) * (w + 1));
  return w;
}

describe('arrivalTime', () => {
  // Fujimura-Sugihara 2005 with V 7.8 m/s, a 1.3 /s; computed once more by an independent program (scipy root finding).
  it.each([
    [7.8, 1.3, 1, 0, 0, 0.491289],
    [7.8, 1.3, 2, 0, 0, 0.726487],
    [7.8, 1.3, 5, 0, 0, 1.260921],
    [7.8, 1.3, 10, 0, 0, 1.993677],
    [7.8, 1.3, 20, 0, 0, 3.323103],
    [7.8, 1.0, 1, 0, 0, 0.552961],
    [7.8, 1.0, 2, 0, 0, 0.812793],
    [7.8, 1.0, 5, 0, 0, 1.392596],
    [7.8, 1.0, 10, 0, 0, 2.167599],
    [7.8, 1.0, 20, 0, 0, 3.534942],
    [7.8, 1.3, 10, 5, 0, 1.519902],
    [7.8, 1.3, 10, -5, 0, 2.495122],
    [7.8, 1.3, 10, 0, 5, 2.079835],
  ])('with V %s, a %s covers %s from velocity (%s, %s) in %s s', (topSpeed, drag, distance, vx, vy, seconds) => {
    expect(arrivalTime(topSpeed, drag, 0, 0, vx, vy, distance, 0, 0)).toBeCloseTo(seconds, 6);
  });

  it.each([0.1, 1, 3, 10, 40])('from rest agrees with the closed form over %s yd', (distance) => {
    const [topSpeed, drag] = [7, 1.1];
    const closed = distance / topSpeed + (1 + lambertW(-Math.exp(-1 - (drag * distance) / topSpeed))) / drag;
    expect(arrivalTime(topSpeed, drag, 2, -3, 0, 0, 2, distance - 3, 0)).toBeCloseTo(closed, 8);
  });

  it('is 0 for one who is there, and shorter with a stick', () => {
    expect(arrivalTime(7, 1, 5, 5, 3, 1, 5, 5, 0)).toBe(0);
    expect(arrivalTime(7, 1, 0, 0, 0, 0, 5, 0, 2)).toBeCloseTo(arrivalTime(7, 1, 0, 0, 0, 0, 3, 0, 0), 9);
  });

  it.each([
    [0, 1, 5],
    [7, 0, 5],
    [7, 1, Number.NaN],
    [7, 1, Infinity],
  ])('is infinite where there is no answer: V %s, a %s, distance %s', (topSpeed, drag, distance) => {
    expect(arrivalTime(topSpeed, drag, 0, 0, 0, 0, distance, 0, 0)).toBe(Infinity);
  });
});

describe('reachableAt', () => {
  it('is not nested in time for one who runs past', () => {
    // At 7 yd/s past a point 1 yd ahead and .02 aside: there at .16 s, gone by .4 s, back later.
    const there = (time: number) => reachableAt(7, 1.2, 0, 0, 7, 0, 1, 0.02, 0, time);
    expect([0.05, 0.16, 0.4, 3].map(there)).toEqual([false, true, false, true]);
  });

  it('refuses the past and what is not a time', () => {
    expect(reachableAt(7, 1, 0, 0, 0, 0, 0, 0, 1, -0.1)).toBe(false);
    expect(reachableAt(7, 1, 0, 0, 0, 0, 0, 0, 1, Number.NaN)).toBe(false);
  });
});

describe('reachRadius and carriedTime', () => {
  it('add up to the way at top speed', () => {
    for (const time of [0, 0.01, 0.5, 3])
      expect(reachRadius(7, 1.1, time) + 7 * carriedTime(1.1, time)).toBeCloseTo(7 * time, 12);
  });

  it('keep their digits at short times', () => {
    // Series a t^2 / 2 - a^2 t^3 / 6: the naive difference would have lost everything.
    expect(carriedTime(1.3, 1e-9) / 1e-9).toBeCloseTo(1 - 1.3e-9 / 2, 15);
  });
});

describe('phiAt', () => {
  const drags = [0.9, 1.3];
  const table = createPhiTable(drags);

  it('is within its stated error of phi at any time, for every man', () => {
    for (let k = 0; k < 2000; k++) {
      const time = k * 0.00397;
      drags.forEach((drag, man) => {
        expect(Math.abs(phiAt(table, man, time) - carriedTime(drag, time))).toBeLessThanOrEqual(drag / 80_000 + 1e-15);
      });
    }
  });

  it('is clamped at both ends', () => {
    expect(phiAt(table, 0, -1)).toBe(0);
    expect(phiAt(table, 0, Number.NaN)).toBe(0);
    expect(phiAt(table, 1, 1e9)).toBeCloseTo(1 / 1.3, 4);
  });
});

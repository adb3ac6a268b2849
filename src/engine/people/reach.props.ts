import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrivalTime, carriedTime, reachableAt } from './reach.ts';

const man = fc.record({
  topSpeed: fc.double({ min: 4, max: 10, noNaN: true }),
  drag: fc.double({ min: 0.7, max: 1.6, noNaN: true }),
  speed: fc.double({ min: 0, max: 1, noNaN: true }),
  heading: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
});
const place = fc.double({ min: -30, max: 30, noNaN: true });
const spare = fc.double({ min: 0, max: 2, noNaN: true });
const pause = fc.double({ min: 0, max: 2, noNaN: true });

describe('arrivalTime', () => {
  it('is a time at which the man is there, and no earlier time on a fine grid is', () => {
    fc.assert(
      fc.property(man, place, place, spare, ({ topSpeed, drag, speed, heading }, x, y, r) => {
        const [vx, vy] = [speed * topSpeed * Math.cos(heading), speed * topSpeed * Math.sin(heading)];
        const time = arrivalTime(topSpeed, drag, 0, 0, vx, vy, x, y, r);
        expect(reachableAt(topSpeed, drag, 0, 0, vx, vy, x, y, r + 1e-9, time)).toBe(true);
        for (let k = 0; time > 1e-3 && k < 200; k++) {
          expect(reachableAt(topSpeed, drag, 0, 0, vx, vy, x, y, r - 1e-9, (time - 1e-3) * (k / 200))).toBe(false);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is never made earlier by starting later', () => {
    fc.assert(
      fc.property(man, place, place, pause, ({ topSpeed, drag, speed, heading }, x, y, wait) => {
        const [vx, vy] = [speed * topSpeed * Math.cos(heading), speed * topSpeed * Math.sin(heading)];
        const now = arrivalTime(topSpeed, drag, 0, 0, vx, vy, x, y, 0);
        const carried = carriedTime(drag, wait);
        const left = Math.exp(-drag * wait);
        // Waiting is coasting, which is one of the things that the early starter could have done.
        const later = wait + arrivalTime(topSpeed, drag, vx * carried, vy * carried, vx * left, vy * left, x, y, 0);
        expect(now).toBeLessThanOrEqual(later + 1e-3);
      }),
    );
  });

  it('is the same in a mirror, after a turn and after a shift', () => {
    fc.assert(
      fc.property(man, place, place, place, ({ topSpeed, drag, speed, heading }, x, y, shift) => {
        // A place under his feet is reached at once, one beside them only after he has turned: rounding decides which it is.
        fc.pre(Math.hypot(x, y) > 1e-3);
        const [vx, vy] = [speed * topSpeed * Math.cos(heading), speed * topSpeed * Math.sin(heading)];
        const time = arrivalTime(topSpeed, drag, 0, 0, vx, vy, x, y, 0);
        expect(arrivalTime(topSpeed, drag, 0, 0, -vx, vy, -x, y, 0)).toBe(time);
        expect(arrivalTime(topSpeed, drag, 0, 0, vy, -vx, y, -x, 0)).toBeCloseTo(time, 9);
        // A grazing arrival may differ by the shortest spell that the search sees.
        expect(Math.abs(arrivalTime(topSpeed, drag, shift, 1, vx, vy, x + shift, y + 1, 0) - time)).toBeLessThan(1e-3);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { isInCrease, isOutOfBounds } from '../field-limits.ts';
import { groundOf } from './play-ground.ts';
import { nearestAllowed, snapGroundOf, snapPlace } from './snap-place.ts';

const ground = groundOf(demoPlaybook);
const snaps = snapGroundOf(demoPlaybook, demoPlaybook.plays[0]!, ground, 'C');

const place = fc.record({
  x: fc.double({ min: -40, max: 40, noNaN: true }),
  y: fc.double({ min: -30, max: 60, noNaN: true }),
});

describe('wherever is pointed at', () => {
  test('the place caught on is near, and on the crease it is allowed', () => {
    fc.assert(
      fc.property(place, fc.double({ min: 0.1, max: 1, noNaN: true }), (at, radius) => {
        const { point, onCrease } = snapPlace(at, snaps, radius);
        // Each of x and y by the radius at most, a corner on the crease by twice that, and the rounding.
        expect(Math.hypot(point.x - at.x, point.y - at.y)).toBeLessThan(2.5 * radius + 0.15);
        if (onCrease) expect(isInCrease(point, ground.field)).toBe(false);
      }),
    );
  });

  test('the nearest place that is allowed is allowed', () => {
    fc.assert(
      fc.property(place, (at) => {
        const point = nearestAllowed(at, ground.field);
        expect(isInCrease(point, ground.field) || isOutOfBounds(point, ground.field)).toBe(false);
      }),
    );
  });
});

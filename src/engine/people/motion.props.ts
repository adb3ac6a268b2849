import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createMovers, setMover, stepToward, stepWithPush } from './motion.ts';
import { reachableAt } from './reach.ts';

const place = fc.double({ min: -30, max: 30, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
const model = fc.record({
  topSpeed: fc.double({ min: 4, max: 10, noNaN: true }),
  drag: fc.double({ min: 0.7, max: 1.6, noNaN: true }),
});
/** A velocity or push of any direction, as a share of top speed. */
const vector = fc.tuple(share, angle).map(([r, theta]) => ({ x: r * Math.cos(theta), y: r * Math.sin(theta) }));
const order = fc.record({ x: place, y: place, arrive: fc.constantFrom(0 as const, 1 as const), effort: share });

function mover(topSpeed: number, drag: number, step: number) {
  const movers = createMovers(1, step);
  setMover(movers, 0, topSpeed, drag);
  return movers;
}

describe('the exact step', () => {
  it('composes: two half steps are one step', () => {
    fc.assert(
      fc.property(model, vector, vector, ({ topSpeed, drag }, v, u) => {
        const whole = Float64Array.of(1, 2, v.x * topSpeed, v.y * topSpeed);
        const halves = Float64Array.from(whole);
        stepWithPush(mover(topSpeed, drag, 0.1), whole, 0, u.x * topSpeed, u.y * topSpeed);
        const half = mover(topSpeed, drag, 0.05);
        for (let k = 0; k < 2; k++) stepWithPush(half, halves, 0, u.x * topSpeed, u.y * topSpeed);
        for (let k = 0; k < 4; k++) expect(halves[k]).toBeCloseTo(whole[k]!, 12);
      }),
    );
  });
});

describe('steering', () => {
  it('never exceeds top speed and never leaves the reachable disc', () => {
    fc.assert(
      fc.property(model, vector, fc.array(order, { minLength: 1, maxLength: 40 }), ({ topSpeed, drag }, v, orders) => {
        const movers = mover(topSpeed, drag, 0.05);
        const [vx, vy] = [v.x * topSpeed, v.y * topSpeed];
        const motion = Float64Array.of(0, 0, vx, vy);
        orders.forEach(({ x, y, arrive, effort }, k) => {
          stepToward(movers, motion, 0, x, y, arrive, effort);
          expect(Math.hypot(motion[2]!, motion[3]!)).toBeLessThanOrEqual(topSpeed * (1 + 1e-12));
          const time = (k + 1) * 0.05;
          expect(reachableAt(topSpeed, drag, 0, 0, vx, vy, motion[0]!, motion[1]!, 1e-9, time)).toBe(true);
        });
      }),
    );
  });

  it('mirrors exactly', () => {
    fc.assert(
      fc.property(
        model,
        place,
        place,
        vector,
        fc.array(order, { maxLength: 30 }),
        ({ topSpeed, drag }, x, y, v, orders) => {
          const movers = mover(topSpeed, drag, 0.05);
          const motion = Float64Array.of(x, y, v.x * topSpeed, v.y * topSpeed);
          const image = Float64Array.of(-x, y, -v.x * topSpeed, v.y * topSpeed);
          for (const { x: toX, y: toY, arrive, effort } of orders) {
            stepToward(movers, motion, 0, toX, toY, arrive, effort);
            stepToward(movers, image, 0, -toX, toY, arrive, effort);
            expect(motion[0] === -image[0]! && motion[1] === image[1]).toBe(true);
            expect(motion[2] === -image[2]! && motion[3] === image[3]).toBe(true);
          }
        },
      ),
    );
  });

  it('arrives and stays, from anywhere at any speed', () => {
    fc.assert(
      fc.property(model, place, place, vector, ({ topSpeed, drag }, x, y, v) => {
        const movers = mover(topSpeed, drag, 0.05);
        const motion = Float64Array.of(0, 0, v.x * topSpeed, v.y * topSpeed);
        for (let k = 0; k < 500; k++) stepToward(movers, motion, 0, x, y, 1, 1);
        expect(Math.hypot(motion[0]! - x, motion[1]! - y)).toBeLessThan(1e-6);
        expect(Math.hypot(motion[2]!, motion[3]!)).toBeLessThan(1e-6);
      }),
    );
  });
});

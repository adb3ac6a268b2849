import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createLane, type Lane, laneInto } from './lane.ts';
import { createTouch, drawTouchInto, touchOddsInto } from './touch.ts';

interface Man {
  x: number;
  y: number;
  vx: number;
  vy: number;
  reach: number;
  reaction: number;
}

interface Throw {
  toX: number;
  toY: number;
  speed: number;
  lob: boolean;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const man = fc.record({
  x: between(-8, 8),
  y: between(-3, 25),
  vx: between(-7, 7),
  vy: between(-7, 7),
  reach: between(1, 2.8),
  reaction: between(0, 0.5),
});
const still = man.map((m) => ({ ...m, vx: 0, vy: 0 }));
const pass = fc.record({ toX: between(-12, 12), toY: between(4, 22), speed: between(10, 35), lob: fc.boolean() });

/** One lane from (fromX, fromY): the target is relative to it. */
function laneOf(men: readonly Man[], thrown: Throw, fromX = 0, fromY = 0, mirror = 1): Lane {
  const lane = createLane(men.length);
  const motion = new Float64Array(men.length * 4);
  men.forEach((m, i) => {
    motion.set([mirror * m.x + fromX, m.y + fromY, mirror * m.vx, m.vy], i * 4);
  });
  const movers = {
    topSpeed_byAgent: new Float64Array(men.length).fill(7.5),
    drag_byAgent: new Float64Array(men.length).fill(1.2),
    reaction_byAgent: Float64Array.from(men, (m) => m.reaction),
    stickReach_byAgent: Float64Array.from(men, (m) => m.reach),
  };
  const toX = mirror * thrown.toX + fromX;
  laneInto(lane, fromX, fromY, toX, thrown.toY + fromY, thrown.speed, thrown.lob, motion, movers, 0, men.length, 0);
  return lane;
}

describe('laws of the lane', () => {
  it('completion and first touches are odds that sum to 1', () => {
    fc.assert(
      fc.property(fc.array(man, { maxLength: 5 }), pass, (men, thrown) => {
        const lane = laneOf(men, thrown);
        const touch = new Float64Array(men.length);
        touchOddsInto(touch, lane);
        expect(lane.completion).toBeGreaterThanOrEqual(0);
        expect(touch.every((odds) => odds >= 0)).toBe(true);
        expect(touch.reduce((a, b) => a + b, lane.completion)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('a still defender farther off the way never lowers completion', () => {
    fc.assert(
      fc.property(still, pass, between(0, 6), between(0, 6), (m, thrown, a, b) => {
        const straight = { ...thrown, toX: 0 };
        const near = laneOf([{ ...m, x: Math.min(a, b) }], straight).completion;
        const far = laneOf([{ ...m, x: Math.max(a, b) }], straight).completion;
        expect(far).toBeGreaterThanOrEqual(near);
      }),
    );
  });

  it('a faster flat ball never lowers completion past still defenders', () => {
    fc.assert(
      fc.property(fc.array(still, { maxLength: 3 }), pass, between(10, 40), between(10, 40), (men, thrown, a, b) => {
        const slow = laneOf(men, { ...thrown, lob: false, speed: Math.min(a, b) }).completion;
        const fast = laneOf(men, { ...thrown, lob: false, speed: Math.max(a, b) }).completion;
        expect(fast).toBeGreaterThanOrEqual(slow);
      }),
    );
  });

  it('a longer stick, a quicker reaction and one defender more never raise completion', () => {
    fc.assert(
      fc.property(fc.array(man, { minLength: 1, maxLength: 4 }), pass, between(0, 1), (men, thrown, more) => {
        const base = laneOf(men, thrown).completion;
        const longer = men.map((m) => ({ ...m, reach: m.reach + more }));
        expect(laneOf(longer, thrown).completion).toBeLessThanOrEqual(base);
        expect(base).toBeLessThanOrEqual(laneOf(men.slice(1), thrown).completion);
        const quicker = men.map((m) => ({ ...m, vx: 0, vy: 0, reaction: m.reaction * more }));
        const standing = men.map((m) => ({ ...m, vx: 0, vy: 0 }));
        expect(laneOf(quicker, thrown).completion).toBeLessThanOrEqual(laneOf(standing, thrown).completion);
      }),
    );
  });

  it('mirrors to the last bit', () => {
    fc.assert(
      fc.property(fc.array(man, { maxLength: 5 }), pass, (men, thrown) => {
        const here = laneOf(men, thrown);
        const there = laneOf(men, thrown, 0, 0, -1);
        expect(there.completion).toBe(here.completion);
        expect(there.time).toBe(here.time);
      }),
    );
  });

  it('does not care where on the field it is', () => {
    fc.assert(
      fc.property(fc.array(man, { maxLength: 5 }), pass, between(-20, 20), between(-20, 20), (men, thrown, x, y) => {
        // A defender on the very edge of the window may lose a sample of nearly no weight to rounding.
        expect(laneOf(men, thrown, x, y).completion).toBeCloseTo(laneOf(men, thrown).completion, 9);
      }),
    );
  });

  it('draws touches as often as their odds say', () => {
    fc.assert(
      fc.property(fc.array(man, { minLength: 1, maxLength: 3 }), pass, (men, thrown) => {
        const lane = laneOf(men, thrown);
        const odds = new Float64Array(men.length);
        touchOddsInto(odds, lane);
        const seen = new Float64Array(men.length);
        const touch = createTouch();
        const draws = 2000;
        let through = 0;
        for (let i = 0; i < draws; i++) {
          drawTouchInto(touch, lane, (i + 0.5) / draws);
          expect(touch.time).toBeLessThanOrEqual(lane.time);
          if (touch.by < 0) through++;
          else seen[touch.by] += 1 / draws;
        }
        // Evenly spaced draws miss an odds by less than one draw per change of outcome, at most two per sample and man.
        expect(through / draws).toBeCloseTo(lane.completion, 2);
        for (let agent = 0; agent < men.length; agent++) expect(Math.abs(seen[agent] - odds[agent])).toBeLessThan(0.03);
      }),
      { numRuns: 40 },
    );
  });

  it('never leaves NaN', () => {
    fc.assert(
      fc.property(
        fc.array(man, { maxLength: 5 }),
        fc.constantFrom(0, 1e-9, 5),
        fc.constantFrom(0, 20),
        (men, to, speed) => {
          for (const lob of [false, true]) {
            expect(Number.isNaN(laneOf(men, { toX: 0, toY: to, speed, lob }).completion)).toBe(false);
          }
        },
      ),
    );
  });
});

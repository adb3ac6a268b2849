import { describe, expect, it } from 'vitest';
import { createDraws, uniform } from '../random/draws.ts';
import { bodyRadius, crowdTolerance, resolveContacts } from './contact.ts';
import { createMovers, motionStride, setMover, stepToward } from './motion.ts';

const step = 0.05;

/** Seconds for a chaser at (0, 0) to come within .5 yd of (8, 0) when a man stands at (4, offset), planted or not. */
function chase(offset: number | null, planted: boolean): number {
  const movers = createMovers(2, step);
  setMover(movers, 0, 7.5, 1.2);
  setMover(movers, 1, 7.5, 1.2);
  const motion = Float64Array.of(0, 0, 0, 0, 4, offset ?? 50, 0, 0);
  const stands = Uint8Array.of(0, planted ? 1 : 0);
  for (let k = 1; k < 400; k++) {
    stepToward(movers, motion, 0, 8, 0, 0, 1);
    resolveContacts(motion, 0, 2, stands);
    if (Math.hypot(motion[0]! - 8, motion[1]!) < 0.5) return k * step;
  }
  return Infinity;
}

describe('a set pick', () => {
  const free = chase(null, true);

  it.each([
    // Body's breadth is .75: at .7 he brushes past, at 0 he meets it dead centre.
    [0, 0.35, 1.2],
    [0.1, 0.3, 1.2],
    [0.4, 0.15, 0.9],
    [0.74, 0, 0.3],
    [0.76, 0, 0],
  ])('set %s yd off the line of a chaser costs him between %s and %s s', (offset, least, most) => {
    const delay = chase(offset, true) - free;
    expect(delay).toBeGreaterThanOrEqual(least - 1e-9);
    expect(delay).toBeLessThanOrEqual(most + 1e-9);
  });

  it('costs more than a man who gives way', () => {
    expect(chase(0.1, true)).toBeGreaterThan(chase(0.1, false));
  });

  it('does not move', () => {
    const motion = Float64Array.of(0, 0, 7, 0, 0.5, 0, 0, 0);
    resolveContacts(motion, 0, 2, Uint8Array.of(0, 1));
    expect([...motion.slice(4)]).toEqual([0.5, 0, 0, 0]);
    expect(motion[0]).toBeCloseTo(0.5 - 2 * bodyRadius, 12);
    expect(motion[2]).toBe(0);
  });
});

describe('two bodies', () => {
  it('part along the line between them, half each, and lose the speed at which they met', () => {
    const motion = Float64Array.of(0, 0, 3, 1, 0, 0.5, 0, -3);
    resolveContacts(motion, 0, 2, new Uint8Array(2));
    expect([...motion]).toEqual([0, -0.125, 3, -1, 0, 0.625, 0, -1]);
  });

  it('are left alone when they only touch, or already part', () => {
    const motion = Float64Array.of(0, 0, 1, 0, 2 * bodyRadius, 0, -1, 0);
    resolveContacts(motion, 0, 2, new Uint8Array(2));
    expect([...motion]).toEqual([0, 0, 1, 0, 2 * bodyRadius, 0, -1, 0]);
    const parting = Float64Array.of(0, 0, -1, 0, 0.7, 0, 1, 0);
    resolveContacts(parting, 0, 2, new Uint8Array(2));
    expect([parting[2], parting[6]]).toEqual([-1, 1]);
  });

  it('part along y when they stand on the same spot', () => {
    const motion = Float64Array.of(2, 3, 0, 0, 2, 3, 0, 0);
    resolveContacts(motion, 0, 2, new Uint8Array(2));
    expect([...motion]).toEqual([2, 3 - bodyRadius, 0, 0, 2, 3 + bodyRadius, 0, 0]);
  });

  it('stay where they are when both are planted', () => {
    const motion = Float64Array.of(0, 0, 0, 0, 0.2, 0, 0, 0);
    resolveContacts(motion, 0, 2, Uint8Array.of(1, 1));
    expect([...motion]).toEqual([0, 0, 0, 0, 0.2, 0, 0, 0]);
  });

  it('outside the given range are not touched', () => {
    const motion = Float64Array.of(0, 0, 0, 0, 0.1, 0, 0, 0, 0.2, 0, 0, 0);
    resolveContacts(motion, 0, 1, new Uint8Array(3));
    expect([...motion]).toEqual([0, 0, 0, 0, 0.1, 0, 0, 0, 0.2, 0, 0, 0]);
  });
});

describe('a crowd of twelve', () => {
  const agents = 12;
  const draws = createDraws(4);

  function deepest(motion: Float64Array): number {
    let deep = 0;
    for (let i = 0; i < agents; i++) {
      for (let j = i + 1; j < agents; j++) {
        const apart = Math.hypot(motion[4 * i]! - motion[4 * j]!, motion[4 * i + 1]! - motion[4 * j + 1]!);
        deep = Math.max(deep, 2 * bodyRadius - apart);
      }
    }
    return deep;
  }

  it('that all run for the same ball never overlaps more than the tolerance', () => {
    const movers = createMovers(agents, step);
    for (let i = 0; i < agents; i++) setMover(movers, i, 6.5 + 0.15 * i, 1.2);
    let deep = 0;
    for (let scene = 0; scene < 30; scene++) {
      const motion = new Float64Array(agents * motionStride);
      for (let i = 0; i < agents; i++) {
        motion[4 * i] = (i % 4) * 5 - 8 + uniform(draws, scene, i, 0, 0);
        motion[4 * i + 1] = Math.floor(i / 4) * 5 + uniform(draws, scene, i, 1, 0);
      }
      const planted = Uint8Array.from({ length: agents }, (_, i) => (uniform(draws, scene, i, 2, 0) < 0.2 ? 1 : 0));
      for (let k = 0; k < 80; k++) {
        for (let i = 0; i < agents; i++) if (!planted[i]) stepToward(movers, motion, i, 0, 6, 1, 1);
        resolveContacts(motion, 0, agents, planted);
        deep = Math.max(deep, deepest(motion));
      }
      expect(motion.every(Number.isFinite)).toBe(true);
    }
    expect(deep).toBeLessThan(crowdTolerance);
    expect(deep).toBeGreaterThan(0.02);
  });

  it('mirrors exactly', () => {
    for (let scene = 0; scene < 40; scene++) {
      const motion = Float64Array.from({ length: agents * 4 }, (_, k) => 4 * uniform(draws, scene, k, 5, 0) - 2);
      const image = motion.map((value, k) => (k % 2 === 0 ? -value : value));
      const planted = Uint8Array.from({ length: agents }, (_, i) => (i % 3 === 0 ? 1 : 0));
      for (let k = 0; k < 5; k++) {
        resolveContacts(motion, 0, agents, planted);
        resolveContacts(image, 0, agents, planted);
      }
      motion.forEach((value, k) => {
        expect(image[k] === (k % 2 === 0 ? -value : value)).toBe(true);
      });
    }
  });
});

import { describe, expect, it } from 'vitest';
import { createShotTraffic, shotTrafficInto } from './shot-traffic.ts';

function trafficOf(men: readonly (readonly [number, number])[], x: number, y: number) {
  const out = createShotTraffic(men.length);
  const motion = new Float64Array(men.length * 4);
  men.forEach(([mx, my], i) => {
    motion.set([mx, my, 0, 0], i * 4);
  });
  shotTrafficInto(out, x, y, motion, new Float64Array(men.length).fill(2), 0, men.length);
  return out;
}

describe('traffic before a shot', () => {
  it('nobody, or nobody in the way, is nothing', () => {
    expect(trafficOf([], 0, 10).block).toBe(0);
    for (const man of [
      [4, 5],
      [0, 12],
      [0, -1],
      [0, 9.6],
    ] as const)
      expect(trafficOf([man], 0, 10).block).toBe(0);
  });

  it('a body on the line blocks more than a stick beside it, and screens', () => {
    const on = trafficOf([[0, 6]], 0, 10);
    const beside = trafficOf([[1, 6]], 0, 10);
    expect(on.block).toBeGreaterThan(2 * beside.block);
    expect(beside.block).toBeGreaterThan(0);
    expect(on.screen).toBeGreaterThan(beside.screen);
    expect(on.block).toBeLessThanOrEqual(0.5);
  });

  it('adds men without passing 1, and shares the block among them', () => {
    const one = trafficOf([[0, 6]], 0, 10);
    const three = trafficOf(
      [
        [0, 6],
        [0.2, 4],
        [-0.3, 7],
      ],
      0,
      10,
    );
    expect(three.block).toBeGreaterThan(one.block);
    expect(three.block).toBeLessThan(1);
    expect(three.block_byAgent.reduce((a, b) => a + b)).toBeCloseTo(three.block, 12);
  });

  it('mirrors', () => {
    const right = trafficOf([[3, 5]], 6, 9);
    const left = trafficOf([[-3, 5]], -6, 9);
    expect(left.block).toBe(right.block);
    expect(left.screen).toBe(right.screen);
  });
});

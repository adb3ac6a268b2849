import { describe, expect, it } from 'vitest';
import { brakeShare, createMovers, setMover, stepToward } from './motion.ts';
import { arrivalTime } from './reach.ts';

/*
 * A man with bounded acceleration A and speed V on a line: the classic answers, as a fence round the drag model. It never
 * pushes harder than a V (1 + |v| / V), so that it can't beat a bounded-acceleration man who may.
 */

/** Shortest time to stand `distance` ahead from speed v0, s. */
function fastestStand(distance: number, v0: number, most: number, top: number): number {
  const stopping = (v0 * Math.abs(v0)) / (2 * most);
  if (distance < stopping) return fastestStand(-distance, -v0, most, top);
  const peak = Math.sqrt(most * distance + (v0 * v0) / 2);
  if (peak <= top) return (peak - v0) / most + peak / most;
  const cruise = distance - (top * top - v0 * v0) / (2 * most) - (top * top) / (2 * most);
  return (top - v0) / most + top / most + cruise / top;
}

/** Shortest time to pass a point `distance` ahead from speed v0, s. */
function fastestPass(distance: number, v0: number, most: number, top: number): number {
  const gaining = (top * top - v0 * v0) / (2 * most);
  if (distance >= gaining) return (top - v0) / most + (distance - gaining) / top;
  return (-v0 + Math.sqrt(v0 * v0 + 2 * most * distance)) / most;
}

describe('the fence itself', () => {
  // Found independently by bisection over a linear program, to 1e-4; 2 and 1 + sqrt 2 are the textbook's.
  it.each([
    [20, 0, 4, 6, 4.833333],
    [4, 0, 4, 6, 2],
    [9, 0, 4, 6, 3],
    [20, -3, 4, 6, 5.770833],
    [20, 3, 4, 6, 4.270833],
    [2, 5, 4, 6, 2.31066],
    [10, 0, 5.5, 7, 2.701299],
    [-3, 4, 5.5, 7, 2.527181],
    [1, 0, 1, Infinity, 2],
    [0, 1, 1, Infinity, 1 + Math.SQRT2],
  ])('stands %s ahead from %s with A %s, V %s in %s s', (distance, v0, most, top, seconds) => {
    expect(fastestStand(distance, v0, most, top)).toBeCloseTo(seconds, 6);
  });

  it.each([
    [20, 0, 4, 6, 4.083333],
    [2, 0, 4, 6, 1],
    [20, -3, 4, 6, 5.020833],
    [20, 3, 4, 6, 3.520833],
    [10, 0, 5.5, 7, 2.064935],
    [1, -4, 5.5, 7, 1.672028],
  ])('passes %s ahead from %s with A %s, V %s in %s s', (distance, v0, most, top, seconds) => {
    expect(fastestPass(distance, v0, most, top)).toBeCloseTo(seconds, 6);
  });
});

describe('the drag model inside the fence', () => {
  const [topSpeed, drag] = [7.8, 1.3];
  const starts = [0, 3, 7, -3, -7];
  const cases = [0.5, 2, 5, 10, 25].flatMap((distance) => starts.map((v0) => [distance, v0] as const));

  it.each(cases)('passes %s yd ahead from %s no sooner', (distance, v0) => {
    const most = drag * (topSpeed + Math.max(0, -v0));
    const fence = fastestPass(distance, v0, most, topSpeed);
    expect(arrivalTime(topSpeed, drag, 0, 0, v0, 0, distance, 0, 0)).toBeGreaterThanOrEqual(fence - 1e-9);
  });

  it.each(cases)('stands %s yd ahead from %s no sooner', (distance, v0) => {
    const movers = createMovers(1, 0.01);
    setMover(movers, 0, topSpeed, drag);
    const motion = Float64Array.of(0, 0, v0, 0);
    let time = 0;
    while (Math.abs(motion[0]! - distance) > 1e-6 || Math.abs(motion[2]!) > 1e-6) {
      stepToward(movers, motion, 0, distance, 0, 1, 1);
      time += 0.01;
    }
    // From behind the brake curve he may use his whole push to stop: never more than 2 a V.
    const most = drag * topSpeed * (v0 > 0 ? 2 : 1 + Math.max(brakeShare, -v0 / topSpeed));
    expect(time).toBeGreaterThanOrEqual(fastestStand(distance, v0, most, topSpeed) - 1e-9);
  });
});

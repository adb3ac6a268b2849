import { describe, expect, it } from 'vitest';
import { metres, toMetres } from '../units.ts';
import { distance, distanceSquared } from './distance.ts';
import { goalMouthAngle } from './goal-mouth-angle.ts';
import { interceptTime } from './moving-point-intercept.ts';
import { distanceToSegment, nearestOnSegment } from './nearest-on-segment.ts';

describe('distance', () => {
  it('is the root of its square', () => {
    expect(distance(1, 2, 4, 6)).toBe(5);
    expect(distanceSquared(1, 2, 4, 6)).toBe(25);
  });
});

describe('goalMouthAngle', () => {
  // Across 1.83 m, depth and side in metres; angle between the two pipes computed by an independent program.
  it.each([
    [5, 0, 0.361995],
    [10, 0, 0.182492],
    [8, 5, 0.164555],
    [4, 4, 0.230713],
  ])('from %s m out and %s m aside is %s rad', (depth, aside, angle) => {
    expect(goalMouthAngle(metres(aside), metres(depth), metres(1.83))).toBeCloseTo(angle, 6);
  });

  it.each([
    ['from behind as from in front', 3, -4, goalMouthAngle(3, 4)],
    ['between the pipes', 0.5, 0, Math.PI],
    ['on the goal line outside', 4, 0, 0],
    ['on the circle over the goal a right angle', 0, 1, Math.PI / 2],
  ])('%s', (_name, x, y, angle) => {
    expect(goalMouthAngle(x, y)).toBeCloseTo(angle, 12);
  });
});

describe('nearestOnSegment', () => {
  it.each([
    ['beside the middle', 1, 3, 0.5, 3],
    ['before the start', -4, 3, 0, 5],
    ['beyond the end', 5, -4, 1, 5],
    ['on it', 0.5, 0, 0.25, 0],
  ])('%s', (_name, x, y, share, away) => {
    expect(nearestOnSegment(x, y, 0, 0, 2, 0)).toBe(share);
    expect(distanceToSegment(x, y, 0, 0, 2, 0)).toBeCloseTo(away, 12);
  });

  it('takes a segment without length for its point', () => {
    expect(nearestOnSegment(3, 4, 0, 0, 0, 0)).toBe(0);
    expect(distanceToSegment(3, 4, 0, 0, 0, 0)).toBe(5);
  });
});

describe('interceptTime', () => {
  // Metres and metres a second; solved by an independent program.
  it.each([
    [7.5, 2, 5, 15, 0, 0.439389],
    [7.5, 4, 5, 15, 0, Infinity],
    [12, 1.5, 6, 20, 0, 0.477835],
  ])('from (%s, %s) at %s meets a ball from the origin at (%s, %s) after %s s', (x, y, speed, vx, vy, seconds) => {
    expect(interceptTime(x, y, speed, 0, 0, vx, vy)).toBeCloseTo(seconds, 6);
  });

  it.each([
    ['already there', 0, 0, 3, 0, 0, 5, 0, 0],
    ['a ball that lies still', 0, 0, 5, 3, 4, 0, 0, 1],
    ['equal speeds, coming', 10, 0, 5, 0, 0, 5, 0, 1],
    ['equal speeds, going', 0, 0, 5, 10, 0, 5, 0, Infinity],
    ['a runner who stands, in its way', 10, 0, 0, 0, 0, 5, 0, 2],
    ['a runner who stands, beside it', 10, 1, 0, 0, 0, 5, 0, Infinity],
    ['chased down from behind', 0, 0, 8, 6, 0, 5, 0, 2],
  ])('%s', (_name, x, y, speed, pointX, pointY, vx, vy, seconds) => {
    expect(interceptTime(x, y, speed, pointX, pointY, vx, vy)).toBeCloseTo(seconds, 12);
  });

  it('is a time at which both are at one place, and none earlier is', () => {
    for (let k = 1; k < 200; k++) {
      const [px, py, vx, vy] = [Math.sin(k) * 9, Math.cos(2 * k) * 9, Math.sin(3 * k) * 8, Math.cos(5 * k) * 8];
      const speed = 4 + (k % 5);
      const time = interceptTime(0, 0, speed, px, py, vx, vy);
      if (time === Infinity) continue;
      expect(distance(0, 0, px + vx * time, py + vy * time)).toBeCloseTo(speed * time, 9);
      for (let share = 0; share < 0.999; share += 0.01) {
        const early = share * time;
        expect(distance(0, 0, px + vx * early, py + vy * early)).toBeGreaterThan(speed * early);
      }
    }
  });
});

it('keeps metres that went in and came out', () => {
  expect(toMetres(distance(0, 0, metres(3), metres(4)))).toBeCloseTo(5, 12);
});

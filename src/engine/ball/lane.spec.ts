import { describe, expect, it } from 'vitest';
import { distanceAfter, flightTime } from './flight.ts';
import { createLane, defaultLaneParameters, type Lane, type LaneParameters, laneInto } from './lane.ts';
import { createTouch, drawTouchInto, touchOddsInto } from './touch.ts';

const pole = 2.5;

/**
 * Sticks that get most of what they can reach. The defaults are fitted on the whole chance and move with it; what is said here
 * of sticks at all is said of these.
 */
const hardSticks: LaneParameters = { ...defaultLaneParameters, touchRate: 10, touchDepth: 1, releaseClear: 1 };

function lanePast(
  men: readonly (readonly number[])[],
  to: readonly number[],
  speed = 27,
  lob = false,
  readAhead = 0,
  parameters = hardSticks,
): Lane {
  const lane = createLane(men.length);
  const motion = new Float64Array(men.length * 4);
  men.forEach((m, i) => {
    motion.set([m[0], m[1], m[2] ?? 0, m[3] ?? 0], i * 4);
  });
  const all = (value: number) => new Float64Array(men.length).fill(value);
  const movers = {
    topSpeed_byAgent: all(7.5),
    drag_byAgent: all(1.2),
    reaction_byAgent: all(0.25),
    stickReach_byAgent: all(pole),
  };
  laneInto(lane, 0, 0, to[0], to[1], speed, lob, motion, movers, 0, men.length, readAhead, parameters);
  return lane;
}

describe('lane', () => {
  it('butterfly: a mate behind the passer is safe, a far opponent ahead takes it', () => {
    // accessible-space tests/test_model.py (Bischofberger and Baca 2026, doi 10.1186/s40537-026-01387-8): passer in the
    // middle, mate 50 m to one side, opponent 50 m to the other, v 15 m/s: xC > .95 to the mate, < .05 to the opponent.
    const far = 50 / 0.9144;
    const speed = 15 / 0.9144;
    expect(lanePast([[far, 0]], [-far, 0], speed).completion).toBeGreaterThan(0.95);
    expect(lanePast([[far, 0]], [far, 0], speed).completion).toBeLessThan(0.05);
  });

  it('a man behind the passer or beyond the receiver does not count', () => {
    expect(lanePast([[0, -1.5]], [0, 10]).completion).toBe(1);
    expect(lanePast([[0, 11.5]], [0, 10]).completion).toBe(1);
    expect(lanePast([[0, 7]], [0, 10]).completion).toBeLessThan(0.9);
  });

  it('a man in the lane hurts, and hurts more where the ball comes later', () => {
    const early = lanePast([[1.5, 4]], [0, 18]).completion;
    const late = lanePast([[1.5, 13]], [0, 18]).completion;
    expect(late).toBeLessThan(early);
  });

  it('a man running into the lane takes more than one running out of it', () => {
    for (const parameters of [hardSticks, defaultLaneParameters]) {
      const past = (vx: number) => lanePast([[3.5, 10, vx, 0]], [0, 15], 27, false, 0, parameters).completion;
      expect(past(-5)).toBeLessThan(past(0));
      expect(past(0)).toBeLessThanOrEqual(past(5));
    }
    expect(lanePast([[3.5, 10, -5, 0]], [0, 15]).completion).toBeLessThan(0.8);
    expect(lanePast([[3.5, 10, 5, 0]], [0, 15]).completion).toBe(1);
  });

  it('reading the pass ahead helps the defence', () => {
    const surprised = lanePast([[2, 12]], [0, 18]).completion;
    expect(lanePast([[2, 12]], [0, 18], 27, false, 0.2).completion).toBeLessThan(surprised - 0.1);
  });

  it('the outer half yard of the stick has low odds', () => {
    // Samples on a man who cannot move: a full reaction time to spare, ball passing inside the held stick's edge.
    const inside = (depth: number) => 1 - lanePast([[pole * hardSticks.heldShare - depth, 2]], [0, 8], 45).completion;
    expect(inside(0.25)).toBeLessThan(0.03);
    expect(inside(1)).toBeGreaterThan(5 * inside(0.25));
  });

  it('a lob clears a stick in the middle that a flat pass does not, and takes longer', () => {
    const fitted = (lob: boolean) => lanePast([[0, 8]], [0, 16], 27, lob, 0, defaultLaneParameters).completion;
    expect(fitted(true)).toBeGreaterThan(fitted(false));
    const flat = lanePast([[0, 8]], [0, 16]);
    const lob = lanePast([[0, 8]], [0, 16], 27, true);
    expect(flat.completion).toBeLessThan(0.6);
    expect(lob.completion).toBeGreaterThan(flat.completion + 0.3);
    expect(lob.time).toBeGreaterThan(2 * flat.time);
    expect(lob.speed).toBeLessThan(flat.speed);
    // It flies as its own speed says.
    expect(flightTime(16, lob.speed)).toBeCloseTo(lob.time, 9);
  });

  it('a lob near the ends of its flight can still be reached', () => {
    expect(lanePast([[0, 13.5]], [0, 16], 27, true).completion).toBeLessThan(0.3);
    expect(lanePast([[0, 13.5]], [0, 16], 27, true, 0, defaultLaneParameters).completion).toBeLessThan(
      lanePast([[0, 8]], [0, 16], 27, true, 0, defaultLaneParameters).completion,
    );
  });

  it('a pass to oneself is nothing', () => {
    const lane = lanePast([[0, 0]], [0, 0]);
    expect(lane.completion).toBe(1);
    expect(lane.time).toBe(0);
  });

  it('a ball without speed never arrives', () => {
    const lane = lanePast([[0, 4]], [0, 8], 0);
    expect(lane.time).toBe(Number.POSITIVE_INFINITY);
    expect(lane.completion).toBe(0);
  });

  it('agrees with the converged integral', () => {
    // 4,000 steps of the same hazard, written out plainly for a standing man; tolerance: the worst of the sampling error at
    // 12 samples is .077 over random moving men, its mean .004 (docs/models/lane.md).
    const p = defaultLaneParameters;
    for (const [x, y, length, speed] of [
      [1, 6, 12, 27],
      [2, 12, 18, 27],
      [0, 5, 10, 20],
      [0.3, 7, 14, 25],
      [2.5, 15, 22, 25],
    ]) {
      const start = flightTime(Math.min(p.releaseClear, length / 4), speed);
      const end = flightTime(length - Math.min(p.catchClear, length / 4), speed);
      const steps = 4000;
      let touches = 0;
      for (let i = 0; i < steps; i++) {
        const time = start + ((end - start) * (i + 0.5)) / steps;
        const since = time - 0.25;
        const phi = (1 - Math.exp(-1.2 * since)) / 1.2;
        const covered = since > 0 ? 7.5 * (since - phi) : 0;
        const share = since > 0 ? Math.min(1, p.heldShare + ((1 - p.heldShare) * since) / p.swing) : p.heldShare;
        const away = Math.hypot(x, y - distanceAfter(time, speed));
        const inside = Math.min(1, Math.max(0, (covered + pole * share - away) / p.touchDepth));
        const body = Math.max(0, 1 - away / p.bodyReach);
        touches += ((p.touchRate * inside ** 3 + p.bodyRate * body) * (end - start)) / steps;
      }
      const completion = lanePast([[x, y]], [0, length], speed, false, 0, p).completion;
      expect(Math.abs(completion - Math.exp(-touches))).toBeLessThan(0.02);
    }
  });

  it('the man nearer the passer gets the first touch of two in line', () => {
    const lane = lanePast(
      [
        [0, 6],
        [0, 12],
      ],
      [0, 18],
      15,
    );
    const odds = new Float64Array(2);
    touchOddsInto(odds, lane);
    expect(odds[0]).toBeGreaterThan(odds[1]);
    const touch = createTouch();
    drawTouchInto(touch, lane, 0);
    expect(touch.by).toBe(0);
    expect(touch.y).toBeGreaterThan(2);
    expect(touch.y).toBeLessThan(7);
    drawTouchInto(touch, lane, 1 - 1e-12);
    expect(touch.by).toBe(-1);
    expect(touch.y).toBe(18);
  });
});

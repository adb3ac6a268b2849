import { describe, expect, it } from 'vitest';
import { sprintLead } from './create-athlete.ts';
import { levelMean } from './levels.ts';
import { brake, brakeShare, createMovers, motionStride, setMover, stepToward, stepWithPush } from './motion.ts';
import { arrivalTime } from './reach.ts';

const step = 0.05;
const topSpeed = 7.8;
const drag = 1.3;

function oneMan(x: number, y: number, vx: number, vy: number, seconds = step) {
  const movers = createMovers(1, seconds);
  setMover(movers, 0, topSpeed, drag);
  return { movers, motion: Float64Array.of(x, y, vx, vy) };
}

/** The drag model by small explicit steps of the fourth-order Runge-Kutta rule: knows nothing of the closed form. */
function integrate(v0: number, push: number, time: number): { x: number; v: number } {
  const n = 400;
  const h = time / n;
  let [x, v] = [0, v0];
  const rate = (speed: number) => drag * (push - speed);
  for (let k = 0; k < n; k++) {
    const a1 = rate(v);
    const a2 = rate(v + (h / 2) * a1);
    const a3 = rate(v + (h / 2) * a2);
    const a4 = rate(v + h * a3);
    x += h * v + ((h * h) / 6) * (a1 + a2 + a3);
    v += (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
  }
  return { x, v };
}

describe('stepWithPush', () => {
  it.each([
    [0, 7.8],
    [5, 7.8],
    [7.8, -7.8],
    [-3, 2],
  ])('solves the model exactly from speed %s with push %s', (v0, push) => {
    const { movers, motion } = oneMan(0, 0, v0, 0, 0.4);
    stepWithPush(movers, motion, 0, push, 0);
    const expected = integrate(v0, push, 0.4);
    expect(motion[0]).toBeCloseTo(expected.x, 9);
    expect(motion[2]).toBeCloseTo(expected.v, 9);
  });
});

/**
 * The shortest time from speed v0 to a stop `distance` ahead when full push starts and a push of `brakeShare` stops:
 * one switch, found by bisection on the closed forms.
 */
function fastestStop(distance: number, v0: number): number {
  const k = brakeShare * topSpeed;
  const travel = (pushing: number) => {
    const speed = topSpeed + (v0 - topSpeed) * Math.exp(-drag * pushing);
    const first = topSpeed * pushing + ((v0 - topSpeed) * (1 - Math.exp(-drag * pushing))) / drag;
    const braking = Math.log1p(speed / k) / drag;
    return { way: first + (speed - k * Math.log1p(speed / k)) / drag, time: pushing + braking, speed };
  };
  let [low, high] = [0, 30];
  for (let k2 = 0; k2 < 200; k2++) {
    const middle = (low + high) / 2;
    if (travel(middle).speed < 0 || travel(middle).way < distance) low = middle;
    else high = middle;
  }
  return travel(low).time;
}

/** Steps until he is and stays within `near` yards of a stop at the target, s. */
function timeToStand(
  distance: number,
  v0: number,
  seconds: number,
  near: number,
): { time: number; past: number; left: number } {
  const { movers, motion } = oneMan(0, 0, v0, 0, seconds);
  let [time, past] = [0, 0];
  for (let k = 1; k * seconds < 20; k++) {
    stepToward(movers, motion, 0, distance, 0, 1, 1);
    past = Math.max(past, motion[0]! - distance);
    if (Math.abs(motion[0]! - distance) > near || Math.abs(motion[2]!) > near) time = (k + 1) * seconds;
  }
  return { time, past, left: Math.abs(motion[0]! - distance) + Math.abs(motion[2]!) };
}

describe('stepToward, arriving', () => {
  const cases = [0.2, 0.5, 1, 2, 4, 8, 15, 30].flatMap((distance) => [0, -4].map((v0) => [distance, v0] as const));

  it.each(cases)('stops on a point %s yd ahead from speed %s, without passing it', (distance, v0) => {
    const { past, left } = timeToStand(distance, v0, step, 1e-6);
    expect(past).toBeLessThan(1e-3);
    expect(left).toBeLessThan(1e-9);
  });

  it.each(cases)(
    'takes at most 1 %% and two steps longer than the fastest stop, %s yd from speed %s',
    (distance, v0) => {
      const ours = timeToStand(distance, v0, step, 1e-3).time;
      const fastest = fastestStop(distance, v0);
      expect(ours).toBeGreaterThan(fastest - 0.025 * fastest - step);
      expect(ours).toBeLessThan(1.01 * fastest + 2 * step);
    },
  );

  it.each(cases)(
    'loses less than 1 %% to the fastest stop when steps are short, %s yd from speed %s',
    (distance, v0) => {
      const ours = timeToStand(distance, v0, 0.002, 0.01).time;
      expect(ours / fastestStop(distance, v0)).toBeLessThan(1.01);
    },
  );

  it('comes to rest when the target moves under his feet', () => {
    const { movers, motion } = oneMan(3, 3, 5, -2);
    for (let k = 0; k < 40; k++) stepToward(movers, motion, 0, motion[0]!, motion[1]!, 1, 1);
    expect(Math.hypot(motion[2]!, motion[3]!)).toBeLessThan(1e-12);
  });

  it('swings round a bend and still lands', () => {
    const { movers, motion } = oneMan(0, 0, 0, 7);
    for (let k = 0; k < 120; k++) stepToward(movers, motion, 0, 4, 0, 1, 1);
    expect(Math.hypot(motion[0]! - 4, motion[1]!, motion[2]!, motion[3]!)).toBeLessThan(1e-9);
  });
});

describe('stepToward, running through', () => {
  const near = 0.3;
  const turns = Array.from({ length: 60 }, (_, k) => {
    const angle = k * 2.399963; // golden angle: directions spread evenly
    const distance = 2 + (k % 13);
    return [distance * Math.cos(angle), distance * Math.sin(angle), (k % 8) * 0.9] as const;
  });

  it('is as early as the reachable disc allows, within a few hundredths of a second on average', () => {
    let [loss, worst] = [0, 0];
    for (const [x, y, speed] of turns) {
      const { movers, motion } = oneMan(0, 0, speed, 0, 0.01);
      let time = 0;
      while (Math.hypot(motion[0]! - x, motion[1]! - y) > near && time < 20) {
        stepToward(movers, motion, 0, x, y, 0, 1);
        time += 0.01;
      }
      const late = time - arrivalTime(topSpeed, drag, 0, 0, speed, 0, x, y, near);
      expect(late).toBeGreaterThan(-1e-9);
      loss += late / turns.length;
      worst = Math.max(worst, late);
    }
    expect(loss).toBeLessThan(0.02);
    expect(worst).toBeLessThan(0.4);
  });

  it('goes at the share of top speed that effort asks for', () => {
    const { movers, motion } = oneMan(0, 0, 0, 0);
    for (let k = 0; k < 200; k++) stepToward(movers, motion, 0, 1000, 0, 0, 0.5);
    expect(motion[2]).toBeCloseTo(0.5 * topSpeed, 4);
  });

  it('coasts at no effort', () => {
    const { movers, motion } = oneMan(0, 0, 4, 0);
    stepToward(movers, motion, 0, 10, 0, 0, 0);
    expect(motion[2]).toBeCloseTo(4 * Math.exp(-drag * step), 12);
  });
});

describe('the shuttle run of 5, 10 and 5 yards', () => {
  /** Where the body's middle turns when a hand or foot touches the line, yd short of it: common practice, no source. */
  const touch = 0.4;

  function shuttle(speed: number, constant: number): number {
    const movers = createMovers(1, 0.01);
    setMover(movers, 0, speed, constant);
    const motion = new Float64Array(motionStride);
    let time = 0;
    for (const turn of [5 - touch, touch - 5]) {
      // He stops before he turns: within a hand's breadth and nearly still.
      while (Math.abs(motion[0]! - turn) > 0.08 || Math.abs(motion[2]!) > 1) {
        stepToward(movers, motion, 0, turn, 0, 1, 1);
        time += 0.01;
      }
    }
    for (; motion[0]! < 0; time += 0.01) stepToward(movers, motion, 0, 100, 0, 0, 1);
    return time - sprintLead;
  }

  // Medians of a lacrosse combine, 148 boys, ages inferred 11-12, 13-14 and 15-16 (thedynamicathlete.ca, 2013-10-18).
  it.each([
    ['12U', 5.55, 0.07],
    ['14U', 5.42, 0.02],
    ['highSchool', 5.13, 0.02],
  ] as const)('takes %s about %s s, as measured, within a share of %s', (level, published, share) => {
    const ours = shuttle(levelMean(level, 'topSpeed'), levelMean(level, 'drag'));
    expect(Math.abs(ours / published - 1)).toBeLessThan(share);
  });
});

describe('degenerate input', () => {
  it.each([Number.NaN, Infinity, -Infinity])('makes him brake, target %s', (target) => {
    const { movers, motion } = oneMan(1, 2, 3, 4);
    const still = Float64Array.from(motion);
    brake(movers, still, 0);
    stepToward(movers, motion, 0, target, 0, 0, 1);
    expect([...motion]).toEqual([...still]);
  });

  it('coasts when effort is no number', () => {
    const { movers, motion } = oneMan(0, 0, 1, 0);
    stepToward(movers, motion, 0, 5, 5, 0, Number.NaN);
    expect(motion.every(Number.isFinite)).toBe(true);
  });

  it.each([
    [0, 1],
    [-1, 1],
    [1, 0],
    [Number.NaN, 1],
    [1, Infinity],
  ])('refuses the model V %s, a %s', (speed, constant) => {
    expect(() => setMover(createMovers(1, step), 0, speed, constant)).toThrow(RangeError);
  });

  it('refuses a step or a count that is none', () => {
    expect(() => createMovers(1, 0)).toThrow(RangeError);
    expect(() => createMovers(-1, step)).toThrow(RangeError);
    expect(() => createMovers(1.5, step)).toThrow(RangeError);
  });
});

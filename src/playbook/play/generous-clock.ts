import type { Point } from '../../engine/index.ts';
import { type Gait, type Pace, secondsFor, yardsIn } from './pace.ts';
import { lengthOf, type Moving, stretches, type WalkClock, type WayRun } from './script-walk.ts';

/** A wind-up or a look that deceives takes about this long, s. */
const fakeTime = 0.3;

/**
 * The clock of a walk that errs on the side of the runner: his legs are the fastest of his level, the ball is slow, and corners are taken
 * without a loss. What does not fit into its time fits into nobody's.
 */
export function generousClock(pace: Pace): WalkClock {
  return {
    ballEndsRuns: false,
    tick: (time) => time,
    flight: (_, from, to) => Math.hypot(from.x - to.x, from.y - to.y) / pace.passSpeed,
    way: (_, from, points, carries) => createWay(from, points, carries ? pace.carry : pace.run),
    leaves(_, order, heldSince, way) {
      if (order.to === undefined) return undefined;
      const carried = way === undefined || way.since < heldSince ? 0 : way.until;
      const ready = Math.max(order.since, heldSince + pace.release) + order.holds + order.fakes * fakeTime;
      return Math.max(ready, carried);
    },
  };
}

function createWay(from: Moving, places: readonly Point[], gait: Gait): WayRun {
  const points = [from, ...places];
  // Who runs already has his top speed from the first step.
  const rolling = from.vx !== 0 || from.vy !== 0;
  const whole = lengthOf(points);
  return {
    seconds: secondsFor(whole, gait, rolling),
    left: (time) => Math.max(0, whole - yardsIn(time, gait, rolling)),
    at(time) {
      let left = yardsIn(time, gait, rolling);
      for (const [a, b] of stretches(points)) {
        const length = Math.hypot(a.x - b.x, a.y - b.y);
        if (left < length) {
          const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
          return { x: a.x + ux * left, y: a.y + uy * left, vx: ux * gait.topSpeed, vy: uy * gait.topSpeed };
        }
        left -= length;
      }
      const end = points.at(-1)!;
      return { x: end.x, y: end.y, vx: 0, vy: 0 };
    },
  };
}

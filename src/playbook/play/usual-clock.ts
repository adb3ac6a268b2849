import {
  createMovers,
  flightTime,
  type Level,
  levelMean,
  motionStride,
  type Point,
  type SpotId,
  scriptTimes,
  setMover,
  stepToward,
} from '../../engine/index.ts';
import { type BallOrder, lengthOf, type Moving, type WalkClock, type Way, type WayRun } from './script-walk.ts';

/** What of a man the timing of a script hangs on: yards a second, 1/s, seconds. */
export interface ScriptMan {
  readonly topSpeed: number;
  readonly drag: number;
  readonly passSpeed: number;
  /** From catch to release. */
  readonly passRelease: number;
  readonly shotRelease: number;
}

/** A usual man of a level. */
export function usualMan(level: Level): ScriptMan {
  return {
    topSpeed: levelMean(level, 'topSpeed'),
    drag: levelMean(level, 'drag'),
    passSpeed: levelMean(level, 'passSpeed'),
    passRelease: levelMean(level, 'passRelease'),
    shotRelease: levelMean(level, 'shotRelease'),
  };
}

const { step, lookEvery, windUpShare, fake, lastStride, waypointRadius, arrivalRadius, carryEffort, runEffort } =
  scriptTimes;

/** A step that is a hair over is that step: sums of tenths are no tenths in doubles. Share of a step. */
const hair = 1e-6;

/** The clock of a chance in which nobody is in the way: it goes by the engine's steps, motion and flight. */
export function usualClock(manOf: (who: SpotId) => ScriptMan): WalkClock {
  return {
    ballEndsRuns: true,
    tick: toStep,
    flight: (by, from, to) => flightTime(Math.hypot(from.x - to.x, from.y - to.y), manOf(by).passSpeed),
    way: (who, from, points, carries) => runWay(manOf(who), from, points, carries ? carryEffort : runEffort),
    leaves: (who, order, heldSince, way) => leaves(manOf(who), order, heldSince, way),
  };
}

function toStep(time: number): number {
  return Math.ceil(time / step - hair) * step;
}

/** He looks round when he has gathered the ball and every so often after it; at such a look he fakes, winds up, or goes on holding. */
function leaves(man: ScriptMan, order: BallOrder, heldSince: number, way: Way | undefined): number {
  const gathered = toStep(heldSince + man.passRelease * (1 - windUpShare));
  const lookFrom = (first: number, time: number) =>
    first + Math.max(0, Math.ceil((time - first) / lookEvery - hair)) * lookEvery;
  let look = lookFrom(gathered, Math.max(order.since, order.holdUntil));
  for (let i = 0; i < order.fakes; i++) look = toStep(look + fake);
  if (way?.carries === true) look = lookFrom(look, toStep(endOfCarry(way, order.shoots === true ? 0 : lastStride)));
  return toStep(look + (order.shoots === true ? man.shotRelease : man.passRelease * windUpShare));
}

/** When a carry has no more than `left` yards before it. */
function endOfCarry(way: Way, left: number): number {
  for (let time = 0; time < way.motion.seconds; time += step)
    if (way.motion.left(time) <= left) return way.since + time;
  return way.until;
}

/** The longest that a way is run, s: nobody runs the length of the field in a play. */
const longestRun = 30;

/** Runs a way as a chance does, step by step with the engine's motion, until he has arrived. */
function runWay(man: ScriptMan, from: Moving, points: readonly Point[], effort: number): WayRun {
  const movers = createMovers(1, step);
  setMover(movers, 0, man.topSpeed, man.drag);
  const motion = new Float64Array(motionStride);
  motion.set([from.x, from.y, from.vx, from.vy]);
  const frames: { readonly moving: Moving; readonly left: number }[] = [];
  /** What is left of the way behind each of its points. */
  const after = points.map((_, i) => lengthOf(points.slice(i)));
  const last = points.length - 1;
  const end = points[last]!;
  let leg = 0;
  while (frames.length * step < longestRun) {
    const x = motion[0]!;
    const y = motion[1]!;
    const next = points[leg]!;
    const toNext = Math.hypot(next.x - x, next.y - y);
    frames.push({ moving: { x, y, vx: motion[2]!, vy: motion[3]! }, left: toNext + after[leg]! });
    if (leg === last && toNext < arrivalRadius) break;
    if (leg < last && toNext < waypointRadius) leg++;
    stepToward(movers, motion, 0, points[leg]!.x, points[leg]!.y, leg === last ? 1 : 0, effort);
  }
  const seconds = (frames.length - 1) * step;
  const frameAt = (time: number) => frames[Math.min(frames.length - 1, Math.max(0, Math.round(time / step)))]!;
  return {
    seconds,
    // The last stride is a stop: he stands where he was sent.
    at: (time) => (time >= seconds ? { x: end.x, y: end.y, vx: 0, vy: 0 } : frameAt(time).moving),
    left: (time) => (time >= seconds ? 0 : frameAt(time).left),
  };
}

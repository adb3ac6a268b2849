import { samePlaceSquared } from '../tolerance.ts';

/**
 * How the agents of one scene can move: the drag model of each, with the coefficients of its exact step.
 *
 * dv/dt = a (V u - v), |u| <= 1: `V` top speed, `a` drag, `u` the push. Over one step of constant push the solution is
 * v' = e v + (1 - e) V u and x' = x + phi v + (step - phi) V u, with e = exp(-a step) and phi = (1 - e) / a.
 * The step is fixed when the movers are made; every array has one entry per agent. Yards, seconds.
 *
 * Source: Fujimura and Sugihara, "Geometric analysis and quantitative evaluation of sport teamwork",
 * Systems and Computers in Japan 36 (2005) 49, doi 10.1002/scj.20254.
 */
export interface Movers {
  readonly count: number;
  readonly step: number;
  /** V, yd/s. */
  readonly topSpeed: Float64Array;
  /** a, 1/s. */
  readonly drag: Float64Array;
  /** Everything that the step needs of an agent, `coefficientStride` numbers each, in the order of `column`. */
  readonly coefficients: Float64Array;
  /** Where `stepToward` puts one agent's orders for the kernel. */
  readonly single: Steering;
}

/** Numbers per agent in a `motion` array: x, y, vx, vy. */
export const motionStride = 4;

/**
 * The share of full push that a man puts into stopping.
 *
 * The drag model lets him push backward as hard as forward, and its drag brakes on top of that: full backward push would
 * stop a sprint with twice the start's acceleration. A shuttle run of 5, 10 and 5 yards shows what is true: medians of 5.55, 5.42
 * and 5.13 s in three rising age groups of a lacrosse combine (148 boys, thedynamicathlete.ca, 2013-10-18). With the
 * speeds of those ages the model needs 5.87, 5.46 and 5.17 s for a share of .3, and 5.37, 4.98 and 4.69 s for a share of 1.
 */
export const brakeShare = 0.3;

/** Movers for `count` agents and steps of `step` seconds; each must be given its model by `setMover` before it moves. */
export function createMovers(count: number, step: number): Movers {
  if (!Number.isInteger(count) || count < 0)
    throw new RangeError(`invalid count: ${count} (expected a whole number >= 0)`);
  if (!(step > 0 && step < Infinity)) throw new RangeError(`invalid step: ${step} (expected seconds > 0)`);
  return {
    count,
    step,
    topSpeed: new Float64Array(count),
    drag: new Float64Array(count),
    coefficients: new Float64Array(count * coefficientStride),
    single: {
      target: new Float64Array(2 * count),
      arrive: new Uint8Array(count),
      effort: new Float64Array(count),
      present: new Uint8Array(count),
    },
  };
}

/** Give agent `i` the top speed (yd/s, > 0) and drag (1/s, > 0) of its model. */
export function setMover(movers: Movers, i: number, topSpeed: number, drag: number): void {
  if (!(topSpeed > 0 && topSpeed < Infinity))
    throw new RangeError(`invalid top speed: ${topSpeed} (expected yd/s > 0)`);
  if (!(drag > 0 && drag < Infinity)) throw new RangeError(`invalid drag: ${drag} (expected 1/s > 0)`);
  const { step, coefficients } = movers;
  const lost = -Math.expm1(-drag * step);
  const kept = 1 - lost;
  const carried = lost / drag;
  const perNew = (step - carried) / lost;
  const perOld = carried - kept * perNew;
  const brakeSpeed = brakeShare * topSpeed;
  const bend = brakeSpeed * (0.5 / drag + perNew * (1 / 3 + largestBrakeEta / 36));
  const lastSpeed = perOld * drag * brakeSpeed;
  const half = perNew * brakeSpeed;
  movers.topSpeed[i] = topSpeed;
  movers.drag[i] = drag;
  const base = i * coefficientStride;
  coefficients[base + column.topSpeed] = topSpeed;
  coefficients[base + column.kept] = kept;
  coefficients[base + column.carried] = carried;
  coefficients[base + column.pushed] = step - carried;
  coefficients[base + column.perLost] = 1 / lost;
  coefficients[base + column.perOld] = perOld;
  coefficients[base + column.perLast] = 1 / (perOld + perNew);
  coefficients[base + column.brakeSpeed] = brakeSpeed;
  coefficients[base + column.lastSpeed] = lastSpeed;
  coefficients[base + column.root] = half * half - 4 * bend * 0.5 * perOld * lastSpeed;
  coefficients[base + column.rootPerWay] = 4 * bend;
  coefficients[base + column.half] = half;
  coefficients[base + column.perBend] = 0.5 / bend;
  coefficients[base + column.drag] = drag;
  coefficients[base + column.perSpeed] = 1 / topSpeed;
  coefficients[base + column.farOff] = perOld * topSpeed + farOffWay(coefficients, base);
}

/**
 * Move agent `i` one step toward a point, pushing as hard as `effort` (0 to 1, a factor on top speed) allows.
 *
 * `arrive` 1 stops on the point without passing it; 0 runs through it as early as the model can. A point that is not
 * finite, or on which the agent already stands, makes him brake. Writes `motion` in place and allocates nothing.
 * The mirror image (x, vx and targetX negated) gives exactly the negated result.
 *
 * Running, the push is constant along a straight line in the frame that drifts with the present velocity: the centre of
 * the set that can be reached at time t is r + v phi(t), so the best push points from there to the target.
 * Arriving, the speed toward the point is the greatest from which the brake can still stop in what is left of the way
 * after this step.
 */
export function stepToward(
  movers: Movers,
  motion: Float64Array,
  i: number,
  targetX: number,
  targetY: number,
  arrive: 0 | 1,
  effort: number,
): void {
  const { single } = movers;
  single.target[2 * i] = targetX;
  single.target[2 * i + 1] = targetY;
  single.arrive[i] = arrive;
  single.effort[i] = effort;
  single.present[i] = 1;
  stepRange(movers, motion, single, i, i + 1);
}

/** What every agent of a scene steers for: one entry per agent, `target` two (x, y). */
export interface Steering {
  readonly target: Float64Array;
  /** 1 to stop at the target, 0 to run through it. */
  readonly arrive: Uint8Array;
  /** 0 to 1, a factor on top speed. */
  readonly effort: Float64Array;
  /** Agents whose entry is 0 stand still and are left out. */
  readonly present: Uint8Array;
}

/** Move every agent one step toward its target (`stepToward`). Writes `motion` in place. */
export function stepAll(movers: Movers, motion: Float64Array, steering: Steering): void {
  stepRange(movers, motion, steering, 0, movers.count);
}

/**
 * The kernel of `stepToward`, for the agents `from` (included) to `to` (excluded) who are present.
 *
 * The loop is in here and numbers come and go through arrays: a number handed to a function that is not inlined is put on the heap, and
 * a man's roots and divisions overlap the next man's only when no call stands between them.
 */
function stepRange(movers: Movers, motion: Float64Array, steering: Steering, from: number, to: number): void {
  const { coefficients } = movers;
  const { target, arrive, effort: efforts, present } = steering;
  for (let i = from; i < to; i++) {
    if (present[i] === 0) continue;
    const base = i * motionStride;
    const model = i * coefficientStride;
    const awayX = target[2 * i]! - motion[base]!;
    const awayY = target[2 * i + 1]! - motion[base + 1]!;
    const vx = motion[base + 2]!;
    const vy = motion[base + 3]!;
    const squared = awayX * awayX + awayY * awayY;
    if (!(squared > samePlaceSquared && squared < Infinity)) {
      // Most of those who are in their places stand there: they are spared the call.
      if (vx * vx + vy * vy < samePlaceSquared) {
        motion[base + 2] = 0;
        motion[base + 3] = 0;
      } else brake(movers, motion, i);
      continue;
    }
    const topSpeed = coefficients[model + column.topSpeed]!;
    const kept = coefficients[model + column.kept]!;
    const effort = efforts[i]!;
    const limit = effort >= 1 ? topSpeed : effort > 0 ? effort * topSpeed : 0;
    const distance = Math.sqrt(squared);
    // Not 1 / distance: the division then need not wait for the root.
    const perDistance = distance * (1 / squared);
    const closing = (awayX * vx + awayY * vy) * perDistance;
    // Far off the brake curve allows more than top speed and has no say: its root is spared.
    const stops = arrive[i] === 1 && !(distance > coefficients[model + column.farOff]! && closing <= topSpeed);
    const wanted = stops ? speedToStop(coefficients, model, distance, closing) : Infinity;
    let pushX: number;
    let pushY: number;
    // The greatest closing speed that full push gives at the end of the step: below it the brake curve has no say.
    if (wanted >= kept * closing + (1 - kept) * limit) {
      const perSpeed = coefficients[model + column.perSpeed]!;
      const drag = coefficients[model + column.drag]!;
      // phi(t) near the time t of arrival: how many seconds of the present velocity will have been carried over by then. Two
      // rounds of t = phi + (distance - closing phi) / V with phi in the Pade form t / (1 + at/2 + (at)^2/12), drawn together
      // into one fraction: no exponential and one division. It only turns the aim, and is found again at every step.
      const time = distance * perSpeed;
      const at = drag * time;
      const first = 1 + at * (0.5 + at * (1 / 12));
      const second = time * (first + (1 - closing * perSpeed));
      const around = drag * second;
      const drift = (second * first) / (first * first + around * (0.5 * first + around * (1 / 12)));
      const aimX = awayX - vx * drift;
      const aimY = awayY - vy * drift;
      const aimSquared = aimX * aimX + aimY * aimY;
      const scale = aimSquared > samePlaceSquared ? (limit / aimSquared) * Math.sqrt(aimSquared) : 0;
      pushX = aimX * scale;
      pushY = aimY * scale;
    } else {
      const perLost = coefficients[model + column.perLost]!;
      const along = wanted * perDistance;
      const brakeSpeed = coefficients[model + column.brakeSpeed]!;
      const most = Math.max(limit, brakeSpeed);
      pushX = (along * awayX - kept * vx) * perLost;
      pushY = (along * awayY - kept * vy) * perLost;
      const pushed = pushX * pushX + pushY * pushY;
      if (pushed > most * most) {
        const shrink = (most / pushed) * Math.sqrt(pushed);
        pushX *= shrink;
        pushY *= shrink;
      }
    }
    const carried = coefficients[model + column.carried]!;
    const pushed = coefficients[model + column.pushed]!;
    motion[base] = motion[base]! + (carried * vx + pushed * pushX);
    motion[base + 1] = motion[base + 1]! + (carried * vy + pushed * pushY);
    motion[base + 2] = kept * vx + (1 - kept) * pushX;
    motion[base + 3] = kept * vy + (1 - kept) * pushY;
  }
}

/** Take one exact step with the push held at (pushX, pushY) = V u, yd/s; the caller keeps |u| <= 1. Writes `motion` in place. */
export function stepWithPush(movers: Movers, motion: Float64Array, i: number, pushX: number, pushY: number): void {
  const { coefficients } = movers;
  const model = i * coefficientStride;
  const base = i * motionStride;
  const kept = coefficients[model + column.kept]!;
  const carried = coefficients[model + column.carried]!;
  const pushed = coefficients[model + column.pushed]!;
  const vx = motion[base + 2]!;
  const vy = motion[base + 3]!;
  motion[base] = motion[base]! + (carried * vx + pushed * pushX);
  motion[base + 1] = motion[base + 1]! + (carried * vy + pushed * pushY);
  motion[base + 2] = kept * vx + (1 - kept) * pushX;
  motion[base + 3] = kept * vy + (1 - kept) * pushY;
}

/** Take one step that stops agent `i` as soon as the brake can. */
export function brake(movers: Movers, motion: Float64Array, i: number): void {
  const base = i * motionStride;
  const model = i * coefficientStride;
  const kept = movers.coefficients[model + column.kept]!;
  const scale = -kept * movers.coefficients[model + column.perLost]!;
  const most = movers.coefficients[model + column.brakeSpeed]!;
  const vx = motion[base + 2]!;
  const vy = motion[base + 3]!;
  // One who stands, stands: rounding would otherwise halve his speed for ever, down to numbers that processors are slow with.
  if (vx * vx + vy * vy < samePlaceSquared) {
    motion[base + 2] = 0;
    motion[base + 3] = 0;
    return;
  }
  stepWithinPush(movers, motion, i, scale * vx, scale * vy, most);
}

/** Indices into the coefficients of one agent. */
const column = {
  /** V. */
  topSpeed: 0,
  /** e: the share of the velocity that is left after a step without push. */
  kept: 1,
  /** phi: seconds of the present velocity that a step carries over into displacement. */
  carried: 2,
  /** step - phi: seconds of the push that a step turns into displacement. */
  pushed: 3,
  /** 1 / (1 - e). */
  perLost: 4,
  /** Displacement of a step is `perOld` v + perNew v'. */
  perOld: 5,
  /** 1 / (perOld + perNew). */
  perLast: 6,
  /** k: the push that brakes for an arrival, as a speed. */
  brakeSpeed: 7,
  /** Below this speed an arrival ends in one step. */
  lastSpeed: 8,
  /** The discriminant of the brake curve's quadratic is `root` + `rootPerWay` (way left); its root is (sqrt - `half`) `perBend`. */
  root: 9,
  rootPerWay: 10,
  half: 11,
  perBend: 12,
  /** a. */
  drag: 13,
  /** 1 / V. */
  perSpeed: 14,
  /** From farther off than this nobody brakes yet, however fast he comes. */
  farOff: 15,
} as const;

const coefficientStride = 16;

/** One exact step with the push shortened to `most` when it is longer. */
function stepWithinPush(
  movers: Movers,
  motion: Float64Array,
  i: number,
  pushX: number,
  pushY: number,
  most: number,
): void {
  const squared = pushX * pushX + pushY * pushY;
  const shrink = squared > most * most ? (most / squared) * Math.sqrt(squared) : 1;
  stepWithPush(movers, motion, i, pushX * shrink, pushY * shrink);
}

/**
 * The speed toward the point at the end of this step from which the brake just stops on it, yd/s.
 *
 * With push -k against the motion, k = brakeShare V, speed s k stops in (k / a) (s - ln(1 + s)). Written
 * eta^2 / 2 = s - ln(1 + s) this is a parabola, and s = eta + eta^2/3 + eta^3/36 - eta^4/270 + eta^5/4320 (Temme's eta,
 * DLMF 8.12), so that the speed after the step solves a quadratic in eta instead of a Lambert function:
 *
 *   distance = perOld closing + perNew k s + (k / a) eta^2 / 2 + perOld lastSpeed / 2
 *
 * The last term pays for braking in whole steps. Below `lastSpeed` one further step ends the run, and
 * distance = perOld closing + (perNew + perOld) speed lands on the point itself.
 */
function speedToStop(coefficients: Float64Array, model: number, distance: number, closing: number): number {
  const left = distance - coefficients[model + column.perOld]! * closing;
  const lastStep = left * coefficients[model + column.perLast]!;
  if (lastStep <= coefficients[model + column.lastSpeed]!) return Math.max(lastStep, 0);
  const discriminant = coefficients[model + column.root]! + coefficients[model + column.rootPerWay]! * left;
  const eta = (Math.sqrt(discriminant) - coefficients[model + column.half]!) * coefficients[model + column.perBend]!;
  return (
    coefficients[model + column.brakeSpeed]! * eta * (1 + eta * (1 / 3 + eta * (1 / 36 - eta * (1 / 270 - eta / 4320))))
  );
}

/** The way left from which the brake curve allows a little more than top speed: the speed of `speedToStop`, solved for the way. */
function farOffWay(coefficients: Float64Array, model: number): number {
  const eta = farOffMargin * largestBrakeEta;
  const root = eta / coefficients[model + column.perBend]! + coefficients[model + column.half]!;
  return (root * root - coefficients[model + column.root]!) / coefficients[model + column.rootPerWay]!;
}

/** Enough that no rounding can make a man far off one who brakes. */
const farOffMargin = 1.01;

/** eta at top speed, the largest that occurs on the brake curve. */
const largestBrakeEta = Math.sqrt(2 * (1 / brakeShare - Math.log1p(1 / brakeShare)));

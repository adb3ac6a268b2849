/**
 * Where a man can be: the reachable disc of the drag model (docs/models/motion.md).
 *
 * At time t after now he can be anywhere in the disc with centre r + v phi(t) and radius V (t - phi(t)),
 * phi(t) = (1 - e^(-a t)) / a. Discs of a fast man are not nested: he may be able to be at a place at 0.5 s and no longer
 * at 0.6 s. So "can he be there at t" is `reachableAt`, never `arrivalTime <= t`.
 *
 * Source: Fujimura and Sugihara 2005, doi 10.1002/scj.20254; that the boundary is a circle and moves with the first
 * velocity in this way: Narizuka et al. 2022, arXiv 2205.04511.
 */

/** phi(t): the seconds of the present velocity that are carried over into displacement by time `time`, s. */
export function carriedTime(drag: number, time: number): number {
  return -Math.expm1(-drag * time) / drag;
}

/** The radius of the disc that can be reached at `time` s, yd. */
export function reachRadius(topSpeed: number, drag: number, time: number): number {
  return topSpeed * (time - carriedTime(drag, time));
}

/**
 * Whether a man at (x, y) moving at (vx, vy) can have his body centre within `spare` yards of the target at `time` s.
 *
 * `spare` is stick reach, arm or body; 0 asks for the body centre itself. `time` < 0 is never reachable.
 */
export function reachableAt(
  topSpeed: number,
  drag: number,
  x: number,
  y: number,
  vx: number,
  vy: number,
  targetX: number,
  targetY: number,
  spare: number,
  time: number,
): boolean {
  if (!(time >= 0)) return false;
  const carried = carriedTime(drag, time);
  const awayX = targetX - x - vx * carried;
  const awayY = targetY - y - vy * carried;
  const radius = topSpeed * (time - carried) + spare;
  return radius >= 0 && awayX * awayX + awayY * awayY <= radius * radius;
}

/**
 * The first time at which the man can have his body centre within `spare` yards of the target, s; 0 when he is there.
 *
 * Infinity when an input is not finite or he cannot move. With V 7.8, a 1.3, at rest, 10 away: 1.993677 (in metres or in
 * yards). Reachable spells shorter than `shortestSpell` may be missed.
 */
export function arrivalTime(
  topSpeed: number,
  drag: number,
  x: number,
  y: number,
  vx: number,
  vy: number,
  targetX: number,
  targetY: number,
  spare: number,
): number {
  const awayX = targetX - x;
  const awayY = targetY - y;
  const distance = Math.sqrt(awayX * awayX + awayY * awayY);
  const speed = Math.sqrt(vx * vx + vy * vy);
  if (distance <= spare) return 0;
  // By this time the disc has outgrown every drift, so that the search below always ends.
  const latest = (distance + speed / drag) / topSpeed + 1 / drag;
  if (!(latest < Infinity)) return Infinity;
  const gap = (time: number) => {
    const carried = carriedTime(drag, time);
    const gapX = awayX - vx * carried;
    const gapY = awayY - vy * carried;
    return Math.sqrt(gapX * gapX + gapY * gapY) - topSpeed * (time - carried) - spare;
  };
  // The gap never closes faster than this, so that a step of gap / fastest cannot pass the first root.
  const fastest = Math.max(topSpeed, speed);
  let before = 0;
  for (let time = 0; time < latest; ) {
    const left = gap(time);
    if (left <= 0) return firstRoot(gap, before, time);
    before = time;
    time += Math.max(left / fastest, shortestSpell);
  }
  return firstRoot(gap, before, latest);
}

/** Seconds that the search for an arrival steps at least. A man who could be at a place for less than this is not at it. */
const shortestSpell = 1e-4;

/** Halve the bracket (outside at `before`, inside at `after`) until the doubles run out. */
function firstRoot(gap: (time: number) => number, before: number, after: number): number {
  let outside = before;
  let inside = after;
  for (let round = 0; round < 60; round++) {
    const middle = 0.5 * (outside + inside);
    // The doubles have run out: no further round would change anything.
    if (middle === outside || middle === inside) break;
    if (gap(middle) > 0) outside = middle;
    else inside = middle;
  }
  return inside;
}

/** phi(t) of several men on a fine grid of times, for loops that ask for it millions of times. */
export interface PhiTable {
  /** Grid points per second. */
  readonly perSecond: number;
  /** Grid points per man. */
  readonly points: number;
  readonly phi_byManAndTime: Float64Array;
}

/**
 * A table of phi for the men with these drags, up to `longest` s (8 when absent), 100 points a second.
 *
 * Linear in between: wrong by at most a / 80,000 s, which moves a man by less than a thousandth of a yard.
 */
export function createPhiTable(drag: ArrayLike<number>, longest = 8): PhiTable {
  const perSecond = 100;
  const points = Math.ceil(longest * perSecond) + 2;
  const phi_byManAndTime = new Float64Array(drag.length * points);
  for (let man = 0; man < drag.length; man++) {
    for (let k = 0; k < points; k++) phi_byManAndTime[man * points + k] = carriedTime(drag[man]!, k / perSecond);
  }
  return { perSecond, points, phi_byManAndTime };
}

/** phi of man `man` at `time` s, clamped to the table's ends. */
export function phiAt(table: PhiTable, man: number, time: number): number {
  const { points, phi_byManAndTime } = table;
  const place = time * table.perSecond;
  if (!(place > 0)) return 0;
  const base = man * points;
  if (place >= points - 1) return phi_byManAndTime[base + points - 1]!;
  const k = place | 0;
  const below = phi_byManAndTime[base + k]!;
  return below + (place - k) * (phi_byManAndTime[base + k + 1]! - below);
}

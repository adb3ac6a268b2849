/** A shooter steps into his shot this far, from outside. Yards. */
export const stepDown = 1.5;
/** A carrier who sees grass in front of him runs in this far before he shoots. Yards. */
export const stepIn = 3;
/** Nobody steps nearer to the goal than this. Yards. */
const closestStep = 6;
/** A receiver who stands outside steps down at most this far while the ball comes. Yards. */
const longestMeet = 1.4;
/** From a stand he gets this far in the square of the flight: about half of a V, less the turn. Yards per s2. */
const meetRate = 4;

/** How far a standing receiver steps down to a ball that flies this long. Yards. */
export function meetStep(flight: number): number {
  return Math.min(longestMeet, meetRate * flight * flight);
}

/** Share of (x, y) that is left after a step of `length` toward the goal, stopped at `closestStep`; 1 from inside it or from behind. */
export function stepShare(x: number, y: number, length: number): number {
  const distance = Math.sqrt(x * x + y * y);
  if (distance <= closestStep || y <= 0) return 1;
  return Math.max(closestStep, distance - length) / distance;
}

export interface CatchParameters {
  /** Placement error that makes a catch twice as hard, yd. */
  readonly errorScale: number;
  /** Ball speed up to which a catch is no harder, yd/s, and the yd/s above it that make it twice as hard. */
  readonly easySpeed: number;
  readonly speedScale: number;
  /** Distance of the nearest defender below which he makes the catch harder, yd. */
  readonly trafficDistance: number;
  /** How much harder a defender on top of the receiver makes it. */
  readonly trafficWeight: number;
  /** Share of the balls that such a defender knocks down, however good the receiver. */
  readonly contest: number;
  /** Beyond this error the ball is out of the receiver's reach, yd, less a last stretch in which it fades. */
  readonly reach: number;
  readonly stretch: number;
}

/** Defaults; docs/models/ball.md says what they were fitted to. */
export const defaultCatchParameters: CatchParameters = {
  errorScale: 1,
  easySpeed: 24,
  speedScale: 20,
  trafficDistance: 3,
  trafficWeight: 8,
  contest: 0.2,
  reach: 2.2,
  stretch: 0.7,
};

/** What became of a ball that reached its receiver. */
export type CatchResult = 'caught' | 'dropped' | 'past';

/**
 * Odds that a ball that got through is caught.
 *
 * Odds = catching^difficulty inside his reach: one difficulty fits every level, because a catch of 97, 93 and 85 %
 * (college, high school, under 14, adjacent) becomes 90, 82 and 65 % on a skip, the powers 3.5, 2.7 and 2.7
 * (common practice, no source). Difficulty is 1 for an accurate, unhurried pass with nobody near and grows with the
 * square of the error, with speed and with traffic.
 *
 * `catching` 0 to 1; `speed` of the ball on arrival, yd/s; `error` distance from where he wants it, yd;
 * `traffic` distance of the nearest defender's body, yd (Infinity for nobody).
 */
export function catchOdds(
  catching: number,
  speed: number,
  error: number,
  traffic: number,
  parameters: CatchParameters = defaultCatchParameters,
): number {
  const reached = reachShare(error, parameters);
  if (reached === 0 || catching <= 0) return 0;
  const scaled = error / parameters.errorScale;
  const fast = Math.max(0, speed - parameters.easySpeed) / parameters.speedScale;
  const close = Math.max(0, 1 - traffic / parameters.trafficDistance);
  const difficulty = 1 + scaled * scaled + fast + parameters.trafficWeight * close * close;
  const contested = 1 - parameters.contest * close * close;
  return reached * contested * Math.min(1, catching) ** difficulty;
}

/** Odds before the pass is thrown: `meanSquare` is the mean square of the error to expect, yd2 (`meanSquareError`). */
export function expectedCatchOdds(
  catching: number,
  speed: number,
  meanSquare: number,
  traffic: number,
  parameters: CatchParameters = defaultCatchParameters,
): number {
  // Inside the reach the odds fall about linearly with the square of the error, so the root mean square stands for all.
  return catchOdds(catching, speed, Math.sqrt(Math.max(0, meanSquare)), traffic, parameters);
}

/** Draws the result: a ball missed inside his reach drops near him, one out of it goes on. `uniform` 0 (included) to 1 (excluded). */
export function drawCatch(
  catching: number,
  speed: number,
  error: number,
  traffic: number,
  uniform: number,
  parameters: CatchParameters = defaultCatchParameters,
): CatchResult {
  if (uniform < catchOdds(catching, speed, error, traffic, parameters)) return 'caught';
  // The top of the draw belongs to the balls that went past, so that a better catcher never turns a drop into a ball past.
  return uniform >= reachShare(error, parameters) ? 'past' : 'dropped';
}

/** Odds that a defender who has his stick on a pass holds it: the rest are deflections. `catching` is his own. */
export function heldTouchOdds(catching: number, speed: number): number {
  const slow = 1 - Math.min(1, Math.max(0, speed - slowBall) / (hardBall - slowBall));
  return Math.max(0, catching) * (heldAtHard + (heldAtSlow - heldAtHard) * slow);
}

/** A stick that pokes at a passing ball holds a slow one about every second time, a hard one every fifth (assumption). */
const heldAtSlow = 0.55;
const heldAtHard = 0.2;
const slowBall = 12;
const hardBall = 32;

function reachShare(error: number, parameters: CatchParameters): number {
  return Math.min(1, Math.max(0, (parameters.reach - error) / parameters.stretch));
}

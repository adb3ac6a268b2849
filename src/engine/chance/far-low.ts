import { stride } from './state.ts';

// The ball is on one side of the field, and the low defender on the other side has a man behind him: who he is, and what he does.

/** A ball this near the middle line has no far side: the width of the goal (common practice, no source). Yards. */
const middleWidth = 2;
/** Defenders below this are low: half way between the rows of a box, whose corners stand at 10 and 3 (common practice, no source). Yards. */
const lowerHalf = 6.5;
/** A defender who is farther than this from his man does not reach him in one stride with the stick out, and has to look where he is. Yards. */
const outOfTouch = 4;
/**
 * Cosine of the angle at the defender between ball and man from which on he has one of the two in view only: 135 degrees, which is 67 to each side
 * of a man who looks half way between (common practice, no source).
 */
const bothInView = -0.7;
/** A low man who comes to the ball's side faster than this runs across; slower he shuffles along with the ball (common practice, no source). Yards a second. */
const crossingSpeed = 2;

/** The side that the ball is on in what its carrier sees: the sign of x, 0 when it is in the middle. */
function sideOfBall(seen: Float64Array, carrier: number): -1 | 0 | 1 {
  const x = seen[stride * carrier];
  if (x > middleWidth) return 1;
  return x < -middleWidth ? -1 : 0;
}

/** Agent index of the low defender who is farthest to the side away from the ball; -1 when the ball is in the middle or nobody is low. */
export function farLowDefender(covering: number, seen: Float64Array, carrier: number): number {
  const side = sideOfBall(seen, carrier);
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let agent = 6; side !== 0 && agent < 6 + covering; agent++) {
    const across = side * seen[stride * agent];
    if (seen[stride * agent + 1] >= lowerHalf || across >= least) continue;
    least = across;
    best = agent;
  }
  return best;
}

/**
 * The far low defender when he has lost sight of the man behind him, else -1.
 *
 * Nobody has a face here. What stands for a head that is turned: he is out of touch with his man, and the angle at him between the ball,
 * which he has to watch, and his man is so wide that he cannot have both in view.
 */
export function farLowWhoLooksAway(covering: number, seen: Float64Array, carrier: number): number {
  const defender = farLowDefender(covering, seen, carrier);
  const man = defender < 0 ? -1 : manBehind(seen, carrier, defender);
  if (man < 0) return -1;
  const x = seen[stride * defender];
  const y = seen[stride * defender + 1];
  const toBallX = seen[stride * carrier] - x;
  const toBallY = seen[stride * carrier + 1] - y;
  const toManX = seen[stride * man] - x;
  const toManY = seen[stride * man + 1] - y;
  const ball = Math.sqrt(toBallX * toBallX + toBallY * toBallY);
  const off = Math.sqrt(toManX * toManX + toManY * toManY);
  if (off < outOfTouch) return -1;
  return toBallX * toManX + toBallY * toManY < bothInView * ball * off ? defender : -1;
}

/** The nearest attacker without the ball who is farther to the far side than the defender; -1 when there is none. */
export function manBehind(seen: Float64Array, carrier: number, defender: number): number {
  const side = sideOfBall(seen, carrier);
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let man = 0; man < 6; man++) {
    const dx = seen[stride * man] - seen[stride * defender];
    const dy = seen[stride * man + 1] - seen[stride * defender + 1];
    const square = dx * dx + dy * dy;
    if (man === carrier || side * dx >= 0 || square >= least) continue;
    least = square;
    best = man;
  }
  return best;
}

/** The far low defender when he is moving across to the ball's side, else -1. */
export function farLowWhoCrosses(covering: number, seen: Float64Array, carrier: number): number {
  const defender = farLowDefender(covering, seen, carrier);
  if (defender < 0) return -1;
  return sideOfBall(seen, carrier) * seen[stride * defender + 2] > crossingSpeed ? defender : -1;
}

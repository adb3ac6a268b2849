import { distanceToSegment } from '../geometry/nearest-on-segment.ts';
import type { ChanceModel } from './model.ts';
import { seenBy } from './perceive.ts';
import { type ChanceState, historySteps, stepSeconds, stride } from './state.ts';
import { windUpShare } from './timing.ts';
import { isUnguarded, nearestDefender, nearestDefenderIndex } from './unit-tasks.ts';

/** A yes-no fact that a man who waits to run can see. "My man" is the defender nearest to me; a man is an offense index, or the id of a spot. */
export type RunnerCue<Man = number> =
  /** My man moves toward the ball. */
  | { readonly kind: 'manGoesToBall' }
  /** My man, who watches the ball, has me behind him. */
  | { readonly kind: 'manLooksAway' }
  /** No defender is near me. */
  | { readonly kind: 'manHasLeft' }
  /** No defender is near the place where my run ends. */
  | { readonly kind: 'placeIsOpen' }
  /** No defender stands between the ball and the place where my run ends. */
  | { readonly kind: 'laneIsOpen' }
  /** No defender stands in my way there. */
  | { readonly kind: 'wayIsOpen' }
  /** A mate has the ball, has gathered it, and is not pressed. */
  | { readonly kind: 'passerIsReady' }
  /** The ball is in nobody's stick. */
  | { readonly kind: 'ballIsInAir' }
  /** That mate has the ball. */
  | { readonly kind: 'ballIsWith'; readonly who: Man };

/** A man moves to the ball when he comes nearer to it faster than this: a step taken and not a sway (common practice, no source). yd/s. */
const goingSpeed = 1;
/**
 * Engine bodies have no eyes: a defender is taken to face the ball, and to see no farther round than this to either side, the half of a field of
 * view of about 200 degrees (from memory). Cosine of 100 degrees.
 */
const edgeOfSight = -0.17;
/** A defender farther off than this cannot put a hand on me with one step; as for the cue that a mate was left. Yards. */
const leftRoom = 2.5;
/** A stick reaches so far to the side of who holds it, without a step (a pole of 1.5 to 2 yd held at its end by an arm; assumption). Yards. */
const laneRoom = 1.5;
/** A defender nearer than this to my way is run into: the width of two men. Yards. */
const wayRoom = 1;

/**
 * Whether a cue holds in what a man without the ball sees, which is what was so his reaction ago. He must have been ordered to run: the place
 * and the way are those of that order. A ball in the air is where it is: eyes follow it. Allocates nothing.
 */
export function runnerCueHolds(model: ChanceModel, state: ChanceState, who: number, cue: RunnerCue): boolean {
  const seen = seenBy(model, state, who);
  switch (cue.kind) {
    case 'manGoesToBall':
      return speedToBall(model, state, who, seen) > goingSpeed;
    case 'manLooksAway':
      return manSees(model, state, who, seen) < edgeOfSight;
    case 'manHasLeft':
      return nearestDefender(model, seen, seen[stride * who], seen[stride * who + 1]) > leftRoom;
    case 'placeIsOpen':
      return isUnguarded(model, seen, endX(state, who), endY(state, who));
    case 'laneIsOpen':
      return laneGap(model, state, who) > laneRoom;
    case 'wayIsOpen':
      return wayGap(model, state, who, seen) > wayRoom;
    case 'passerIsReady':
      return passerIsReady(model, state, who, seen);
    case 'ballIsInAir':
      return holderSeen(model, state, who) < 0;
    case 'ballIsWith':
      return holderSeen(model, state, who) === cue.who;
  }
}

/** How fast my man comes nearer to the ball. yd/s. */
export function speedToBall(model: ChanceModel, state: ChanceState, who: number, seen: Float64Array): number {
  const at = stride * manOf(model, seen, who);
  const toBallX = ballX(model, state, who) - seen[at];
  const toBallY = ballY(model, state, who) - seen[at + 1];
  const distance = Math.sqrt(toBallX * toBallX + toBallY * toBallY);
  return distance < here ? 0 : (seen[at + 2] * toBallX + seen[at + 3] * toBallY) / distance;
}

/** Cosine of the angle at my man between the ball and me: 1 when he has both before him, -1 when I stand right behind him. */
export function manSees(model: ChanceModel, state: ChanceState, who: number, seen: Float64Array): number {
  const at = stride * manOf(model, seen, who);
  const ballSideX = ballX(model, state, who) - seen[at];
  const ballSideY = ballY(model, state, who) - seen[at + 1];
  const mySideX = seen[stride * who] - seen[at];
  const mySideY = seen[stride * who + 1] - seen[at + 1];
  const toBall = Math.sqrt(ballSideX * ballSideX + ballSideY * ballSideY);
  const toMe = Math.sqrt(mySideX * mySideX + mySideY * mySideY);
  // Who stands on the ball or on me has both before him.
  if (toBall < here || toMe < here) return 1;
  return (ballSideX * mySideX + ballSideY * mySideY) / (toBall * toMe);
}

/** Nearer than this is the same place. Yards. */
const here = 1e-6;

/** Distance of the nearest defender to the line from the ball to the end of my run. Yards. */
export function laneGap(model: ChanceModel, state: ChanceState, who: number): number {
  const seen = seenBy(model, state, who);
  const x = ballX(model, state, who);
  const y = ballY(model, state, who);
  return gapOf(model, seen, x, y, endX(state, who), endY(state, who));
}

/** Distance of the nearest defender to my way. Yards. */
function wayGap(model: ChanceModel, state: ChanceState, who: number, seen: Float64Array): number {
  const path = state.unit.path[who];
  let least = Number.POSITIVE_INFINITY;
  if (path === null) return least;
  let x = seen[stride * who];
  let y = seen[stride * who + 1];
  for (let at = 0; at < path.length; at += 2) {
    least = Math.min(least, gapOf(model, seen, x, y, path[at], path[at + 1]));
    x = path[at];
    y = path[at + 1];
  }
  return least;
}

function gapOf(model: ChanceModel, seen: Float64Array, ax: number, ay: number, bx: number, by: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let agent = 6; agent < 6 + model.covering; agent++) {
    const at = stride * agent;
    least = Math.min(least, distanceToSegment(seen[at], seen[at + 1], ax, ay, bx, by));
  }
  return least;
}

/** Whether the man with the ball could let it go: he has had it for as long as he gathers it, and nobody is on him. */
function passerIsReady(model: ChanceModel, state: ChanceState, who: number, seen: Float64Array): boolean {
  const passer = holderSeen(model, state, who);
  if (passer < 0 || passer >= 6 || passer === who) return false;
  const gather = Math.round((model.athletes[passer].passRelease * (1 - windUpShare)) / stepSeconds);
  const first = model.reactionSteps_byAgent[who];
  const last = Math.min(first + gather, historySteps - 1);
  for (let ago = first; ago <= last; ago++) if (holderAt(state, ago) !== passer) return false;
  return (
    nearestDefender(model, seen, seen[stride * passer], seen[stride * passer + 1]) >= model.parameters.pressDistance
  );
}

function holderSeen(model: ChanceModel, state: ChanceState, who: number): number {
  return holderAt(state, model.reactionSteps_byAgent[who]);
}

function holderAt({ holder_byStep, step }: ChanceState, ago: number): number {
  return holder_byStep[(step - ago) & (historySteps - 1)];
}

function manOf(model: ChanceModel, seen: Float64Array, who: number): number {
  return nearestDefenderIndex(model, seen, seen[stride * who], seen[stride * who + 1]);
}

function ballX(model: ChanceModel, state: ChanceState, who: number): number {
  const holder = holderSeen(model, state, who);
  return holder < 0 ? state.ball.x : seenBy(model, state, who)[stride * holder];
}

function ballY(model: ChanceModel, state: ChanceState, who: number): number {
  const holder = holderSeen(model, state, who);
  return holder < 0 ? state.ball.y : seenBy(model, state, who)[stride * holder + 1];
}

function endX({ bodies, unit }: ChanceState, who: number): number {
  const path = unit.path[who];
  return path === null ? bodies.motion[stride * who] : path[path.length - 2];
}

function endY({ bodies, unit }: ChanceState, who: number): number {
  const path = unit.path[who];
  return path === null ? bodies.motion[stride * who + 1] : path[path.length - 1];
}

import { usualField } from '../field/usual-field.ts';
import { farLowWhoCrosses, farLowWhoLooksAway } from './far-low.ts';
import type { ChanceModel } from './model.ts';
import type { CompiledCue } from './program.ts';
import { stride } from './state.ts';
import { type CoveringMen, nearestDefenderIndex } from './unit-tasks.ts';

/** Whom a picture of the field shows, and what is near and what is far in it. */
export interface CueGround extends CoveringMen {
  readonly parameters: Pick<ChanceModel['parameters'], 'freeDistance' | 'pressDistance'>;
}

/** A man is open to the eye with this much room. Yards. */
const openRoom = 2.5;
/** A defender has left his man when he is this far from him and moving to the ball faster than this. Yards, yards a second. */
const leftRoom = 2.5;
const leavingSpeed = 1;
/** The next defender steps to the ball: faster than he shuffles with it, and from no farther than he can arrive before a pass (common practice, no source). Yards a second, yards. */
const steppingSpeed = 2.5;
const steppingFrom = 8;
/** Of a man who comes at me, at least this much of his speed is toward me: else he runs past to somebody else. */
const straightAtMe = 0.8;
/** Who is nearer than this minds me, and drops off when he goes away faster than this (common practice, no source). Yards, yards a second. */
const mindedFrom = 5;
const droppingSpeed = 1.5;
/** A stick that is held out is in the lane when its owner's middle is this near to the line (common practice, no source). Yards. */
const stickInLane = 1;
/** The front of the crease, and from how near it is guarded: a pole reaches 2.8 yd from the body's middle, and a little. Yards. */
export const creaseFront = { x: 0, y: usualField.creaseRadius, radius: 3 } as const;

/**
 * Which defender a cue is about, as an agent index; -1 when what is seen rules the cue out.
 *
 * `seen` holds x, y, vx, vy per agent as the carrier has them in his mind, yards and yards a second. It is all that is asked about: no scheme, no
 * duty. So `iAmFree` and `open` may still fail for what a shot or a pass there would be worth (`cueHolds`). Nothing here knows left from
 * right: the mirrored picture has the same answer.
 */
export function cueSubject(ground: CueGround, seen: Float64Array, carrier: number, cue: CompiledCue): number {
  switch (cue.kind) {
    case 'iAmFree':
      return whoLeavesRoom(ground, seen, carrier, ground.parameters.freeDistance);
    case 'iAmPressed':
      return whoPresses(ground, seen, carrier);
    case 'nextSteps':
      return nextWhoSteps(ground, seen, carrier);
    case 'myManLeaves':
      return whoDropsOff(ground, seen, carrier);
    case 'creaseUp':
      return whoLeftTheCrease(ground, seen);
    case 'farLowLooksAway':
      return farLowWhoLooksAway(ground.covering, seen, carrier);
    case 'farLowCrosses':
      return farLowWhoCrosses(ground.covering, seen, carrier);
    case 'open':
      return whoLeavesRoom(ground, seen, cue.who, openRoom);
    case 'left':
      return whoLeft(ground, seen, cue.who, seen[stride * carrier], seen[stride * carrier + 1]);
    case 'laneTaken':
      return whoStandsInLane(ground, seen, carrier, cue.who);
  }
}

/** The defender nearest to a man when he is out of reach of him and on his way to the ball, else -1. */
export function whoLeft(ground: CoveringMen, seen: Float64Array, who: number, ballX: number, ballY: number): number {
  const x = seen[stride * who];
  const y = seen[stride * who + 1];
  const defender = nearestDefenderIndex(ground, seen, x, y);
  const at = stride * defender;
  const awayX = seen[at] - x;
  const awayY = seen[at + 1] - y;
  if (awayX * awayX + awayY * awayY < leftRoom * leftRoom) return -1;
  return speedToward(seen, defender, ballX, ballY) > leavingSpeed ? defender : -1;
}

function whoLeavesRoom(ground: CoveringMen, seen: Float64Array, who: number, room: number): number {
  const defender = nearestTo(ground, seen, who);
  return distanceBetween(seen, defender, who) >= room ? defender : -1;
}

function whoPresses(ground: CueGround, seen: Float64Array, carrier: number): number {
  const defender = nearestTo(ground, seen, carrier);
  return distanceBetween(seen, defender, carrier) < ground.parameters.pressDistance ? defender : -1;
}

/** The nearest of those who come at the carrier beside the one who is on him. */
function nextWhoSteps(ground: CoveringMen, seen: Float64Array, carrier: number): number {
  const mine = nearestTo(ground, seen, carrier);
  let next = -1;
  let least = steppingFrom;
  for (let agent = 6; agent < 6 + ground.covering; agent++) {
    const distance = distanceBetween(seen, agent, carrier);
    if (agent === mine || distance >= least || !comesAt(seen, agent, carrier)) continue;
    least = distance;
    next = agent;
  }
  return next;
}

function comesAt(seen: Float64Array, agent: number, carrier: number): boolean {
  const toward = speedToward(seen, agent, seen[stride * carrier], seen[stride * carrier + 1]);
  const vx = seen[stride * agent + 2];
  const vy = seen[stride * agent + 3];
  return toward > steppingSpeed && toward >= straightAtMe * Math.sqrt(vx * vx + vy * vy);
}

function whoDropsOff(ground: CoveringMen, seen: Float64Array, carrier: number): number {
  const mine = nearestTo(ground, seen, carrier);
  if (distanceBetween(seen, mine, carrier) >= mindedFrom) return -1;
  return speedToward(seen, mine, seen[stride * carrier], seen[stride * carrier + 1]) < -droppingSpeed ? mine : -1;
}

/** When nobody guards the front of the crease: the lowest defender of those before it, who has come out, else the one who is nearest to it. */
function whoLeftTheCrease(ground: CoveringMen, seen: Float64Array): number {
  const defender = nearestDefenderIndex(ground, seen, creaseFront.x, creaseFront.y);
  const dx = seen[stride * defender] - creaseFront.x;
  const dy = seen[stride * defender + 1] - creaseFront.y;
  if (dx * dx + dy * dy < creaseFront.radius * creaseFront.radius) return -1;
  const before = lowestBeforeGoal(ground, seen);
  return before < 0 ? defender : before;
}

/** The lowest defender who is no farther to a side than the crease is wide; -1 when there is none. */
function lowestBeforeGoal(ground: CoveringMen, seen: Float64Array): number {
  let lowest = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let agent = 6; agent < 6 + ground.covering; agent++) {
    const y = seen[stride * agent + 1];
    if (Math.abs(seen[stride * agent]) > usualField.creaseRadius || y < creaseFront.y || y >= least) continue;
    least = y;
    lowest = agent;
  }
  return lowest;
}

/** In the first yards of a pass no stick can be on the ball, in the last yard there is the receiver's own; of a short pass a quarter each (lane.md). */
const passerClears = 3;
const receiverClears = 1;

/** The defender nearest to the line from one man to another, when his stick is in it, else -1. */
function whoStandsInLane(ground: CoveringMen, seen: Float64Array, from: number, to: number): number {
  const x = seen[stride * from];
  const y = seen[stride * from + 1];
  const alongX = seen[stride * to] - x;
  const alongY = seen[stride * to + 1] - y;
  const length = Math.sqrt(alongX * alongX + alongY * alongY);
  const first = Math.min(passerClears, length / 4);
  const last = length - Math.min(receiverClears, length / 4);
  let nearest = -1;
  let least = stickInLane;
  for (let agent = 6; length > 0 && agent < 6 + ground.covering; agent++) {
    const dx = seen[stride * agent] - x;
    const dy = seen[stride * agent + 1] - y;
    const along = (dx * alongX + dy * alongY) / length;
    const off = Math.abs(dx * alongY - dy * alongX) / length;
    if (along < first || along > last || off >= least) continue;
    least = off;
    nearest = agent;
  }
  return nearest;
}

function nearestTo(ground: CoveringMen, seen: Float64Array, who: number): number {
  return nearestDefenderIndex(ground, seen, seen[stride * who], seen[stride * who + 1]);
}

function distanceBetween(seen: Float64Array, one: number, other: number): number {
  const dx = seen[stride * one] - seen[stride * other];
  const dy = seen[stride * one + 1] - seen[stride * other + 1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** How fast an agent comes nearer to a place, less than 0 when he goes away; endless for who is there. Yards a second. */
function speedToward(seen: Float64Array, agent: number, x: number, y: number): number {
  const at = stride * agent;
  const dx = x - seen[at];
  const dy = y - seen[at + 1];
  const distance = Math.sqrt(dx * dx + dy * dy);
  if (distance < 1e-6) return Number.POSITIVE_INFINITY;
  return (seen[at + 2] * dx + seen[at + 3] * dy) / distance;
}

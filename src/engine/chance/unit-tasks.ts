import type { ChanceModel } from './model.ts';
import { seenBy } from './perceive.ts';
import { fireTriggers } from './script.ts';
import { ballMode, type ChanceState, stride, task } from './state.ts';
import { arrivalRadius, carryEffort, sprint, waypointRadius } from './timing.ts';

/** Share of top speed at which men go to places. */
const jog = 0.7;
/** A defender farther than this from where a run ends leaves it open. Yards. */
const openDistance = 2.8;
/** Where a man seals: this far from the defender's body, on the ball's side. Yards. */
const sealDistance = 0.9;

/** Set every attacker's target for the coming step from what he is busy with. */
export function steerUnit(model: ChanceModel, state: ChanceState): void {
  for (let who = 0; who < 6; who++) steerAttacker(model, state, who);
}

function steerAttacker(model: ChanceModel, state: ChanceState, who: number): void {
  const { unit, ball } = state;
  switch (unit.task[who]) {
    case task.path:
    case task.carry:
      followPath(state, who);
      return;
    case task.waitToRun:
      if (goesNow(model, state, who)) unit.task[who] = task.path;
      stay(state, who);
      return;
    case task.pick:
      setPick(state, who);
      return;
    case task.seal:
      seal(model, state, who);
      return;
    case task.drive:
      drive(state, who);
      return;
    case task.receive:
      runOnto(state, who);
      return;
    case task.backUp:
      aim(state, who, unit.station[2 * who], unit.station[2 * who + 1], 1, sprint);
      return;
    case task.chase:
      aim(state, who, ball.x, ball.y, 0, sprint);
      return;
    default:
      stay(state, who);
  }
}

/** Point one body somewhere. `arrive` is 1 to stop there, 0 to run through. */
export function aim(state: ChanceState, agent: number, x: number, y: number, arrive: 0 | 1, effort: number): void {
  const { bodies } = state;
  bodies.target[2 * agent] = x;
  bodies.target[2 * agent + 1] = y;
  bodies.arrive[agent] = arrive;
  bodies.effort[agent] = effort;
}

/** Make a place the one where a man stays. */
export function stationAt(state: ChanceState, who: number, x: number, y: number): void {
  state.unit.station[2 * who] = x;
  state.unit.station[2 * who + 1] = y;
}

/** Let a man stay where he is now. */
export function standHere(state: ChanceState, who: number): void {
  const { motion } = state.bodies;
  state.unit.task[who] = task.stay;
  stationAt(state, who, motion[stride * who], motion[stride * who + 1]);
}

/** Send the man with the ball toward a share of his way from the goal: 1 is where he is. */
export function driveIn(state: ChanceState, who: number, share: number): void {
  const { motion } = state.bodies;
  state.unit.task[who] = task.drive;
  stationAt(state, who, motion[stride * who] * share, motion[stride * who + 1] * share);
}

/** Run with the ball, or step into a shot, to the station set for it. */
function drive(state: ChanceState, who: number): void {
  const { unit, ball } = state;
  if (ball.holder !== who) {
    unit.task[who] = task.stay;
    stay(state, who);
    return;
  }
  aim(state, who, unit.station[2 * who], unit.station[2 * who + 1], 1, sprint);
}

/** Run onto a ball in the air: through the place where it comes down, else a man who brakes for it comes too late. */
function runOnto(state: ChanceState, who: number): void {
  const { bodies, ball } = state;
  const dx = ball.toX - bodies.motion[stride * who];
  const dy = ball.toY - bodies.motion[stride * who + 1];
  aim(state, who, ball.toX, ball.toY, dx * dx + dy * dy > arrivalRadius * arrivalRadius ? 0 : 1, sprint);
}

function stay(state: ChanceState, who: number): void {
  const { unit, ball } = state;
  // A man with the ball, or a man who is about to get it, stands still: drifting is for those who want it.
  const drift = ball.holder === who ? 0 : 1;
  const x = unit.station[2 * who] + drift * unit.drift[2 * who];
  const y = unit.station[2 * who + 1] + drift * unit.drift[2 * who + 1];
  aim(state, who, x, y, 1, jog);
}

function followPath(state: ChanceState, who: number): void {
  const { unit, bodies } = state;
  const path = unit.path[who];
  if (path === null || path.length === 0) {
    unit.task[who] = task.stay;
    stay(state, who);
    return;
  }
  const last = path.length / 2 - 1;
  let leg = unit.leg[who];
  const dx = path[2 * leg] - bodies.motion[stride * who];
  const dy = path[2 * leg + 1] - bodies.motion[stride * who + 1];
  const radius = leg === last ? arrivalRadius : waypointRadius;
  if (dx * dx + dy * dy < radius * radius) {
    if (leg === last) {
      finishPath(state, who, path);
      return;
    }
    unit.leg[who] = ++leg;
  }
  const effort = unit.task[who] === task.carry ? carryEffort : sprint;
  aim(state, who, path[2 * leg], path[2 * leg + 1], leg === last ? 1 : 0, effort);
}

function finishPath(state: ChanceState, who: number, path: Float64Array): void {
  const { unit } = state;
  stationAt(state, who, path[path.length - 2], path[path.length - 1]);
  unit.post[2 * who] = unit.station[2 * who];
  unit.post[2 * who + 1] = unit.station[2 * who + 1];
  unit.task[who] = task.stay;
  stay(state, who);
  unit.lastProgress = state.time;
  fireTriggers(state, 'arrival', who, -1);
}

/** Whether a man who waits to run goes: when his place is open to his eye, or when he has waited long enough. */
function goesNow(model: ChanceModel, state: ChanceState, who: number): boolean {
  const { unit, time } = state;
  return time >= unit.goBy[who] || (time >= unit.goFrom[who] && runIsOpen(model, state, who));
}

/** Whether, as he sees it, nobody guards the place where his run ends. */
function runIsOpen(model: ChanceModel, state: ChanceState, who: number): boolean {
  const path = state.unit.path[who];
  if (path === null) return true;
  return isUnguarded(model, seenBy(model, state, who), path[path.length - 2], path[path.length - 1]);
}

/** Whether no defender is near a place where a run ends, in a (possibly past) picture of the field. */
export function isUnguarded(model: ChanceModel, motion: Float64Array, x: number, y: number): boolean {
  return nearestDefender(model, motion, x, y) > openDistance;
}

/** How many defenders the scheme directs: agents 6 (included) to 6 + `covering` (excluded). */
export type CoveringMen = Pick<ChanceModel, 'covering'>;

/** Distance from a place to the nearest defender who takes part, in a (possibly past) picture of the field. Yards. */
export function nearestDefender(model: CoveringMen, motion: Float64Array, x: number, y: number): number {
  const at = stride * nearestDefenderIndex(model, motion, x, y);
  const dx = motion[at] - x;
  const dy = motion[at + 1] - y;
  return Math.sqrt(dx * dx + dy * dy);
}

function setPick(state: ChanceState, who: number): void {
  const { unit, bodies, ball } = state;
  const path = unit.path[who];
  const over = state.time >= unit.goBy[who] || ball.holder === who || path === null;
  if (over) {
    bodies.planted[who] = 0;
    unit.task[who] = task.stay;
    stay(state, who);
    return;
  }
  const x = path[path.length - 2];
  const y = path[path.length - 1];
  const dx = x - bodies.motion[stride * who];
  const dy = y - bodies.motion[stride * who + 1];
  // Only a man who has come to a stop is a legal pick; from then on others must go round him.
  bodies.planted[who] = dx * dx + dy * dy < arrivalRadius * arrivalRadius ? 1 : 0;
  stationAt(state, who, x, y);
  aim(state, who, x, y, 1, sprint);
}

/** Stand between the ball and the defender who is nearest to the man the lane is kept for. */
function seal(model: ChanceModel, state: ChanceState, who: number): void {
  const { unit, bodies, ball } = state;
  if (state.time >= unit.goBy[who] || ball.holder === who) {
    unit.task[who] = task.stay;
    stay(state, who);
    return;
  }
  const partner = unit.partner[who];
  const defender = nearestDefenderIndex(
    model,
    bodies.motion,
    bodies.motion[stride * partner],
    bodies.motion[stride * partner + 1],
  );
  const x = bodies.motion[stride * defender];
  const y = bodies.motion[stride * defender + 1];
  const dx = bodies.motion[stride * partner] - x;
  const dy = bodies.motion[stride * partner + 1] - y;
  const distance = Math.sqrt(dx * dx + dy * dy);
  const scale = distance > sealDistance ? sealDistance / distance : 1;
  aim(state, who, x + dx * scale, y + dy * scale, 1, sprint);
}

/** Agent index of the defender nearest to a place. */
export function nearestDefenderIndex(model: CoveringMen, motion: Float64Array, x: number, y: number): number {
  let best = 6;
  let least = Number.POSITIVE_INFINITY;
  for (let agent = 6; agent < 6 + model.covering; agent++) {
    const dx = motion[stride * agent] - x;
    const dy = motion[stride * agent + 1] - y;
    const square = dx * dx + dy * dy;
    if (square < least) {
      least = square;
      best = agent;
    }
  }
  return best;
}

/** How far a man without the ball steps off his station to be easier to reach. Yards. */
const driftLimit = 1.3;
/** A defender nearer than this is worth stepping away from. Yards. */
const crowded = 3;

/** Let every attacker without the ball step away from a defender who crowds him. Called when the defense looks round. */
export function driftOpen(model: ChanceModel, state: ChanceState): void {
  const { unit, ball } = state;
  for (let who = 0; who < 6; who++) {
    unit.drift[2 * who] = 0;
    unit.drift[2 * who + 1] = 0;
    if (ball.holder === who || unit.task[who] !== task.stay || ball.mode === ballMode.dead) continue;
    const motion = seenBy(model, state, who);
    const x = unit.station[2 * who];
    const y = unit.station[2 * who + 1];
    const defender = nearestDefenderIndex(model, motion, x, y);
    const dx = x - motion[stride * defender];
    const dy = y - motion[stride * defender + 1];
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance >= crowded || distance < 1e-6) continue;
    const size = (driftLimit * (crowded - distance)) / (crowded * distance);
    unit.drift[2 * who] = dx * size;
    unit.drift[2 * who + 1] = dy * size;
  }
}

import { turnToKeeperPlace } from '../ball/keeper.ts';
import { usualField } from '../field/usual-field.ts';
import { resolveContacts } from '../people/contact.ts';
import { stepAll } from '../people/motion.ts';
import { runClocks } from './clock.ts';
import { steerDefense } from './coverage.ts';
import { decide } from './decide.ts';
import { advancePhase } from './flow.ts';
import { endLooseBall } from './loose-ball.ts';
import type { ChanceModel } from './model.ts';
import { endPass, releasePass } from './pass.ts';
import { remember, seenBy } from './perceive.ts';
import { fireCalls, startScript } from './script.ts';
import { endShot, releaseShot } from './shoot.ts';
import { ballMode, type ChanceState, historySteps, stepSeconds, stride } from './state.ts';
import { strip } from './strip.ts';
import { steerUnit } from './unit-tasks.ts';

/**
 * Move a chance on by one step of `stepSeconds`: first what the ball does, then who decides what, then the bodies.
 * The ball's events carry their own exact times; they are acted on at the first step that is not before them.
 */
export function stepChance(model: ChanceModel, state: ChanceState): void {
  state.step++;
  state.time = state.step * stepSeconds;
  playBall(model, state);
  if (state.end !== null) return;
  runClocks(model, state);
  if (state.end !== null) return;
  directUnit(model, state);
  steerUnit(model, state);
  steerDefense(model, state);
  steerKeeper(model, state);
  moveBodies(model, state);
  carryBall(state);
  state.holder_byStep[state.step & (historySteps - 1)] = state.ball.holder;
  remember(state);
}

function playBall(model: ChanceModel, state: ChanceState): void {
  const { ball } = state;
  switch (ball.mode) {
    case ballMode.windUp:
      if (state.time >= ball.endAt) releasePass(model, state);
      return;
    case ballMode.pass:
      if (state.time >= ball.endAt) endPass(model, state);
      return;
    case ballMode.shotWindUp:
      if (state.time >= ball.endAt) releaseShot(model, state);
      return;
    case ballMode.shot:
      if (state.time >= ball.endAt) endShot(model, state);
      return;
    case ballMode.loose:
      if (state.time >= ball.endAt) endLooseBall(model, state);
      return;
    default:
      return;
  }
}

function directUnit(model: ChanceModel, state: ChanceState): void {
  if (state.lastTenDue) {
    state.lastTenDue = false;
    startScript(state);
  }
  advancePhase(model, state);
  fireCalls(state);
  decide(model, state);
  strip(model, state);
}

function steerKeeper(model: ChanceModel, state: ChanceState): void {
  const { bodies } = state;
  const keeper = model.keeper;
  const seen = seenBy(model, state, keeper);
  const { ball } = state;
  // He follows the ball, not the men: where it was his reaction ago. With a stick's length the holder stands for it.
  const holder = state.holder_byStep[(state.step - model.reactionSteps_byAgent[keeper]) & (historySteps - 1)];
  const { point } = model.scratch;
  point[0] = holder >= 0 ? seen[stride * holder] : ball.x;
  point[1] = holder >= 0 ? seen[stride * holder + 1] : ball.y;
  turnToKeeperPlace(point);
  bodies.target[2 * keeper] = point[0];
  bodies.target[2 * keeper + 1] = point[1];
  bodies.arrive[keeper] = 1;
  bodies.effort[keeper] = 1;
}

function moveBodies(model: ChanceModel, state: ChanceState): void {
  const { bodies } = state;
  const { motion } = bodies;
  stepAll(model.movers, motion, bodies);
  resolveContacts(motion, 0, model.keeper, bodies.planted);
  for (let who = 0; who < 6; who++) keepOutOfCrease(motion, who);
}

const { creaseRadius } = usualField;

/** No attacker may be in the crease: it is a wall to him. */
function keepOutOfCrease(motion: Float64Array, who: number): void {
  const at = stride * who;
  const x = motion[at];
  const y = motion[at + 1];
  const square = x * x + y * y;
  if (square >= creaseRadius * creaseRadius || square === 0) return;
  const distance = Math.sqrt(square);
  const scale = creaseRadius / distance;
  motion[at] = x * scale;
  motion[at + 1] = y * scale;
  // Only what of his speed points inward is lost.
  const inward = (motion[at + 2] * x + motion[at + 3] * y) / square;
  if (inward >= 0) return;
  motion[at + 2] -= inward * x;
  motion[at + 3] -= inward * y;
}

/** Height of a ball in the stick and of a flat pass, and what a lob adds at the top of its flight. Yards. */
const stickHeight = 1.4;
const lobHeight = 2.1;

/** Keep the ball's place true: with its holder, or along its flight. */
function carryBall(state: ChanceState): void {
  const { ball, bodies } = state;
  ball.height = ball.mode === ballMode.loose ? 0 : stickHeight;
  if (ball.mode === ballMode.pass || ball.mode === ballMode.shot) {
    const whole = ball.arriveAt - ball.startAt;
    const share = whole > 0 ? Math.min(1, (state.time - ball.startAt) / whole) : 1;
    ball.x = ball.fromX + (ball.toX - ball.fromX) * share;
    ball.y = ball.fromY + (ball.toY - ball.fromY) * share;
    if (ball.lob && ball.mode === ballMode.pass) ball.height += 4 * lobHeight * share * (1 - share);
  } else if (ball.holder >= 0) {
    ball.x = bodies.motion[stride * ball.holder];
    ball.y = bodies.motion[stride * ball.holder + 1];
  }
}

import { drawCatch, heldTouchOdds } from '../ball/catch.ts';
import { speedAfter } from '../ball/flight.ts';
import { laneInto } from '../ball/lane.ts';
import { drawPlacementInto } from '../ball/pass-placement.ts';
import { drawTouchInto } from '../ball/touch.ts';
import { block, standardNormal, unit as unitOf } from '../random/draws.ts';
import { alertDefense } from './coverage.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import { dropBall } from './loose-ball.ts';
import { meetPassInto } from './meet-pass.ts';
import type { ChanceModel } from './model.ts';
import { thrownPassOdds } from './pass-odds.ts';
import { catchBall, loseBall } from './possession.ts';
import { fireTriggers, passStyles } from './script.ts';
import { ballMode, type ChanceState, onCatch, passFate, stride, task } from './state.ts';
import { windUpShare } from './timing.ts';
import { nearestDefender } from './unit-tasks.ts';
import { telegraph } from './weigh.ts';

/** Why a pass was thrown, as it is stored; `passReasons` is what people read. */
export const passReason = { script: 0, read: 1, open: 2, safe: 3 } as const;
const passReasons = ['script', 'read', 'open', 'safe'] as const;

/** A hurried thrower scatters this much more with a man on his hands. */
const hurryWidening = 0.6;
/** A thrower on the run scatters this much more. */
const runWidening = 0.35;

/** Start the wind-up of a pass that has just been weighed; it leaves the stick after the passer's release time. */
export function windUpPass(model: ChanceModel, state: ChanceState, to: number, style: number, why: number): void {
  const { ball, unit } = state;
  const from = ball.holder;
  ball.mode = ballMode.windUp;
  ball.from = from;
  ball.to = to;
  ball.style = style;
  ball.why = why;
  const { options } = model.scratch;
  ball.believed = options.completion_byMate[to];
  ball.lob = options.lob_byMate[to] === 1;
  ball.endAt = state.time + model.athletes[from].passRelease * windUpShare;
  unit.passTo[from] = -1;
}

/** The ball leaves the stick: its whole fate is drawn here. */
export function releasePass(model: ChanceModel, state: ChanceState): void {
  const { ball, bodies, unit } = state;
  const passer = ball.from;
  const receiver = ball.to;
  ball.mode = ballMode.pass;
  ball.holder = -1;
  ball.passer = passer;
  ball.startAt = state.time;
  ball.fromX = bodies.motion[stride * passer];
  ball.fromY = bodies.motion[stride * passer + 1];
  state.counts.passes++;
  if (ball.why === passReason.script || ball.why === passReason.read) state.counts.playPasses++;
  block(
    model.draws,
    state.trial,
    passer,
    drawKind.passPlacement,
    drawAddress(model, state, drawKind.passPlacement, passer),
  );
  placeTarget(model, state, standardNormal(model.draws.words[0]), standardNormal(model.draws.words[1]));
  drawFate(model, state);
  if (state.recorder !== null) ball.completion = thrownPassOdds(model, state);
  // A carry ends with the ball: where it was to lead nobody comes.
  if (unit.task[passer] === task.carry) unit.task[passer] = task.stay;
  // The passer goes back to his place; the receiver's will be where he catches it, until he has passed it on.
  unit.station[2 * passer] = unit.post[2 * passer];
  unit.station[2 * passer + 1] = unit.post[2 * passer + 1];
  unit.onCatch[receiver] = unit.task[receiver] === task.path ? onCatch.endRun : onCatch.stand;
  unit.task[receiver] = task.receive;
  bodies.planted[receiver] = 0;
  state.recorder?.event({
    kind: 'pass',
    time: state.time,
    from: passer,
    to: receiver,
    style: passStyles[ball.style],
    lob: ball.lob,
    completion: ball.completion,
    believed: ball.believed,
    why: passReasons[ball.why],
  });
  alertDefense(state);
  unit.lastProgress = state.time;
  fireTriggers(state, 'pass', passer, receiver);
}

/** Lead the receiver and scatter the throw. */
function placeTarget(model: ChanceModel, state: ChanceState, across: number, along: number): void {
  const { ball, bodies } = state;
  const { motion } = bodies;
  const passer = model.athletes[ball.from];
  const at = stride * ball.to;
  const dx = motion[at] - ball.fromX;
  const dy = motion[at + 1] - ball.fromY;
  const { point, ahead } = model.scratch;
  ahead.seconds = Math.sqrt(dx * dx + dy * dy) / passer.passSpeed;
  meetPassInto(point, model, state, ball.to, motion);
  const x = point[0];
  const y = point[1];
  const wayX = x - ball.fromX;
  const wayY = y - ball.fromY;
  const distance = Math.sqrt(wayX * wayX + wayY * wayY);
  const { placement } = model.scratch;
  drawPlacementInto(placement, distance, passer.passScatter, 1, widening(model, state), across * model.sense, along);
  const ux = distance > 0 ? wayX / distance : 0;
  const uy = distance > 0 ? wayY / distance : 1;
  // Across is positive to the right of the way; (uy, -ux) points there.
  ball.toX = x + placement.along * ux + placement.across * uy;
  ball.toY = y + placement.along * uy - placement.across * ux;
}

function widening(model: ChanceModel, state: ChanceState): number {
  const { ball, bodies } = state;
  const at = stride * ball.from;
  const gap = nearestDefender(model, bodies.motion, ball.fromX, ball.fromY);
  const hurried = gap < model.parameters.pressDistance ? hurryWidening : 0;
  const vx = bodies.motion[at + 2];
  const vy = bodies.motion[at + 3];
  const running = vx * vx + vy * vy > 9 ? runWidening : 0;
  return 1 + hurried + running;
}

function drawFate(model: ChanceModel, state: ChanceState): void {
  const { ball } = state;
  const { lane, touch } = model.scratch;
  const passer = model.athletes[ball.from];
  const end = model.agents;
  laneInto(
    lane,
    ball.fromX,
    ball.fromY,
    ball.toX,
    ball.toY,
    passer.passSpeed,
    ball.lob,
    state.bodies.motion,
    model.laneMovers,
    6,
    end,
    telegraph,
    model.laneParameters,
  );
  ball.speedAtEnd = speedAfter(lane.length, lane.speed);
  ball.arriveAt = state.time + lane.time;
  ball.endAt = ball.arriveAt;
  block(
    model.draws,
    state.trial,
    ball.from,
    drawKind.passFate,
    drawAddress(model, state, drawKind.passFate, ball.from),
  );
  const touched = unitOf(model.draws.words[0]);
  const caught = unitOf(model.draws.words[1]);
  drawTouchInto(touch, lane, touched);
  ball.fateBy = touch.by;
  ball.fateX = touch.x;
  ball.fateY = touch.y;
  // Whether he holds it or it is caught at the other end is settled by the second number when the time comes.
  ball.luck = caught;
  if (touch.by < 0) return;
  ball.endAt = state.time + touch.time;
  const holds = caught < heldTouchOdds(model.athletes[touch.by].catching, ball.speedAtEnd);
  ball.fate = holds ? passFate.intercepted : passFate.deflected;
}

/** The flight is over: a stick, a catch, a drop, or nobody. */
export function endPass(model: ChanceModel, state: ChanceState): void {
  const { ball } = state;
  ball.x = ball.fateBy >= 0 ? ball.fateX : ball.toX;
  ball.y = ball.fateBy >= 0 ? ball.fateY : ball.toY;
  if (ball.fateBy >= 0) {
    touchPass(model, state);
    return;
  }
  const receiver = ball.to;
  const at = stride * receiver;
  const dx = state.bodies.motion[at] - ball.toX;
  const dy = state.bodies.motion[at + 1] - ball.toY;
  const error = Math.sqrt(dx * dx + dy * dy);
  const traffic = nearestDefender(model, state.bodies.motion, ball.toX, ball.toY);
  const result = drawCatch(model.athletes[receiver].catching, ball.speedAtEnd, error, traffic, ball.luck);
  if (result === 'caught') {
    catchBall(model, state, receiver);
    return;
  }
  if (result === 'past') {
    state.recorder?.event({ kind: 'badPass', time: state.time });
    dropBall(model, state, ball.toX, ball.toY, 'badPass');
    return;
  }
  state.recorder?.event({ kind: 'dropped', time: state.time, who: receiver });
  dropBall(model, state, ball.toX, ball.toY, 'dropped');
}

function touchPass(model: ChanceModel, state: ChanceState): void {
  const { ball } = state;
  // The keeper is nobody's defender.
  const by = ball.fateBy === model.keeper ? -1 : ball.fateBy - 6;
  if (ball.fate === passFate.intercepted) {
    state.recorder?.event({ kind: 'intercepted', time: state.time, by });
    ball.holder = ball.fateBy;
    loseBall(model, state, 'intercepted');
    return;
  }
  state.recorder?.event({ kind: 'deflected', time: state.time, by });
  dropBall(model, state, ball.x, ball.y, 'deflected');
}

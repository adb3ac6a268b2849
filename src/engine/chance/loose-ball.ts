import { drawGroundBall, groundBallOddsInto } from '../ball/ground-ball.ts';
import { defaultShotEdges } from '../ball/shot.ts';
import { arrivalTime } from '../people/reach.ts';
import { uniform } from '../random/draws.ts';
import { alertDefense } from './coverage.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import type { ChanceModel } from './model.ts';
import { loseBall, takeBall } from './possession.ts';
import { ballMode, type ChanceState, phase, stride, task } from './state.ts';
import type { TurnoverKind } from './trace.ts';
import { standHere } from './unit-tasks.ts';

/** Picking a ball up off the ground takes this long. Seconds. */
const scoopSeconds = 0.3;

/** The ball is on the ground at (x, y): who wins it is drawn from when each man can be there. `how` names the loss if it is one. */
export function dropBall(model: ChanceModel, state: ChanceState, x: number, y: number, how: TurnoverKind): void {
  const { ball } = state;
  if (Math.abs(x) > defaultShotEdges.sideLine || y < defaultShotEdges.endLine) {
    loseBall(model, state, 'outOfBounds');
    return;
  }
  ball.mode = ballMode.loose;
  ball.x = x;
  ball.y = y;
  ball.height = 0;
  ball.holder = -1;
  ball.lossKind = how;
  drawWinner(model, state);
  sendChasers(state);
  alertDefense(state);
}

function drawWinner(model: ChanceModel, state: ChanceState): void {
  const { ball, bodies } = state;
  const { arrival, odds } = model.scratch;
  for (let agent = 0; agent < model.agents; agent++) {
    arrival[agent] = bodies.present[agent] === 0 ? Number.POSITIVE_INFINITY : timeToBall(model, state, agent);
  }
  groundBallOddsInto(odds, arrival, 0, model.agents);
  const address = drawAddress(model, state, drawKind.looseBall, 0);
  ball.winner = drawGroundBall(
    odds,
    0,
    model.agents,
    uniform(model.draws, state.trial, 0, drawKind.looseBall, address),
  );
  ball.endAt = state.time + arrival[ball.winner] + scoopSeconds;
}

/** When his stick can be on the ball. */
function timeToBall(model: ChanceModel, state: ChanceState, agent: number): number {
  const { ball, bodies } = state;
  const at = stride * agent;
  const dx = ball.x - bodies.motion[at];
  const dy = ball.y - bodies.motion[at + 1];
  const distance = Math.sqrt(dx * dx + dy * dy);
  const reaction = model.reaction_byAgent[agent];
  if (distance <= scoopReach) return reaction;
  return reaction + timeOfRun(model, state, agent);
}

function timeOfRun(model: ChanceModel, state: ChanceState, agent: number): number {
  const { ball, bodies } = state;
  const { motion } = bodies;
  const at = stride * agent;
  const { topSpeed, drag } = model.movers;
  return arrivalTime(
    topSpeed[agent],
    drag[agent],
    motion[at],
    motion[at + 1],
    motion[at + 2],
    motion[at + 3],
    ball.x,
    ball.y,
    scoopReach,
  );
}

/** A ball on the ground is scooped from this far. Yards. */
const scoopReach = 1;

/** The drawn winner goes for it, and nobody waits for a pass any more. */
function sendChasers(state: ChanceState): void {
  const { ball, unit, bodies } = state;
  for (let who = 0; who < 6; who++) if (unit.task[who] === task.receive) unit.task[who] = task.stay;
  if (ball.winner >= 6) return;
  unit.task[ball.winner] = task.chase;
  bodies.planted[ball.winner] = 0;
}

/** Somebody has picked the loose ball up. */
export function endLooseBall(model: ChanceModel, state: ChanceState): void {
  const { ball, unit } = state;
  const won = ball.winner < 6;
  const by = won ? ball.winner : ball.winner - 6;
  state.recorder?.event({ kind: 'groundBall', time: state.time, won: won ? 'offense' : 'defense', who: by });
  if (!won) {
    ball.holder = ball.winner;
    loseBall(model, state, ball.lossKind);
    return;
  }
  takeBall(model, state, ball.winner);
  standHere(state, ball.winner);
  // A scramble breaks every script: the unit plays what comes open and then sets up again.
  unit.phase = phase.free;
  unit.phaseSince = state.time;
  unit.lastProgress = state.time;
}

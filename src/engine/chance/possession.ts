import { recallBackUps } from './back-up.ts';
import { alertDefense } from './coverage.ts';
import type { ChanceModel } from './model.ts';
import { fireTriggers } from './script.ts';
import { ballMode, type ChanceState, onCatch, stride, task } from './state.ts';
import { windUpShare } from './timing.ts';
import type { TurnoverKind } from './trace.ts';
import { standHere } from './unit-tasks.ts';

/** Fewer than this many attackers between the ball and midfield let the other side run a fast break. */
export const fastBreakBelow = 2;

/** An attacker has the ball in his stick. */
export function catchBall(model: ChanceModel, state: ChanceState, who: number): void {
  const { ball, unit } = state;
  state.counts.passesCaught++;
  takeBall(model, state, who);
  ball.assistedBy = ball.passer;
  const next = unit.onCatch[who];
  if (unit.task[who] === task.receive) standHere(state, who);
  if (next === onCatch.carry) unit.task[who] = task.carry;
  state.recorder?.event({ kind: 'catch', time: state.time, who });
  unit.passSince[who] = state.time;
  fireTriggers(state, 'catch', who, -1);
  // The ball met him on his run: what was to begin at the run's end begins here.
  if (next === onCatch.endRun) fireTriggers(state, 'arrival', who, -1);
}

/** Give the ball to an attacker, however he came by it. */
export function takeBall(model: ChanceModel, state: ChanceState, who: number): void {
  const { ball, unit } = state;
  ball.mode = ballMode.held;
  ball.holder = who;
  // Should he lose it, the defense goes on playing him as the ball until somebody has it.
  ball.from = who;
  ball.heldSince = state.time;
  ball.readyAt = state.time + model.athletes[who].passRelease * (1 - windUpShare);
  ball.nextDecision = ball.readyAt;
  ball.ranIn = false;
  ball.assistedBy = -1;
  unit.drift[2 * who] = 0;
  unit.drift[2 * who + 1] = 0;
  state.bodies.planted[who] = 0;
  recallBackUps(state);
  alertDefense(state);
}

/** The chance is lost: count how, and who stands between the ball and midfield. */
export function loseBall(model: ChanceModel, state: ChanceState, how: TurnoverKind): void {
  const { counts, ball, bodies } = state;
  ball.mode = ballMode.dead;
  if (!afterShot.has(how)) counts.turnovers++;
  counts.turnover = how;
  counts.back = 0;
  for (let who = 0; who < 6; who++) {
    const y = bodies.motion[stride * who + 1];
    if (y > ball.y + backMargin) counts.back++;
  }
  state.end = model.flagDown ? 'flagOver' : 'turnover';
  state.recorder?.event({ kind: 'turnover', time: state.time, how, back: counts.back });
}

/** Losses that follow a shot: the trade does not call them turnovers. */
const afterShot: ReadonlySet<TurnoverKind> = new Set(['saved', 'blocked', 'wide', 'rebound']);

/** A man counts as back when he is at least this far nearer to midfield than the ball. Yards. */
const backMargin = 1;

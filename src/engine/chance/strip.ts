import { uniform } from '../random/draws.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import { dropBall } from './loose-ball.ts';
import type { ChanceModel } from './model.ts';
import { ballMode, type ChanceState, stride } from './state.ts';
import { nearestDefenderIndex } from './unit-tasks.ts';

/** Time between two tries of a defender who is on the carrier's hands. Seconds. */
const stripEvery = 0.5;

/** A defender on the carrier's hands may check the ball loose. */
export function strip(model: ChanceModel, state: ChanceState): void {
  const { ball, bodies } = state;
  if (ball.mode !== ballMode.held || state.time < ball.nextStrip) return;
  ball.nextStrip = state.time + stripEvery;
  const defender = nearestDefenderIndex(model, bodies.motion, ball.x, ball.y);
  const dx = bodies.motion[stride * defender] - ball.x;
  const dy = bodies.motion[stride * defender + 1] - ball.y;
  const near = model.parameters.stripDistance;
  if (dx * dx + dy * dy > near * near) return;
  const address = drawAddress(model, state, drawKind.strip, ball.holder);
  const luck = uniform(model.draws, state.trial, ball.holder, drawKind.strip, address);
  if (luck >= model.parameters.stripRate * stripEvery) return;
  state.recorder?.event({ kind: 'stripped', time: state.time, by: defender - 6 });
  dropBall(model, state, ball.x, ball.y, 'stripped');
}

import { catchOdds, defaultCatchParameters } from '../ball/catch.ts';
import { phiAt } from '../people/reach.ts';
import type { ChanceModel } from './model.ts';
import { type ChanceState, stride } from './state.ts';
import { gapAt } from './weigh.ts';

/**
 * Odds that the pass that has just been thrown gets past every stick and is caught, 0 to 1, as one who sees all of it at its release
 * can tell them: where it really goes, how near to that place the receiver can run while it flies, and who can be there by then.
 *
 * For telling a trace: nothing that is played asks for it. The pass's lane must stand in `model.scratch.lane`.
 */
export function thrownPassOdds(model: ChanceModel, state: ChanceState): number {
  const { ball, bodies } = state;
  const { lane } = model.scratch;
  const flight = ball.arriveAt - ball.startAt;
  const traffic = gapAt(model, bodies.motion, ball.toX, ball.toY, flight, defaultCatchParameters.trafficDistance);
  const { catching } = model.athletes[ball.to];
  return lane.completion * catchOdds(catching, ball.speedAtEnd, missesBy(model, state, flight), traffic);
}

/** How far from the ball the receiver still is when it comes, running to it as fast as he can. Yards; 0 when he gets there. */
function missesBy(model: ChanceModel, { ball, bodies }: ChanceState, flight: number): number {
  const { motion } = bodies;
  const at = stride * ball.to;
  const carried = phiAt(model.phi, ball.to, flight);
  const awayX = ball.toX - motion[at] - motion[at + 2] * carried;
  const awayY = ball.toY - motion[at + 1] - motion[at + 3] * carried;
  const run = model.movers.topSpeed[ball.to] * (flight - carried);
  return Math.max(0, Math.sqrt(awayX * awayX + awayY * awayY) - run);
}

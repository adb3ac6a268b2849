import { phiAt } from '../people/reach.ts';
import { meetStep, stepShare } from './goalward-step.ts';
import type { ChanceModel } from './model.ts';
import { ballGoesRound, type ChanceState, stride } from './state.ts';
import { nearestDefender } from './unit-tasks.ts';

/** A man slower than this, or nearer to where he is going, is thrown to where he stands. Yards a second, yards. */
const standing = 1;
const there = 0.5;
/** A man whose defender is as near as this keeps his distance: he steps down only into the room beyond it. Yards. */
const marked = 3;

/**
 * Where a mate can take a ball that flies for the seconds in `scratch.ahead`, from the picture `motion`: x and y written to `out`.
 *
 * One rule for the passer who judges a pass and for the ball that he then throws. A man who stands steps down to it. A man on his way is
 * led along it by the drag model, for the unit knows where its runners go, and never past the place where he is going to stop or turn.
 */
export function meetPassInto(
  out: Float64Array,
  model: ChanceModel,
  state: ChanceState,
  mate: number,
  motion: Float64Array,
): void {
  const flight = model.scratch.ahead.seconds;
  const { target, effort } = state.bodies;
  const x = motion[stride * mate];
  const y = motion[stride * mate + 1];
  const vx = motion[stride * mate + 2];
  const vy = motion[stride * mate + 3];
  const wayX = target[2 * mate] - x;
  const wayY = target[2 * mate + 1] - y;
  const way = wayX * wayX + wayY * wayY;
  if (vx * vx + vy * vy < standing * standing || way < there * there) {
    // While the ball only goes round nobody leaves his place to come nearer to a shot.
    const room = ballGoesRound(state.unit) ? 0 : nearestDefender(model, motion, x, y) - marked;
    const share = room > 0 ? stepShare(x, y, Math.min(room, meetStep(flight))) : 1;
    out[0] = x * share;
    out[1] = y * share;
    return;
  }
  const phi = phiAt(model.phi, mate, flight);
  const aimX = wayX - vx * phi;
  const aimY = wayY - vy * phi;
  const aim = Math.sqrt(aimX * aimX + aimY * aimY);
  const push = aim > 0 ? (effort[mate] * model.movers.topSpeed[mate] * (flight - phi)) / aim : 0;
  const goneX = vx * phi + aimX * push;
  const goneY = vy * phi + aimY * push;
  const passed = goneX * wayX + goneY * wayY >= way;
  out[0] = x + (passed ? wayX : goneX);
  out[1] = y + (passed ? wayY : goneY);
}

import { usualField } from '../field/usual-field.ts';
import type { ChanceModel } from './model.ts';
import { type ChanceState, stride, task } from './state.ts';
import { stationAt } from './unit-tasks.ts';

/** Where a shot that misses goes out. Yards. */
const endLine = usualField.endLine;
/** Nobody backs up farther out than this: the ball flies past him all the same. Yards. */
const widestBackUp = 12;
/** Men of one side of the field stand this far to it from the line of the shot. Yards. */
const ownSide = 3;
/** A man whose home is this near to the middle has no side. Yards. */
const middle = 2;

/**
 * A shot is on its way: whoever backs it up runs to the end line where it would go out. The ball belongs to the side whose man is
 * nearest when it does (see `missWide`).
 */
export function sendBackUps(model: ChanceModel, state: ChanceState, shooter: number): void {
  const { motion } = state.bodies;
  const { safety, homes } = model.program;
  const x = motion[stride * shooter];
  const y = motion[stride * shooter + 1];
  const beyond = y > 0 ? (x * endLine) / y : 0;
  const out = Math.max(-widestBackUp, Math.min(widestBackUp, beyond));
  for (let who = 0; who < 6; who++) {
    if (who === shooter || safety[who] !== 'backUp') continue;
    const home = homes[2 * who];
    const side = home > middle ? ownSide : home < -middle ? -ownSide : 0;
    stationAt(state, who, out + side, endLine + 1);
    state.unit.task[who] = task.backUp;
    state.bodies.planted[who] = 0;
  }
}

/** The unit has the ball again and it never went out: those who ran to back it up go back to their places. */
export function recallBackUps({ unit }: ChanceState): void {
  for (let who = 0; who < 6; who++) {
    if (unit.task[who] !== task.backUp) continue;
    unit.task[who] = task.stay;
    unit.station[2 * who] = unit.post[2 * who];
    unit.station[2 * who + 1] = unit.post[2 * who + 1];
  }
}

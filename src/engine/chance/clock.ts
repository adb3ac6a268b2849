import type { ChanceModel } from './model.ts';
import { loseBall } from './possession.ts';
import { ballMode, type ChanceState, stride } from './state.ts';
import { aim } from './unit-tasks.ts';

/** The released man is in the play when he is this near to his place in the hole. Yards. */
const inTheHole = 3;
/** Where he runs to: the middle of the hole in front of the goal. Yards. */
const holeY = 6;
/** The last part of a penalty, in which a play may change. Seconds. */
export const lastTenSeconds = 10;

/** Watch the clocks: the last ten seconds, the shot clock, the penalty's end and the released man's run. */
export function runClocks(model: ChanceModel, state: ChanceState): void {
  const left = state.penaltyEnds - state.time;
  if (left <= lastTenSeconds) switchToLastTen(model, state);
  if (state.time >= state.shotClockEnds && state.ball.mode !== ballMode.shot) {
    loseBall(model, state, 'shotClock');
    return;
  }
  if (state.time >= state.clearFailsAt) {
    loseBall(model, state, 'failedClear');
    return;
  }
  if (left <= 0) bringBack(model, state);
}

function switchToLastTen(model: ChanceModel, state: ChanceState): void {
  const { lastTen } = model.program;
  if (lastTen === null || state.unit.script === lastTen) return;
  state.unit.script = lastTen;
  state.lastTenDue = true;
}

/** The penalty is over: he runs from the table to his place, and until he is there the side is still a man down. */
function bringBack(model: ChanceModel, state: ChanceState): void {
  const agent = model.released;
  const { bodies } = state;
  if (agent < 0) {
    state.end = 'penaltyOver';
    return;
  }
  if (bodies.present[agent] === 0) {
    bodies.present[agent] = 1;
    state.recorder?.event({ kind: 'released', time: state.time });
  }
  aim(state, agent, 0, holeY, 1, 1);
  const x = bodies.motion[stride * agent];
  const y = bodies.motion[stride * agent + 1] - holeY;
  const there = x * x + y * y < inTheHole * inTheHole;
  // A ball in the air or a shot on its way is seen out: the horn does not call it back.
  const settled = state.ball.mode === ballMode.held || state.ball.mode === ballMode.windUp;
  if (there && settled) state.end = 'penaltyOver';
}

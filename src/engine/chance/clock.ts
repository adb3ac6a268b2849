import { type ChanceModel, hole } from './model.ts';
import { loseBall } from './possession.ts';
import { ballMode, type ChanceState, phase, stride } from './state.ts';
import { aim } from './unit-tasks.ts';

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

/** The play changes at once, whoever has the ball; while the set is not up yet it changes as soon as it is. */
function switchToLastTen(model: ChanceModel, state: ChanceState): void {
  const { lastTen } = model.program;
  if (state.lastTen || lastTen === null) return;
  state.lastTen = true;
  state.unit.script = lastTen;
  state.lastTenDue = state.unit.phase !== phase.settingUp;
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
  aim(state, agent, hole.x, hole.y, 1, 1);
  const x = bodies.motion[stride * agent] - hole.x;
  const y = bodies.motion[stride * agent + 1] - hole.y;
  const there = x * x + y * y < hole.radius * hole.radius;
  // A ball in the air or a shot on its way is seen out: the horn does not call it back.
  const settled = state.ball.mode === ballMode.held || state.ball.mode === ballMode.windUp;
  if (there && settled) state.end = 'penaltyOver';
}

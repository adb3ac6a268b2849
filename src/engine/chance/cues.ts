import type { ChanceModel } from './model.ts';
import type { Options } from './options.ts';
import type { CompiledCue } from './program.ts';
import { type ChanceState, stride } from './state.ts';
import { nearestDefender, nearestDefenderIndex } from './unit-tasks.ts';

/** Time and room: nobody can hurry the shot more than this before it is gone. */
const freeRush = 0.5;
/** A man is open to the eye with this much room, and with a lane at least this good: a share of an easy pass's odds. */
const openRoom = 2.5;
const openLane = 0.75;
/** A defender has left his man when he is this far from him and moving to the ball faster than this. Yards, yd/s. */
const leftRoom = 2.5;
const leavingSpeed = 1;

/** Whether a cue holds in what the carrier sees. */
export function cueHolds(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  seen: Float64Array,
  cue: CompiledCue,
  options: Options,
): boolean {
  switch (cue.kind) {
    case 'iAmFree':
      return (
        options.shotOdds > 0 &&
        options.shotRush <= freeRush &&
        roomOf(model, seen, carrier) >= model.parameters.freeDistance
      );
    case 'iAmPressed':
      return roomOf(model, seen, carrier) < model.parameters.pressDistance;
    case 'open':
      return (
        roomOf(model, seen, cue.who) >= openRoom && options.completion_byMate[cue.who] >= openLane * model.passNorm
      );
    case 'left':
      return wasLeft(model, state, seen, cue.who);
  }
}

function roomOf(model: ChanceModel, seen: Float64Array, who: number): number {
  return nearestDefender(model, seen, seen[stride * who], seen[stride * who + 1]);
}

/** The nearest defender to him is out of reach and on his way to the ball. */
function wasLeft(model: ChanceModel, state: ChanceState, seen: Float64Array, who: number): boolean {
  const x = seen[stride * who];
  const y = seen[stride * who + 1];
  const defender = nearestDefenderIndex(model, seen, x, y);
  const at = stride * defender;
  const awayX = seen[at] - x;
  const awayY = seen[at + 1] - y;
  if (awayX * awayX + awayY * awayY < leftRoom * leftRoom) return false;
  const toBallX = state.ball.x - seen[at];
  const toBallY = state.ball.y - seen[at + 1];
  const distance = Math.sqrt(toBallX * toBallX + toBallY * toBallY);
  if (distance < 1e-6) return true;
  return (seen[at + 2] * toBallX + seen[at + 3] * toBallY) / distance > leavingSpeed;
}

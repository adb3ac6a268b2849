import type { ChanceModel } from '../chance/model.ts';
import { seenBy } from '../chance/perceive.ts';
import { laneGap, manSees, speedToBall } from '../chance/runner-cues.ts';
import { ballMode, type ChanceState, stride } from '../chance/state.ts';
import { nearestDefender } from '../chance/unit-tasks.ts';

/** Numbers of one look of a man who waits to run. */
export const runNumberCount = 7;
/** More room than this is as good as any. Yards. */
const roomEnough = 6;

/**
 * What a look comes to for a man who waits to run: 1; room where his run ends, in the lane to there, about him (yards, at most 6); how
 * fast his man comes nearer to the ball (yd/s); how far round his man has him (cosine, see `manSees`); 1 when the ball is in a stick.
 */
export function runNumbers(model: ChanceModel, state: ChanceState, who: number): Float64Array {
  const seen = seenBy(model, state, who);
  const path = state.unit.path[who];
  const room = (x: number, y: number): number => Math.min(roomEnough, nearestDefender(model, seen, x, y));
  const mine = room(seen[stride * who], seen[stride * who + 1]);
  return Float64Array.of(
    1,
    path === null ? mine : room(path[path.length - 2], path[path.length - 1]),
    Math.min(roomEnough, laneGap(model, state, who)),
    mine,
    speedToBall(model, state, who, seen),
    manSees(model, state, who, seen),
    state.ball.mode === ballMode.held ? 1 : 0,
  );
}

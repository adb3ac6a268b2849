import type { ChanceModel } from '../chance/model.ts';
import { stride } from '../chance/state.ts';
import { nearestDefender } from '../chance/unit-tasks.ts';

/** Numbers of one look: five of his own, then three of each mate. */
const ownCount = 5;
const mateCount = 3;
export const lookNumberCount = ownCount + mateCount * 5;
/** More room than this is as good as any. Yards. */
const roomEnough = 6;

/**
 * What a look comes to in the carrier's judgement, of what was weighed last: 1; the odds and the hurry of his own shot, the worth of running
 * in, his room (yards, at most 6); then for each mate the odds of the pass, those of the shot off it, and their product.
 */
export function lookNumbers(model: ChanceModel, carrier: number, seen: Float64Array): Float64Array {
  const { options } = model.scratch;
  const numbers = new Float64Array(lookNumberCount);
  const room = nearestDefender(model, seen, seen[stride * carrier], seen[stride * carrier + 1]);
  numbers.set([1, options.shotOdds, options.shotRush, options.stepInValue, Math.min(roomEnough, room)]);
  let at = ownCount;
  for (let mate = 0; mate < 6; mate++) {
    if (mate === carrier) continue;
    const completion = options.completion_byMate[mate];
    const odds = options.shotOdds_byMate[mate];
    numbers.set([completion, odds, completion * odds], at);
    at += mateCount;
  }
  return numbers;
}

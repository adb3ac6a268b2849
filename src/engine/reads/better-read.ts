import type { Point } from '../geometry/point.ts';
import type { Play, Read } from '../offense/play.ts';
import { cardOfList } from './card-of-list.ts';
import { carrierActions } from './carrier-actions.ts';
import type { ReadGrade } from './grade-reads.ts';
import { orderOfAction } from './order-of-action.ts';
import { goOn } from './rule-list.ts';

/** The better read of a grade as a read of the play, while the same beat is the newest; `null` when there is none. `at` is where he stands, yards. */
export function betterRead(play: Play, carrier: number, { read, better }: ReadGrade, at: Point): Read | null {
  if (better === null) return null;
  const rule = { ...better.condition, action: better.action };
  const [written] = cardOfList(play, carrier, { rules: [rule], lastResort: goOn }, at).reads;
  const { during } = play.reads[read];
  return during === undefined ? written : { ...written, during };
}

/** What the best there is at a read's cues would be as an order to him; `null` when it is to leave it to the play, or too few chances told. */
export function bestThere(play: Play, carrier: number, { there }: ReadGrade, at: Point): Read['then'] | null {
  if (there === null || there.bestAction === goOn) return null;
  return orderOfAction(play, carrier, carrierActions(play, carrier)[there.bestAction], at);
}

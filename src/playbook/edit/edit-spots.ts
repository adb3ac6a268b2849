import type { Point, SpotId } from '../../engine/index.ts';
import { pointOf, sharedPlace } from '../play/read-set.ts';
import type { PlayEntry } from '../schema.ts';
import { editedPlay, type PlayEdit, refused } from './edit-result.ts';
import { placeRefusal, placeText, roundPlace } from './place-rules.ts';
import { type PlayGround, playSpots, setSpots } from './play-ground.ts';

/** Move a spot's home for this play, yards. Back at its home in the set the play says nothing of it any more. */
export function moveSpot(play: PlayEntry, ground: PlayGround, spot: SpotId, to: Point): PlayEdit {
  const home = setSpots(play, ground).find((each) => each.id === spot);
  if (home === undefined) return refused(`The play has no spot ${spot}.`);
  const at = roundPlace(to, ground.field);
  const refusal = placeRefusal(at, ground.field);
  if (refusal !== undefined) return refusal;
  const other = playSpots(play, ground).find(
    (each) => each.id !== spot && Math.hypot(each.at.x - at.x, each.at.y - at.y) < sharedPlace,
  );
  if (other !== undefined) return refused(`${other.id} stands there already, at ${placeText(other.at)}.`);
  const isHome = at.x === home.at.x && at.y === home.at.y;
  return editedPlay(isHome ? withoutMove(play, spot) : withMove(play, spot, at));
}

/** Put a spot back where the set has it. */
export function resetSpot(play: PlayEntry, spot: SpotId): PlayEdit {
  return editedPlay(withoutMove(play, spot));
}

function withMove(play: PlayEntry, spot: SpotId, at: Point): PlayEntry {
  const before = play.spots?.[spot];
  if (before !== undefined) {
    const was = pointOf(before);
    if (was.x === at.x && was.y === at.y) return play;
  }
  return { ...play, spots: { ...play.spots, [spot]: [at.x, at.y] } };
}

function withoutMove(play: PlayEntry, spot: SpotId): PlayEntry {
  if (play.spots === undefined || !Object.hasOwn(play.spots, spot)) return play;
  const { [spot]: _, ...others } = play.spots;
  if (Object.keys(others).length > 0) return { ...play, spots: others };
  const { spots: __, ...rest } = play;
  return rest;
}

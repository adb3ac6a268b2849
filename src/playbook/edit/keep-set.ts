import { findSet, insideHand, type Spot, sets } from '../../engine/index.ts';
import { limits } from '../limits.ts';
import type { OwnSet, Playbook } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';
import { freshId } from './fresh-id.ts';
import { groundOf, playSpots } from './play-ground.ts';

/**
 * Keep where a play's men stand as a set of the team's own, with what each spot asks of its man. The play then starts from it.
 * `id` of the edit is the set's.
 */
export function keepAsSet(playbook: Playbook, playId: string, name: string): PlaybookEdit {
  const play = playbook.plays.find((each) => each.id === playId);
  if (play === undefined) return refused(`The playbook has no play "${playId}" any more.`);
  const named = name.trim();
  if (named === '' || named.length > limits.name)
    return refused(`A set needs a name of at most ${limits.name} letters.`);
  const own = playbook.sets ?? [];
  if (own.length >= limits.sets) return refused(`A playbook holds at most ${limits.sets} sets. Take one out first.`);
  const spots = playSpots(play, groundOf(playbook));
  if (spots.length === 0) return refused(`No set is called "${play.set}".`);
  const id = freshSetId(
    named,
    own.map((set) => set.id),
  );
  const set: OwnSet = { id, name: named, spots: Object.fromEntries(spots.map((spot) => [spot.id, entryOf(spot)])) };
  const { spots: _, ...rest } = play;
  const plays = playbook.plays.map((each) => (each === play ? { ...rest, set: id } : each));
  return editedPlaybook({ ...playbook, sets: [...own, set], plays }, [], id);
}

/** A name that means a built-in set to somebody cannot be the id of an own one. */
function freshSetId(name: string, taken: readonly string[]): string {
  const id = freshId(name, [...taken, ...Object.keys(sets)], 'set');
  return findSet(id).kind === 'unknown' ? id : freshId(`own ${name}`, taken, 'set');
}

function entryOf({ at, hand, needs, safety }: Spot): OwnSet['spots'][string] {
  const asked = Object.fromEntries(Object.entries(needs).filter(([, weight]) => weight > 0));
  return {
    at: [at.x, at.y],
    ...(hand !== insideHand(at.x) && { hand }),
    ...(Object.keys(asked).length > 0 && { needs: asked }),
    ...(safety !== 'none' && { safety }),
  };
}

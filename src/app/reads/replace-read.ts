import type { Read } from '../../engine/index.ts';
import {
  changeRead,
  groundOf,
  moveRead,
  type Playbook,
  type PlayEdit,
  type PlayEntry,
  sameValue,
} from '../../playbook/index.ts';
import { playableEdit } from './playable-edit.ts';

/** What one read of a play is to be replaced by. */
export interface ReadChange {
  readonly before: Read;
  readonly after: Read;
}

/**
 * Puts another read in the place of one; before the reads that would keep it from ever being used there, which is told. Refused when the play does not have
 * the one any more, has the other already, cannot hold it, or could not be played with it. `taught` are the reads of `entry` as the engine knows them, in
 * its order.
 */
export function replaceRead(
  entry: PlayEntry,
  standing: Playbook,
  taught: readonly Read[],
  { before, after }: ReadChange,
): PlayEdit {
  const index = taught.findIndex((read) => sameValue(read, before));
  if (index < 0) return goneRead;
  const edit = changeRead(entry, groundOf(standing), 'main', index, after);
  if (edit.kind === 'refused') return edit;
  const { reads = [] } = edit.play;
  const isThere = reads.some((read, at) => at !== index && sameValue(read, reads[index]));
  if (isThere) return { kind: 'refused', reason: 'The play teaches the better one already, in another place.' };
  const inPlace = playableEdit(edit, standing);
  return inPlace.kind === 'edited' ? inPlace : (beforeOthers(edit.play, standing, index) ?? inPlace);
}

/** What is told of a read that somebody has changed or taken out since it was graded. */
export const goneRead: PlayEdit = { kind: 'refused', reason: 'The play does not teach this read any more.' };

/** The read at a place moved up as little as lets the play be played; undefined when no place before its own does. */
function beforeOthers(play: PlayEntry, standing: Playbook, index: number): PlayEdit | undefined {
  for (let to = index - 1; to >= 0; to--) {
    const edit = playableEdit(moveRead(play, 'main', index, to), standing);
    if (edit.kind === 'refused') continue;
    return {
      ...edit,
      also: [`It is read ${to + 1} of the play now, before the one behind which it could never be used.`],
    };
  }
  return undefined;
}

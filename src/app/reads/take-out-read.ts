import type { Read } from '../../engine/index.ts';
import { type Playbook, type PlayEdit, type PlayEntry, removeRead, sameValue } from '../../playbook/index.ts';
import { playableEdit } from './playable-edit.ts';
import { goneRead } from './replace-read.ts';

/**
 * Takes one read out of a play; refused when the play does not have it any more, or could not be played without it, as when only it brings somebody the ball.
 * `taught` are the reads of `entry` as the engine knows them, in its order.
 */
export function takeOutRead(entry: PlayEntry, standing: Playbook, taught: readonly Read[], read: Read): PlayEdit {
  const index = taught.findIndex((each) => sameValue(each, read));
  return index < 0 ? goneRead : playableEdit(removeRead(entry, 'main', index), standing);
}

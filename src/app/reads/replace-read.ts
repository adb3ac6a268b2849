import type { Read } from '../../engine/index.ts';
import { changeRead, type PlayEdit, type PlayEntry, type PlayGround, sameValue } from '../../playbook/index.ts';

/** What one read of a play is to be replaced by. */
export interface ReadChange {
  readonly before: Read;
  readonly after: Read;
}

/**
 * Puts another read in the place of one, in the same place of their order; refused when the play does not have the one any more, has the other already, or
 * cannot hold it. `taught` are the reads of `entry` as the engine knows them, in its order.
 */
export function replaceRead(
  entry: PlayEntry,
  ground: PlayGround,
  taught: readonly Read[],
  { before, after }: ReadChange,
): PlayEdit {
  const index = taught.findIndex((read) => sameValue(read, before));
  if (index < 0) return { kind: 'refused', reason: 'The play does not teach this read any more.' };
  const edit = changeRead(entry, ground, 'main', index, after);
  if (edit.kind === 'refused') return edit;
  const { reads = [] } = edit.play;
  const isThere = reads.some((read, at) => at !== index && sameValue(read, reads[index]));
  return isThere ? { kind: 'refused', reason: 'The play teaches the better one already, in another place.' } : edit;
}

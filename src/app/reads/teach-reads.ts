import type { Read, SpotId } from '../../engine/index.ts';
import {
  addRead,
  groundOf,
  type Playbook,
  type PlayEdit,
  type PlayEntry,
  removeRead,
  sameValue,
} from '../../playbook/index.ts';
import { playableEdit } from './playable-edit.ts';

/** Reads that a play, for every step, is to teach one man and no others. */
export interface TaughtCard {
  readonly carrier: SpotId;
  readonly reads: readonly Read[];
}

/**
 * Puts a card in the place of all that the play's own script teaches its man: from where his first read stood, in the card's order, or after all reads when
 * he has none. Those of other men and of the last ten seconds stay. Refused when a part of it is, and when the play could not be played with it.
 */
export function teachReads(entry: PlayEntry, standing: Playbook, card: TaughtCard): PlayEdit {
  return playableEdit(written(entry, standing, card), standing);
}

/** Whether the play's own script teaches the card's man exactly the card. Places count as the play would write them. */
export function isTaught(entry: PlayEntry, standing: Playbook, card: TaughtCard): boolean {
  const edit = written(entry, standing, card);
  return edit.kind === 'edited' && sameValue(readsOf(edit.play, card.carrier), readsOf(entry, card.carrier));
}

/** What the play's own script teaches a man, as it is written. */
export function readsOf({ reads = [] }: PlayEntry, carrier: SpotId): NonNullable<PlayEntry['reads']> {
  return reads.filter((read) => read.carrier === carrier);
}

function written(entry: PlayEntry, standing: Playbook, { carrier, reads }: TaughtCard): PlayEdit {
  const ground = groundOf(standing);
  const first = (entry.reads ?? []).findIndex((read) => read.carrier === carrier);
  return reads.reduce<PlayEdit>(
    (edit, read, at) =>
      edit.kind === 'refused' ? edit : addRead(edit.play, ground, 'main', read, first < 0 ? undefined : first + at),
    withoutReads(entry, carrier),
  );
}

function withoutReads(entry: PlayEntry, carrier: SpotId): PlayEdit {
  const at = (entry.reads ?? []).findIndex((read) => read.carrier === carrier);
  if (at < 0) return { kind: 'edited', play: entry, also: [] };
  const edit = removeRead(entry, 'main', at);
  return edit.kind === 'refused' ? edit : withoutReads(edit.play, carrier);
}

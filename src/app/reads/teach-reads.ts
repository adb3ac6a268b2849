import type { Read } from '../../engine/index.ts';
import { addRead, type PlayEdit, type PlayEntry, type PlayGround, sameValue } from '../../playbook/index.ts';

/** Those of a card's reads that a play does not have yet, in the card's order. Places count as the play would write them. */
export function untaughtReads(entry: PlayEntry, ground: PlayGround, reads: readonly Read[]): readonly Read[] {
  const { reads: taught = [], ...bare } = entry;
  return reads.filter((read) => {
    const alone = addRead(bare, ground, 'main', read);
    const written = alone.kind === 'edited' ? alone.play.reads?.[0] : undefined;
    return written === undefined || !taught.some((one) => sameValue(one, written));
  });
}

/** Adds reads to a play, after those that it has, in their order and for every step; refused as soon as one is. */
export function teachReads(entry: PlayEntry, ground: PlayGround, reads: readonly Read[]): PlayEdit {
  const begin: PlayEdit = { kind: 'edited', play: entry, also: [] };
  return reads.reduce<PlayEdit>((edit, read) => {
    if (edit.kind === 'refused') return edit;
    const next = addRead(edit.play, ground, 'main', read);
    return next.kind === 'refused' ? next : { ...next, also: [...edit.also, ...next.also] };
  }, begin);
}

/** Most reads on the card of a run that is shown before the coach chose. */
const usualReads = 1;

/** How many reads the card of a run that is shown may have: what the coach chose, never more than there are. `cards` has one for none, one, two ... */
export function shownRunReads(cards: readonly unknown[], chosen: number | undefined): number {
  return Math.min(chosen ?? usualReads, cards.length - 1);
}

import { type Level, mostReadsAt } from '../../engine/index.ts';
import type { ReadsStudy } from '../../worker/index.ts';

/**
 * How many reads the card that is shown may have: what the coach chose, else what is worth holding in mind and can be at the level; never more
 * than there are.
 */
export function shownReads(
  { cards, worthHolding }: Pick<ReadsStudy, 'cards' | 'worthHolding'>,
  chosen: number | undefined,
  level: Level,
): number {
  return Math.min(chosen ?? Math.min(mostReadsAt(level), worthHolding), cards.length - 1);
}

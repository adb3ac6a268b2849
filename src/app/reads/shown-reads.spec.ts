import { describe, expect, it } from 'vitest';
import type { ValuedCard } from '../../engine/index.ts';
import { shownReads } from './shown-reads.ts';

const nothing = { mean: 0, low: 0, high: 0 };
const card: ValuedCard = {
  list: { rules: [], lastResort: -1 },
  learnt: 0,
  overShorter: null,
  examples: [],
  goals: nothing,
  gain: nothing,
};
const study = (worthHolding: number, longest = 4) => ({ worthHolding, cards: new Array(longest + 1).fill(card) });

describe('the card that is shown', () => {
  it.each([
    ['what is worth holding', study(2), undefined, 'highSchool', 2],
    ['none when none is', study(0), undefined, 'highSchool', 0],
    ['no more than can be held at the level', study(4), undefined, '10U', 3],
    ['what was chosen, for all that', study(1), 4, '10U', 4],
    ['no more than there are', study(1, 2), 4, 'highSchool', 2],
  ] as const)('has as many reads as %s', (_, found, chosen, level, reads) => {
    expect(shownReads(found, chosen, level)).toBe(reads);
  });
});

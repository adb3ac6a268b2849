import fc from 'fast-check';
import { expect, test } from 'vitest';
import { risingRanks } from './ranks.ts';

const rank = fc.option(
  fc.oneof(fc.integer({ min: -20, max: 20 }), fc.double({ noNaN: true, noDefaultInfinity: true })),
  {
    nil: undefined,
  },
);

test('ranks rise strictly, and as many as can be stay as they were', () => {
  fc.assert(
    fc.property(fc.array(rank, { maxLength: 9 }), (ranks) => {
      const result = risingRanks(ranks);
      expect(result.length).toBe(ranks.length);
      for (let i = 1; i < result.length; i++) expect(result[i]!).toBeGreaterThan(result[i - 1]!);
      const recounted = result.every((value, index) => value === index);
      if (!recounted)
        expect(result.filter((value, i) => value === ranks[i]).length).toBeGreaterThanOrEqual(longest(ranks));
    }),
  );
});

/** By brute force: the most that rise strictly in their order. */
function longest(ranks: readonly (number | undefined)[]): number {
  let best = 0;
  for (let chosen = 0; chosen < 1 << ranks.length; chosen++) {
    const picked = ranks.filter((_, i) => (chosen >> i) & 1);
    const rises = picked.every((value, i) => value !== undefined && (i === 0 || value > picked[i - 1]!));
    if (rises) best = Math.max(best, picked.length);
  }
  return best;
}

test('a thousand insertions at the same place still find room', () => {
  let list = [0, 1];
  for (let i = 0; i < 1000; i++) list = [...risingRanks([list[0], undefined, ...list.slice(1)])];
  expect(new Set(list).size).toBe(1002);
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { DecisionTable } from './decision-table.ts';
import { goOn, type Rule, type RuleList, weightedMean, worthsUnder } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** Tables of two cues and two actions, small enough to try every list there is. */
const tables = fc
  .array(
    fc.record({
      moments: fc.array(fc.record({ cues: fc.nat(3), worths: fc.tuple(fc.nat(20), fc.nat(20)) }), {
        minLength: 1,
        maxLength: 3,
      }),
      weight: fc.integer({ min: 1, max: 3 }),
      goOn: fc.nat(20),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((chances): DecisionTable => {
    const moments = chances.flatMap((chance) => chance.moments);
    const first = [0];
    for (const chance of chances) first.push(first.at(-1)! + chance.moments.length);
    return {
      actions: 2,
      cues: 2,
      first_byChance: Int32Array.from(first),
      weight_byChance: Float64Array.from(chances, ({ weight }) => weight),
      cues_byMoment: Int32Array.from(moments, ({ cues }) => cues),
      worth_byMomentAction: Float32Array.from(moments.flatMap(({ worths }) => worths.map((each) => each / 20))),
      goOn_byChance: Float32Array.from(chances, (chance) => chance.goOn / 20),
    };
  });

const conditions = [1, 2, 3].flatMap((looksAt) =>
  [0, 1, 2, 3].filter((mustHold) => (mustHold & ~looksAt) === 0).map((mustHold) => ({ looksAt, mustHold })),
);
const rules: readonly Rule[] = conditions.flatMap((condition) => [0, 1].map((action) => ({ ...condition, action })));

function everyList(reads: number): readonly RuleList[] {
  const orders = (count: number): readonly (readonly Rule[])[] =>
    count === 0 ? [[]] : orders(count - 1).flatMap((list) => [list, ...rules.map((rule) => [...list, rule])]);
  return [...orders(reads)].flatMap((list) => [goOn, 0, 1].map((lastResort) => ({ rules: list, lastResort })));
}

const shortLists = everyList(2);

it('finds what trying every list of two reads finds', () => {
  fc.assert(
    fc.property(tables, (table) => {
      const best = Math.max(...shortLists.map((list) => weightedMean(worthsUnder(list, table), table)));
      const found = searchRuleLists(table, { ...defaultSearchLimits, mostReads: 2, leastShare: 0 })[2]!;
      expect(found.worth).toBeCloseTo(best, 6);
    }),
    { numRuns: 60 },
  );
});

it('more reads never return less, and what is said of a list is what it returns', () => {
  fc.assert(
    fc.property(tables, (table) => {
      const found = searchRuleLists(table, { ...defaultSearchLimits, mostReads: 3, lists: 200 });
      found.forEach(({ list, worth }, reads) => {
        expect(list.rules.length).toBeLessThanOrEqual(reads);
        expect(worth).toBeCloseTo(weightedMean(worthsUnder(list, table), table), 9);
        if (reads > 0) expect(worth).toBeGreaterThanOrEqual(found[reads - 1]!.worth);
      });
    }),
    { numRuns: 60 },
  );
});

import { expect, it } from 'vitest';
import { knowTheScheme, type SpannedTable } from './know-the-scheme.ts';
import { worthsUnder } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { tableOfChances } from './table-of-chances.fixture.ts';
import { worthOfInformation } from './worth-of-information.ts';

const limits = { ...defaultSearchLimits, mostReads: 1, leastShare: 0 };
/** Two schemes, three calls: one for each and one that is fair against both. */
const goals_byCallScheme = [
  [0.3, 0.1],
  [0.12, 0.27],
  [0.2, 0.2],
];
const each = 30;

function twoSchemes(weights: readonly [number, number]): SpannedTable {
  const table = tableOfChances(
    1,
    [0, 1].flatMap((scheme) =>
      Array.from({ length: each }, () => ({
        weight: weights[scheme]!,
        goOn: 0,
        looks: [{ cues: 0, worths: goals_byCallScheme.map((goals) => goals[scheme]!) }],
      })),
    ),
  );
  const looks = 2 * each;
  const numbers = {
    count: 1,
    numbers_byMoment: new Float64Array(looks).fill(1),
    rank_byMoment: new Int32Array(looks),
    columns_byAction: goals_byCallScheme.map(() => [0]),
    columnsOfWaiting: [0],
  };
  const spans = [0, 1].map((scheme) => ({ scheme: String(scheme), from: scheme * each, to: (scheme + 1) * each }));
  return { table, numbers, spans };
}

// What no look tells him is worth the expected value of perfect information: worked out by another way in worth-of-information.ts.
it.each([[[1, 1]], [[1, 3]], [[3, 1]]] as const)(
  'is worth what perfect information is, for schemes weighed %o',
  (weights) => {
    const spanned = twoSchemes([...weights]);
    const { without, mostGain } = worthOfInformation({ weight_byScheme: weights, goals_byCallScheme }, [[1, 1]]);
    const forAll = searchRuleLists(spanned.table, limits).map(({ list }) => worthsUnder(list, spanned.table));
    const known = knowTheScheme(spanned, spanned, forAll, limits, 0);
    expect(known.best.goals.mean).toBeCloseTo(without.goals + mostGain, 6);
    known.cards.forEach(({ goals, more }) => {
      expect(goals.mean).toBeCloseTo(without.goals + mostGain, 6);
      expect(more.mean).toBeCloseTo(mostGain, 6);
    });
    expect(known.byScheme.map(({ best }) => best.mean)).toEqual([expect.closeTo(0.3, 6), expect.closeTo(0.27, 6)]);
  },
);

it('is worth nothing where there is one scheme', () => {
  const { table, numbers, spans } = twoSchemes([1, 0]);
  const one = { table, numbers, spans: spans.slice(0, 1) };
  const forAll = searchRuleLists(table, limits).map(({ list }) => worthsUnder(list, table));
  expect(knowTheScheme(one, one, forAll, limits, 0).cards[1]!.more.mean).toBe(0);
});

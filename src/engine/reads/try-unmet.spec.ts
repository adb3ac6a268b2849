import { expect, it } from 'vitest';
import { block, createDraws, unit } from '../random/draws.ts';
import type { DecisionTable } from './decision-table.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { tableOfChances, type WrittenChance } from './table-of-chances.fixture.ts';
import { tryUnmet } from './try-unmet.ts';

const limits = { ...defaultSearchLimits, mostReads: 3, absence: false, leastShare: 0.02 };
const cues = 6;

/** He judges by the cues, one by one. */
function numbersOf(table: DecisionTable) {
  const columns = Array.from({ length: cues + 1 }, (_, at) => at);
  const rows = [...table.cues_byMoment].flatMap((held) => columns.map((at) => (at === cues ? 1 : (held >> at) & 1)));
  return {
    count: cues + 1,
    numbers_byMoment: Float64Array.from(rows),
    rank_byMoment: new Int32Array(table.cues_byMoment.length),
    columns_byAction: [columns, columns],
    columnsOfWaiting: columns,
  };
}

function readsWorthHolding(table: DecisionTable): number {
  return tryUnmet(table, numbersOf(table), limits, 10).worthHolding;
}

/** Chances with cues and worths that are luck alone, but for what `truth` adds. */
function lucky(count: number, truth: (cues: number) => readonly number[]): readonly WrittenChance[] {
  const draws = createDraws(11);
  return Array.from({ length: count }, (_, at) => {
    block(draws, at, 0, 0, 0);
    const held = draws.words[0] & ((1 << cues) - 1);
    const added = truth(held);
    const luck = (word: number): number => (unit(draws.words[word]) < 0.25 ? 1 : 0);
    return { weight: 1, goOn: luck(1), looks: [{ cues: held, worths: [luck(2) + added[0], luck(3) + added[1]] }] };
  });
}

it('is none where everything is luck, though longer cards look better', () => {
  const table = tableOfChances(
    cues,
    lucky(300, () => [0, 0]),
  );
  const worths = searchRuleLists(table, limits).map(({ worth }) => worth);
  expect(worths[3]).toBeGreaterThan(worths[0] + 0.02);
  expect(readsWorthHolding(table)).toBe(0);
});

it('is none though the same luck is met three times, as against several schemes', () => {
  const once = lucky(301, () => [0, 0]);
  const thrice = tableOfChances(cues, [...once, ...once, ...once]);
  expect(readsWorthHolding(thrice)).toBeGreaterThan(0);
  const luck_byChance = Int32Array.from(thrice.goOn_byChance, (_, chance) => chance % once.length);
  expect(readsWorthHolding({ ...thrice, luck_byChance })).toBe(readsWorthHolding(tableOfChances(cues, once)));
  expect(readsWorthHolding({ ...thrice, luck_byChance })).toBe(0);
});

it('is as many as there is something to see', () => {
  // Cue 0 asks for the one action, cue 1 for the other, else the play is best.
  const truth = (held: number): readonly number[] =>
    (held & 1) === 1 ? [0.9, -0.5] : (held & 2) === 2 ? [-0.5, 0.9] : [-0.5, -0.5];
  expect(readsWorthHolding(tableOfChances(cues, lucky(300, truth)))).toBe(2);
});

it('takes the card for the best that is known where a judgement that adds up what is seen cannot say it', () => {
  // The first action is good when just one of two cues holds: no sum of what each is worth says that.
  const apart = (held: number): boolean => (held & 1) !== ((held >> 1) & 1);
  const truth = (held: number): readonly number[] => (apart(held) ? [0.9, -0.5] : [-0.9, -0.5]);
  const table = tableOfChances(cues, lucky(300, truth));
  const { bestCard } = tryUnmet(table, numbersOf(table), { ...limits, absence: true }, 10);
  expect(bestCard).toBeGreaterThanOrEqual(2);
  // Where each cue speaks for itself the judgement does as much.
  const plain = tableOfChances(
    cues,
    lucky(300, (held) => [(held & 1) === 1 ? 0.9 : -0.5, -0.5]),
  );
  expect(tryUnmet(plain, numbersOf(plain), limits, 10).worthHolding).toBe(1);
});

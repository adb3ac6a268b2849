import { describe, expect, it } from 'vitest';
import { learnJudgement, worthsByJudgement } from './best-decisions.ts';
import type { DecisionTable } from './decision-table.ts';
import { goOn, weightedMean, worthsUnder } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { listInWords, tableOfChances } from './table-of-chances.fixture.ts';
import {
  costOfListening,
  type TigerProblem,
  tigerActions,
  tigerBeliefs,
  tigerCues,
  tigerTable,
} from './tiger.fixture.ts';

// Problems of decision under doubt whose answers are known, written as tables with exact odds for weights: nothing here is left to chance.

const limits = { ...defaultSearchLimits, mostReads: 2, leastShare: 0, absence: false };

/** The best card of two reads. */
function searched(table: DecisionTable) {
  return searchRuleLists(table, limits).at(-1)!;
}

/** What the decisions come to that are learnt from the table itself. */
function judged(problem: TigerProblem): number {
  const [table, beliefs] = [tigerTable(problem), tigerBeliefs(problem)];
  return weightedMean(worthsByJudgement(learnJudgement(table, beliefs, 0), table, beliefs), table);
}

// The worths of the table are kept to seven digits, the largest of them near 100.
const digits = 5;

describe('a tiger behind one of two doors, so many steps and then no more', () => {
  // Known since Kaelbling, Littman and Cassandra 1998; these are an exact backward induction over beliefs made for this project.
  const published = [0, -1, -2, 2.72, 2.42125, 3.60915, 5.61882];
  /** What the rest is worth with some steps left; a door that is opened leaves one fewer. */
  const within = (steps: number): TigerProblem => ({
    looks: steps,
    discount: 1,
    after: (step) => published[steps - step - 1]!,
    never: -steps,
  });

  it.each([1, 2, 3, 4, 5, 6])('%d steps are worth what is known, by a judgement of what he believes', (steps) => {
    expect(judged(within(steps))).toBeCloseTo(published[steps]!, digits);
  });

  it.each([
    [3, 2],
    [4, 3],
  ])(
    '%d are worth it by two reads: listen until one side is heard %d times more, then open the other',
    (steps, net) => {
      const { list, worth } = searched(tigerTable(within(steps)));
      expect(worth).toBeCloseTo(published[steps]!, digits);
      const said = listInWords(list, tigerCues, tigerActions);
      expect(said.slice(0, 2).sort()).toEqual([`${net} more left: open right`, `${net} more right: open left`]);
      expect(said[2]).toBe('else: go on');
    },
  );

  it.each([5, 6])('%d are worth less by two reads, which do not know how many steps are left', (steps) => {
    expect(searched(tigerTable(within(steps))).worth).toBeLessThan(published[steps]! - 0.1);
  });
});

describe.each([
  // The first is the figure that solvers of this problem print (19.37); all digits by value iteration over beliefs made for this project.
  { discount: 0.95, published: 19.371368 },
  { discount: 0.75, published: 1.933439 },
])('a tiger without end, each step counting $discount of the one before', ({ discount, published }) => {
  // Four listenings: whoever has opened nothing by then has heard both sides alike if he decides well, and is where he began. For any other
  // way to decide that is too little, as nobody is worse off for what he has heard. So nothing is lost by the table's end.
  const looks = 5;
  const going = (worth: number): TigerProblem => ({
    looks,
    discount,
    after: () => worth,
    never: costOfListening({ discount }, looks - 1) + discount ** (looks - 1) * worth,
  });

  it('is worth what is known when what comes after a door is', () => {
    expect(searched(tigerTable(going(published))).worth).toBeCloseTo(published, digits);
  });

  it('is not worth what is not so', () => {
    for (const wrong of [published - 0.1, published + 0.1]) {
      expect(Math.abs(searched(tigerTable(going(wrong))).worth - wrong)).toBeGreaterThan(0.01);
    }
  });

  it('comes from nothing to what is known, round by round', () => {
    let worth = 0;
    let gap = Number.POSITIVE_INFINITY;
    while (gap > 2e-6) {
      const next = searched(tigerTable(going(worth))).worth;
      // Two listenings at least lie before a door: no round may keep more of a mistake than two steps leave of it.
      expect(Math.abs(next - worth)).toBeLessThanOrEqual(gap * discount ** 2 + 1e-5);
      gap = Math.abs(next - worth);
      worth = next;
    }
    expect(Math.abs(worth - published)).toBeLessThan(1e-4);
  });

  it('is opened when one side is heard twice more, not once and not three times', () => {
    const { list } = searched(tigerTable(going(published)));
    expect(listInWords(list, tigerCues, tigerActions).slice(0, 2).sort()).toEqual([
      '2 more left: open right',
      '2 more right: open left',
    ]);
  });
});

describe('choosing the best of some who come one by one', () => {
  // The odds of getting the best: pass over the first r - 1, then take the first who is the best so far, which gets the best with odds
  // (r - 1) / n * (1 / (r - 1) + ... + 1 / (n - 1)). Gilbert and Mosteller 1966, J Am Stat Assoc 61:35, section 2, table 2 (from memory).
  it.each([
    [3, 2, 1 / 2],
    [4, 2, 11 / 24],
    [5, 3, 13 / 30],
    [6, 3, 77 / 180],
  ])('of %d from number %d on', (count, from, odds) => {
    const { list, worth } = searchRuleLists(secretaries(count), { ...limits, mostReads: 1 })[1]!;
    expect(worth).toBeCloseTo(odds, 6);
    const bits = 1 | (1 << (from - 1));
    expect(list).toEqual({ rules: [{ looksAt: bits, mustHold: bits, action: 0 }], lastResort: goOn });
    expect(Math.max(...worthsUnder(list, secretaries(count)))).toBe(1);
  });
});

/** Every order in which they can come. Cues: the best so far is here; then, at least so many have come: two, three ... */
function secretaries(count: number): DecisionTable {
  const chances = orders(Array.from({ length: count }, (_, rank) => rank)).map((ranks) => ({
    weight: 1,
    goOn: 0,
    looks: ranks.map((rank, at) => {
      const isBestSoFar = ranks.slice(0, at).every((before) => before > rank);
      const come = Array.from({ length: count - 1 }, (_, more) => (at > more ? 2 << more : 0));
      return { cues: come.reduce((bits, bit) => bits | bit, isBestSoFar ? 1 : 0), worths: [rank === 0 ? 1 : 0] };
    }),
  }));
  return tableOfChances(count, chances);
}

function orders(ranks: readonly number[]): readonly (readonly number[])[] {
  if (ranks.length === 0) return [[]];
  return ranks.flatMap((first) => orders(ranks.filter((rank) => rank !== first)).map((rest) => [first, ...rest]));
}

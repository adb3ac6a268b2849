import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DecisionTable } from './decision-table.ts';
import { drawnChances, drawnTables } from './drawn-tables.fixture.ts';
import { actedBy, type RuleList, weightedMean, worthsUnder } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { tableOfChances, type WrittenChance } from './table-of-chances.fixture.ts';

// What may be changed in a table without a better or another list: names, order, scale. Two reads and few cues, so that every list is tried.

const size = { cues: 3, actions: 3, chances: 8, most: 1024 };
const limits = { ...defaultSearchLimits, mostReads: 2, leastShare: 0 };
const runs = { numRuns: 60 };

function best(table: DecisionTable) {
  return searchRuleLists(table, limits)[2]!;
}

/** What comes of a list: at which moment of each chance it acts, and how; -1 when it goes on. */
function deeds(list: RuleList, table: DecisionTable): readonly (readonly number[])[] {
  return Array.from(table.goOn_byChance, (_, chance) => {
    const { rule, moment } = actedBy(list, table, chance);
    return [moment, rule < 0 ? list.lastResort : list.rules[rule]!.action];
  });
}

function holdsFor(law: (table: DecisionTable, chances: readonly WrittenChance[]) => void): void {
  fc.assert(
    fc.property(drawnChances(size), (chances) => law(tableOfChances(size.cues, chances), chances)),
    runs,
  );
}

describe('other names', () => {
  const orders = (count: number) =>
    fc.shuffledSubarray(
      Array.from({ length: count }, (_, at) => at),
      { minLength: count },
    );
  // Worths of twenty bits, so that no two lists are as good as each other by chance.
  const uneven = fc.noBias(drawnChances({ ...size, most: 1 << 20 }));

  it('for cues and actions give the list in those names, worth the same', () => {
    fc.assert(
      fc.property(uneven, orders(size.cues), orders(size.actions), (chances, newCue, newAction) => {
        const renamed = chances.map((chance) => ({
          ...chance,
          looks: chance.looks.map(({ cues, worths }) => ({
            cues: movedBits(cues, newCue),
            worths: worths.map((_, at) => worths[newAction.indexOf(at)]!),
          })),
        }));
        const [table, other] = [chances, renamed].map((each) => tableOfChances(size.cues, each));
        const [found, foundOther] = [best(table!), best(other!)];
        expect(foundOther.worth).toBeCloseTo(found.worth, 9);
        const inNewNames = deeds(found.list, table!).map(([moment, action]) => [moment!, newAction[action!] ?? -1]);
        expect(deeds(foundOther.list, other!)).toEqual(inNewNames);
      }),
      runs,
    );
  });

  it('for "it holds" and "it does not" change nothing', () => {
    fc.assert(
      fc.property(uneven, fc.nat((1 << size.cues) - 1), (chances, turned) => {
        const other = chances.map((chance) => ({
          ...chance,
          looks: chance.looks.map((look) => ({ ...look, cues: look.cues ^ turned })),
        }));
        const [table, otherTable] = [chances, other].map((each) => tableOfChances(size.cues, each));
        expect(deeds(best(otherTable!).list, otherTable!)).toEqual(deeds(best(table!).list, table!));
      }),
      runs,
    );
  });

  it('for the chances, that is another order, leave the worth', () => {
    holdsFor((table, chances) => {
      expect(best(tableOfChances(size.cues, [...chances].reverse())).worth).toBeCloseTo(best(table).worth, 9);
    });
  });
});

function movedBits(bits: number, places: readonly number[]): number {
  return places.reduce((moved, to, from) => moved | (((bits >> from) & 1) << to), 0);
}

describe('another scale', () => {
  it('as much more for everything is that much more, by the same list', () => {
    holdsFor((table, chances) => {
      const more = 3;
      const shifted = chances.map((chance) => ({
        ...chance,
        goOn: chance.goOn + more,
        looks: chance.looks.map((look) => ({ ...look, worths: look.worths.map((worth) => worth + more) })),
      }));
      const [found, foundMore] = [best(table), best(tableOfChances(size.cues, shifted))];
      expect(foundMore.list).toEqual(found.list);
      expect(foundMore.worth).toBeCloseTo(found.worth + more, 9);
    });
  });

  it.each([1 / 64, 4, 1024])('%d times as much for everything is that many times, by the same list', (times) => {
    holdsFor((table) => {
      const found = best(table);
      const foundOther = best({
        ...table,
        worth_byMomentAction: table.worth_byMomentAction.map((worth) => worth * times),
        goOn_byChance: table.goOn_byChance.map((worth) => worth * times),
      });
      expect(foundOther.list).toEqual(found.list);
      expect(foundOther.worth / times).toBeCloseTo(found.worth, 9);
    });
  });

  it.each([2 ** -40, 3, 2 ** 40])('weights count by their ratio alone: %d times', (times) => {
    holdsFor((table) => {
      const weight_byChance = table.weight_byChance.map((weight) => weight * times);
      expect(best({ ...table, weight_byChance })).toEqual(best(table));
    });
  });
});

describe('what adds nothing', () => {
  it('a chance in two halves is the chance', () => {
    holdsFor((table, chances) => {
      const halves = chances.flatMap((chance) => [1, 2].map(() => ({ ...chance, weight: chance.weight / 2 })));
      expect(best(tableOfChances(size.cues, halves))).toEqual(best(table));
    });
  });

  it('a chance without weight is no chance', () => {
    fc.assert(
      fc.property(drawnChances(size), drawnChances(size), (chances, others) => {
        const idle = others.map((chance) => ({ ...chance, weight: 0 }));
        expect(best(tableOfChances(size.cues, [...chances, ...idle])).worth).toBeCloseTo(
          best(tableOfChances(size.cues, chances)).worth,
          9,
        );
      }),
      runs,
    );
  });

  it('an action that is always worse than another is in no list', () => {
    fc.assert(
      fc.property(drawnChances(size), fc.nat(size.actions), fc.nat(size.actions - 1), (chances, place, better) => {
        const withWorse = chances.map((chance) => ({
          ...chance,
          looks: chance.looks.map(({ cues, worths }) => ({
            cues,
            worths: [...worths.slice(0, place), worths[better]! - 1 / 1024, ...worths.slice(place)],
          })),
        }));
        const { list, worth } = best(tableOfChances(size.cues, withWorse));
        expect([...list.rules.map(({ action }) => action), list.lastResort]).not.toContain(place);
        expect(worth).toBe(best(tableOfChances(size.cues, chances)).worth);
      }),
      runs,
    );
  });
});

describe('better never turns out worse', () => {
  it('a list is worth no less than going on, or than the best single action at the first look', () => {
    holdsFor((table) => {
      const anyway = Array.from({ length: table.actions }, (_, lastResort) =>
        weightedMean(worthsUnder({ rules: [], lastResort }, table), table),
      );
      const [none] = searchRuleLists(table, limits);
      expect(none!.list.rules).toEqual([]);
      expect(none!.worth).toBeCloseTo(Math.max(weightedMean(table.goOn_byChance, table), ...anyway), 12);
      expect(best(table).worth).toBeGreaterThanOrEqual(none!.worth);
    });
  });

  it('neither when the play itself, nor when an action at a look, is worth more', () => {
    fc.assert(
      fc.property(drawnTables(size), fc.nat(), fc.integer({ min: 1, max: 512 }), (table, where, more) => {
        const raised = (values: Float32Array): Float32Array =>
          values.map((value, at) => (at === where % values.length ? value + more / 1024 : value));
        const before = best(table).worth;
        const easier = { ...table, goOn_byChance: raised(table.goOn_byChance) };
        const stronger = { ...table, worth_byMomentAction: raised(table.worth_byMomentAction) };
        for (const each of [easier, stronger]) expect(best(each).worth).toBeGreaterThanOrEqual(before - 1e-9);
      }),
      runs,
    );
  });

  it('nor when there is one more cue to see, or one more thing to do', () => {
    fc.assert(
      fc.property(drawnTables({ ...size, chances: 6 }), (table) => {
        const fewerCues = { ...table, cues: 2, cues_byMoment: table.cues_byMoment.map((cues) => cues & 0b11) };
        const worths = table.worth_byMomentAction.filter((_, at) => at % table.actions > 0);
        const fewerActions = { ...table, actions: table.actions - 1, worth_byMomentAction: worths };
        for (const fewer of [fewerCues, fewerActions]) {
          expect(best(table).worth).toBeGreaterThanOrEqual(best(fewer).worth - 1e-9);
        }
      }),
      runs,
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LookNumbers, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import { chancesOf, type DecisionTable } from './decision-table.ts';
import { drawnChances } from './drawn-tables.fixture.ts';
import { weightedMean } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { tableOfChances, type WrittenChance } from './table-of-chances.fixture.ts';

const size = { cues: 2, actions: 3, chances: 6, most: 1024 };
const runs = { numRuns: 60 };
/** Next to nothing, in chances: enough to say that a case which never comes at a look is worth 0 there. */
const faint = 1e-12;

/** Looks of which each is one of so many cases, and the case is all that is known: a number for each, 1 for the one that it is. */
function casesAsNumbers(
  chances: readonly WrittenChance[],
  cases: number,
  caseOf: (moment: number) => number,
): LookNumbers {
  const ranks = chances.flatMap(({ looks }) => looks.map((_, rank) => rank));
  const columns = Array.from({ length: cases }, (_, at) => at);
  return {
    count: cases,
    numbers_byMoment: Float64Array.from(
      ranks.flatMap((_, moment) => columns.map((column) => (caseOf(moment) === column ? 1 : 0))),
    ),
    rank_byMoment: Int32Array.from(ranks),
    columns_byAction: Array.from({ length: size.actions }, () => columns),
    columnsOfWaiting: columns,
  };
}

function decided(table: DecisionTable, looks: LookNumbers): Float64Array {
  return worthsByJudgement(learnJudgement(table, looks, faint), table, looks);
}

function momentsOf(table: DecisionTable): number {
  return table.cues_byMoment.length;
}

describe('who knows everything', () => {
  it('does in each chance the best that there is to do in it', () => {
    fc.assert(
      fc.property(drawnChances(size), (chances) => {
        const table = tableOfChances(size.cues, chances);
        const found = decided(
          table,
          casesAsNumbers(chances, momentsOf(table), (moment) => moment),
        );
        chances.forEach(({ looks, goOn }, chance) => {
          expect(found[chance]).toBeCloseTo(Math.max(goOn, ...looks.flatMap(({ worths }) => worths)), 9);
        });
      }),
      runs,
    );
  });

  it('is never beaten by a list of reads', () => {
    fc.assert(
      fc.property(drawnChances(size), (chances) => {
        const table = tableOfChances(size.cues, chances);
        const knowing = decided(
          table,
          casesAsNumbers(chances, momentsOf(table), (moment) => moment),
        );
        const [list] = searchRuleLists(table, { ...defaultSearchLimits, mostReads: 2, leastShare: 0 }).slice(-1);
        expect(list!.worth).toBeLessThanOrEqual(weightedMean(knowing, table) + 1e-9);
      }),
      runs,
    );
  });
});

describe('who knows the cues of a single look', () => {
  it('does what is best on average where these cues hold, by weight', () => {
    fc.assert(
      fc.property(drawnChances(size), (several) => {
        const chances = several.map((chance) => ({ ...chance, looks: chance.looks.slice(0, 1) }));
        const table = tableOfChances(size.cues, chances);
        const cases = 1 << size.cues;
        const found = decided(
          table,
          casesAsNumbers(chances, cases, (moment) => table.cues_byMoment[moment]!),
        );
        // The oracle adds up each case by itself.
        const sums = Array.from({ length: cases }, () => new Float64Array(size.actions + 1));
        for (const { weight, goOn, looks } of chances) {
          [...looks[0]!.worths, goOn].forEach((worth, action) => {
            sums[looks[0]!.cues]![action]! += weight * worth;
          });
        }
        const all = chances.reduce((sum, { weight }) => sum + weight, 0);
        const best = sums.reduce((sum, each) => sum + Math.max(...each), 0) / all;
        expect(weightedMean(found, table)).toBeCloseTo(best, 9);
      }),
      runs,
    );
  });
});

describe('what a chance counts for', () => {
  /** Fewer numbers than cases, so that the fit has to weigh one against another. */
  const roughly = (chances: readonly WrittenChance[]): LookNumbers => {
    const looks = chances.flatMap((chance) => chance.looks);
    return {
      ...casesAsNumbers(chances, 2, () => 0),
      numbers_byMoment: Float64Array.from(looks.flatMap(({ cues }) => [1, cues])),
    };
  };

  it('is as many chances of weight 1', () => {
    fc.assert(
      fc.property(drawnChances(size), fc.constantFrom(1, 10), (chances, ridge) => {
        const repeated = chances.flatMap((chance) =>
          Array.from({ length: chance.weight }, () => ({ ...chance, weight: 1 })),
        );
        const [weighed, counted] = [chances, repeated].map((each) => {
          const table = tableOfChances(size.cues, each);
          // The ridge is in chances of the mean weight, so that it is less of a few heavy ones.
          const share = (ridge * chancesOf(table)) / repeated.length;
          return learnJudgement(table, roughly(each), each === chances ? share : ridge);
        });
        weighed!.byAction.forEach((coefficients, action) => {
          coefficients.forEach((each, at) => {
            expect(each).toBeCloseTo(counted!.byAction[action]![at]!, 9);
          });
        });
      }),
      runs,
    );
  });

  it('is nothing without weight, and then nothing is learnt of it', () => {
    fc.assert(
      fc.property(drawnChances(size), drawnChances(size), (chances, others) => {
        const both = [...chances, ...others.map((chance) => ({ ...chance, weight: 0 }))];
        const learnt = [chances, both].map((each) =>
          learnJudgement(tableOfChances(size.cues, each), roughly(each), 10).byAction.map((each) => [...each]),
        );
        learnt[0]!.flat().forEach((each, at) => {
          expect(learnt[1]!.flat()[at]).toBeCloseTo(each, 9);
        });
      }),
      runs,
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LookNumbers, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import type { DecisionTable } from './decision-table.ts';
import { goOn, weightedMean } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { tableOfChances } from './table-of-chances.fixture.ts';

// Something is in one of two states and turns to the other now and then. Who acts sees how it was some steps ago, and has to match how it is.
// A delay that is known leaves a problem of its own, on what was seen last (Katsikopoulos and Engelbrecht 2003, IEEE Trans. Automatic
// Control 48:568): here the best is to match it, right (1 + (1 - 2 turn) ** delay) / 2 of the time when turning is as likely either way.

/** How likely it is to turn, from each state, and what matching each is worth; the other action brings nothing. */
interface Turning {
  readonly turn_byState: readonly number[];
  readonly worth_byState: readonly number[];
}

const even: Turning = { turn_byState: [0.1, 0.1], worth_byState: [1, 1] };

/** Every way that it can go from what is seen to what is, by its odds; each state as likely at first. Cue 0: it was in state 1. */
function delayed({ turn_byState, worth_byState }: Turning, delay: number): DecisionTable {
  let ways = [0, 1].map((state) => ({ seen: state, state, weight: 0.5 }));
  for (let step = 0; step < delay; step++) {
    ways = ways.flatMap(({ seen, state, weight }) => [
      { seen, state, weight: weight * (1 - turn_byState[state]!) },
      { seen, state: 1 - state, weight: weight * turn_byState[state]! },
    ]);
  }
  return tableOfChances(
    1,
    ways.map(({ seen, state, weight }) => ({
      weight,
      looks: [{ cues: seen, worths: [0, 1].map((action) => (action === state ? worth_byState[state]! : 0)) }],
      goOn: 0,
    })),
  );
}

const limits = { ...defaultSearchLimits, mostReads: 2, leastShare: 0 };

function searched(table: DecisionTable) {
  return searchRuleLists(table, limits).at(-1)!;
}

/** By what is learnt of the odds of each action, one number saying what was seen. */
function judged(table: DecisionTable): number {
  const looks: LookNumbers = {
    count: 2,
    numbers_byMoment: Float64Array.from([...table.cues_byMoment].flatMap((cues) => [1, cues])),
    rank_byMoment: new Int32Array(table.cues_byMoment.length),
    columns_byAction: [
      [0, 1],
      [0, 1],
    ],
    columnsOfWaiting: [0],
  };
  return weightedMean(worthsByJudgement(learnJudgement(table, looks, 0), table, looks), table);
}

describe('what was seen some steps ago', () => {
  const right_byDelay = [1, 0.9, 0.82, 0.756, 0.7048, 0.66384];

  it.each(right_byDelay.map((right, delay) => [delay, right]))(
    '%d steps ago is right %d of the time',
    (delay, right) => {
      const { list, worth } = searched(delayed(even, delay!));
      expect(worth).toBeCloseTo(right!, 9);
      expect(worth).toBeCloseTo((1 + 0.8 ** delay!) / 2, 9);
      expect(list.rules).toHaveLength(1);
      expect(list.lastResort).not.toBe(goOn);
      expect(judged(delayed(even, delay!))).toBeCloseTo(right!, 9);
    },
  );

  it('is worth less with every step', () => {
    const worths = right_byDelay.map((_, delay) => searched(delayed(even, delay)).worth);
    worths.slice(1).forEach((worth, at) => {
      expect(worth).toBeLessThan(worths[at]! - 0.01);
    });
  });

  it('is worth no more than what is seen now, and at least a guess, however it turns', () => {
    const odds = fc.integer({ min: 0, max: 10 }).map((tenths) => tenths / 10);
    const worth = fc.integer({ min: 1, max: 8 });
    fc.assert(
      fc.property(fc.tuple(odds, odds), fc.tuple(worth, worth), fc.nat(6), (turn, worths, delay) => {
        const turning = { turn_byState: turn, worth_byState: worths };
        const table = delayed(turning, delay);
        const blind = { ...table, cues: 0, cues_byMoment: table.cues_byMoment.map(() => 0) };
        const now = { ...table, cues_byMoment: stateNow(table) };
        for (const by of [searched, (each: DecisionTable) => ({ worth: judged(each) })]) {
          expect(by(table).worth).toBeLessThanOrEqual(by(now).worth + 1e-9);
          expect(by(table).worth).toBeGreaterThanOrEqual(searched(blind).worth - 1e-9);
        }
        // Who sees it now is always right.
        const mean = table.weight_byChance.reduce((sum, weight, at) => sum + weight * worths[stateNow(table)[at]!]!, 0);
        expect(searched(now).worth).toBeCloseTo(mean, 9);
      }),
      { numRuns: 60 },
    );
  });
});

/** The state of each chance: that which it brings something to match. */
function stateNow({ worth_byMomentAction }: DecisionTable): Int32Array {
  return Int32Array.from({ length: worth_byMomentAction.length / 2 }, (_, at) =>
    worth_byMomentAction[2 * at + 1]! > 0 ? 1 : 0,
  );
}

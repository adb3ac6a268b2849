import { describe, expect, it } from 'vitest';
import { type LookNumbers, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import type { DecisionTable } from './decision-table.ts';
import { weightedMean } from './rule-list.ts';

describe('when to stop: the worked example of Longstaff and Schwartz 2001', () => {
  // A put struck at 1.10 over three periods of 6 %, eight paths of the price: table and values of the paper's section 1, from memory.
  const prices = [
    [1.09, 1.08, 1.34],
    [1.16, 1.26, 1.54],
    [1.22, 1.07, 1.03],
    [0.93, 0.97, 0.92],
    [1.11, 1.56, 1.52],
    [0.76, 0.77, 0.9],
    [0.92, 0.84, 1.01],
    [0.88, 1.22, 1.34],
  ];
  const strike = 1.1;
  const worthAt = (price: number, period: number): number => (strike - price) * Math.exp(-0.06 * (period + 1));
  // He looks only when the option is worth something; a path on which it never is has one look, at its end, at which acting loses.
  const paths = prices.map((path) => {
    const looks = path.flatMap((price, period) => (price < strike ? [{ price, period }] : []));
    return looks.length > 0 ? looks : [{ price: path[2]!, period: 2 }];
  });
  const moments = paths.flat();
  const first = [0];
  for (const path of paths) first.push(first.at(-1)! + path.length);
  const table: DecisionTable = {
    actions: 1,
    cues: 0,
    first_byChance: Int32Array.from(first),
    weight_byChance: new Float64Array(8).fill(1),
    cues_byMoment: new Int32Array(moments.length),
    worth_byMomentAction: Float32Array.from(moments, ({ price, period }) => worthAt(price, period)),
    goOn_byChance: new Float32Array(8),
  };
  const looks: LookNumbers = {
    count: 3,
    // What the option pays must be told exactly by the numbers, so they are those of the paper's basis, discounted.
    numbers_byMoment: Float64Array.from(
      moments.flatMap(({ price, period }) =>
        [1, price, price * price].map((each) => each * Math.exp(-0.06 * (period + 1))),
      ),
    ),
    rank_byMoment: Int32Array.from(moments, ({ period }) => period),
    columns_byAction: [[0, 1]],
    columnsOfWaiting: [0, 1, 2],
  };

  it('comes to the published worth', () => {
    const worths = worthsByJudgement(learnJudgement(table, looks, 0), table, looks);
    expect(weightedMean(worths, table)).toBeCloseTo(0.1144, 4);
  });

  it('is worth more than waiting for the end, which comes to .0564', () => {
    const atEnd = prices.map((path) => Math.max(0, worthAt(path[2]!, 2)));
    expect(weightedMean(atEnd, table)).toBeCloseTo(0.0564, 4);
  });
});

describe('a judgement', () => {
  it('waits where waiting is worth more, and acts where it has learnt nothing of waiting', () => {
    const table: DecisionTable = {
      actions: 1,
      cues: 0,
      first_byChance: Int32Array.from([0, 1, 2]),
      weight_byChance: Float64Array.from([1, 1]),
      cues_byMoment: new Int32Array(2),
      worth_byMomentAction: Float32Array.from([0.2, 0.4]),
      goOn_byChance: Float32Array.from([0.3, 0.3]),
    };
    const looks: LookNumbers = {
      count: 2,
      numbers_byMoment: Float64Array.from([1, 0, 1, 1]),
      rank_byMoment: Int32Array.from([0, 0]),
      columns_byAction: [[0, 1]],
      columnsOfWaiting: [0],
    };
    const judgement = learnJudgement(table, looks, 0);
    expect([...worthsByJudgement(judgement, table, looks)].map((worth) => worth.toFixed(2))).toEqual(['0.30', '0.40']);
    const blind = { ...judgement, ofWaiting: [] };
    expect([...worthsByJudgement(blind, table, looks)].map((worth) => worth.toFixed(2))).toEqual(['0.20', '0.40']);
  });
});

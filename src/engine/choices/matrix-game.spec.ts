import { describe, expect, it } from 'vitest';
import { solveMatrixGame, worstCase } from './matrix-game.ts';

interface Known {
  readonly what: string;
  readonly source: string;
  readonly payoffs: readonly (readonly number[])[];
  readonly value: number;
  /** The only best mix of rows, where there is only one. */
  readonly rows?: readonly number[];
}

const known: readonly Known[] = [
  {
    what: 'rock, paper, scissors',
    source: 'by symmetry',
    payoffs: [
      [0, -1, 1],
      [1, 0, -1],
      [-1, 1, 0],
    ],
    value: 0,
    rows: [1 / 3, 1 / 3, 1 / 3],
  },
  {
    what: 'the same with a rock that wins two',
    source: 'by symmetry the value, by hand the mix',
    payoffs: [
      [0, -1, 2],
      [1, 0, -1],
      [-2, 1, 0],
    ],
    value: 0,
    rows: [0.25, 0.5, 0.25],
  },
  {
    what: 'odd or even',
    source: 'Ferguson, Game Theory, II.1.1: value 1/12, mix 7/12 and 5/12',
    payoffs: [
      [-2, 3],
      [3, -4],
    ],
    value: 1 / 12,
    rows: [7 / 12, 5 / 12],
  },
  {
    what: 'Colonel Blotto with 4 regiments against 3 on two posts',
    source: 'Ferguson, Game Theory, II.4.5: value 14/9, mix 4/9, 4/9, 0, 0, 1/9',
    payoffs: [
      [4, 0, 2, 1],
      [0, 4, 1, 2],
      [1, -1, 3, 0],
      [-1, 1, 0, 3],
      [-2, -2, 2, 2],
    ],
    value: 14 / 9,
    rows: [4 / 9, 4 / 9, 0, 0, 1 / 9],
  },
  {
    what: 'a diagonal game',
    source: 'Ferguson, Game Theory, II.3.3: value of diag(d) is 1 over the sum of 1/d',
    payoffs: [
      [1, 0, 0],
      [0, 2, 0],
      [0, 0, 3],
    ],
    value: 6 / 11,
    rows: [6 / 11, 3 / 11, 2 / 11],
  },
  {
    what: 'a saddle',
    source: 'by hand: the larger of the rows’ least, the less of the columns’ most',
    payoffs: [
      [3, 1],
      [4, 2],
    ],
    value: 2,
    rows: [0, 1],
  },
  {
    what: 'two rows against four columns',
    source: 'by hand, graphically: 17/7 at 5/7',
    payoffs: [
      [2, 3, 1, 5],
      [4, 1, 6, 0],
    ],
    value: 17 / 7,
    rows: [5 / 7, 2 / 7],
  },
  {
    what: 'penalty kicks',
    source: 'Palacios-Huerta 2003, Rev. Econ. Stud. 70:395: kickers to their natural side 38.5 %, value 79.6 %',
    payoffs: [
      [58.3, 94.97],
      [92.91, 69.92],
    ],
    value: 79.573,
    rows: [0.38535, 0.61465],
  },
  {
    what: 'Morra with two fingers',
    source: 'Ferguson, Game Theory, II.4.7 (value 0; a whole edge of mixes does as well)',
    payoffs: [
      [0, 2, -3, 0],
      [-2, 0, 0, 3],
      [3, 0, 0, -4],
      [0, -3, 4, 0],
    ],
    value: 0,
  },
  {
    what: 'three calls against four schemes',
    source: 'reckoned with a linear programming library when the numbers were collected',
    payoffs: [
      [0.42, 0.18, 0.31, 0.25],
      [0.2, 0.38, 0.22, 0.3],
      [0.28, 0.26, 0.35, 0.19],
    ],
    value: 0.270867,
    rows: [0.53179, 0.44509, 0.02312],
  },
];

describe.each(known)('$what', ({ payoffs, value, source }) => {
  const game = solveMatrixGame(payoffs);
  it(`has its known value (${source})`, () => {
    expect(game.value).toBeCloseTo(value, 4);
  });
  it('is played so that no answer of the other side brings less', () => {
    expect(worstCase(payoffs, game.share_byRow)).toBeCloseTo(game.value, 9);
  });
});

it.each(known.filter(({ rows }) => rows !== undefined))('$what has its known mix', ({ payoffs, rows }) => {
  const { share_byRow } = solveMatrixGame(payoffs);
  for (const [at, share] of share_byRow.entries()) expect(share).toBeCloseTo(rows![at]!, 4);
});

/** Three cards, a bet of one: 27 plans of the first player against 64 of the second. Kuhn 1950, Contributions to the Theory of Games I:97: value -1/18. */
function kuhnPoker(): readonly (readonly number[])[] {
  // First: pass and fold, pass and call, or bet, for each card. Second: what he does after a pass and after a bet.
  const firsts = plans(3, 3);
  const seconds = plans(4, 3);
  const deals = [0, 1, 2].flatMap((mine) => [0, 1, 2].filter((his) => his !== mine).map((his) => [mine, his] as const));
  return firsts.map((first) =>
    seconds.map((second) =>
      deals.reduce((sum, [mine, his]) => sum + payoff(first[mine]!, second[his]!, mine > his) / deals.length, 0),
    ),
  );
}

function payoff(first: number, second: number, wins: boolean): number {
  const sign = wins ? 1 : -1;
  const [betsAfterPass, callsBet] = [second >= 2, second % 2 === 1];
  if (first === 2) return callsBet ? 2 * sign : 1;
  if (!betsAfterPass) return sign;
  return first === 1 ? 2 * sign : -1;
}

function plans(choices: number, cards: number): readonly (readonly number[])[] {
  return Array.from({ length: choices ** cards }, (_, plan) =>
    Array.from({ length: cards }, (__, card) => Math.floor(plan / choices ** card) % choices),
  );
}

it("solves Kuhn's poker, 27 plans against 64, where most corners are degenerate", () => {
  const payoffs = kuhnPoker();
  expect([payoffs.length, payoffs[0]!.length]).toEqual([27, 64]);
  const game = solveMatrixGame(payoffs);
  expect(game.value).toBeCloseTo(-1 / 18, 9);
  expect(worstCase(payoffs, game.share_byRow)).toBeCloseTo(-1 / 18, 9);
});

it('refuses what is no game', () => {
  expect(() => solveMatrixGame([])).toThrow(RangeError);
  expect(() => solveMatrixGame([[]])).toThrow(RangeError);
  expect(() => solveMatrixGame([[1, 2], [3]])).toThrow(RangeError);
  expect(() => solveMatrixGame([[Number.NaN]])).toThrow(RangeError);
});

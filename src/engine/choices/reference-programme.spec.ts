import fc from 'fast-check';
import { expect, it } from 'vitest';
import { solve } from 'yalps';
import { solveMatrixGame } from './matrix-game.ts';

const payoff = fc.integer({ min: -100, max: 100 }).map((hundredths) => hundredths / 100);
const game = fc
  .tuple(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 2, max: 9 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(payoff, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  );

/** The value by a linear programming library: the most v with v at most what the mix brings against each column. It wants numbers of 0 and more, so all is raised by 2. */
function reference(payoffs: readonly (readonly number[])[]): number {
  const columns = payoffs[0]!.map((_, column) => column);
  const { result } = solve({
    direction: 'maximize',
    objective: 'value',
    constraints: {
      shares: { equal: 1 },
      ...Object.fromEntries(columns.map((column) => [`column${column}`, { max: 0 }])),
    },
    variables: {
      v: { value: 1, ...Object.fromEntries(columns.map((column) => [`column${column}`, 1])) },
      ...Object.fromEntries(
        payoffs.map((row, at) => [
          `row${at}`,
          { shares: 1, ...Object.fromEntries(row.map((one, column) => [`column${column}`, -(one + 2)])) },
        ]),
      ),
    },
  });
  return result - 2;
}

it('has the value that a linear programming library finds', () => {
  fc.assert(
    fc.property(game, (payoffs) => {
      expect(solveMatrixGame(payoffs).value).toBeCloseTo(reference(payoffs), 6);
    }),
    { seed: 11, numRuns: 200 },
  );
});

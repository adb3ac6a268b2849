import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveMatrixGame, worstCase } from './matrix-game.ts';

/** To four places, which is finer than any estimate of goals: with differences far under that, rounding would decide. */
const payoff = fc.integer({ min: -50_000, max: 50_000 }).map((tenThousandths) => tenThousandths / 1e4);

const game = fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 12 })).chain(([rows, columns]) =>
  fc.array(fc.array(payoff, { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);

describe('the best mixes of a game', () => {
  it('are each the best against the other: neither side can do better (the proof of von Neumann)', () => {
    fc.assert(
      fc.property(game, (payoffs) => {
        const { value, share_byRow, share_byColumn } = solveMatrixGame(payoffs);
        const best = Math.max(
          ...payoffs.map((row) => row.reduce((sum, one, at) => sum + one * share_byColumn[at]!, 0)),
        );
        expect(worstCase(payoffs, share_byRow)).toBeCloseTo(value, 6);
        expect(best).toBeCloseTo(value, 6);
        for (const shares of [share_byRow, share_byColumn]) {
          expect(shares.every((share) => share >= 0)).toBe(true);
          expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  it('are worth as much more as every payoff is raised by', () => {
    fc.assert(
      fc.property(game, fc.double({ min: -3, max: 3, noNaN: true }), (payoffs, more) => {
        const raised = payoffs.map((row) => row.map((one) => one + more));
        expect(solveMatrixGame(raised).value).toBeCloseTo(solveMatrixGame(payoffs).value + more, 6);
      }),
    );
  });

  it('are worth no less with one more row', () => {
    fc.assert(
      fc.property(game, (payoffs) => {
        const fewer = payoffs.slice(1);
        if (fewer.length === 0) return;
        expect(solveMatrixGame(payoffs).value).toBeGreaterThanOrEqual(solveMatrixGame(fewer).value - 1e-6);
      }),
    );
  });
});

import fc from 'fast-check';
import { munkres } from 'munkres';
import { describe, expect, test } from 'vitest';
import { bestAssignment } from './best-assignment.ts';

/** A table of worths with at least as many columns as rows, small enough to try every way. */
const table = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 2 })).chain(([rows, extra]) =>
  fc.record({
    rows: fc.constant(rows),
    columns: fc.constant(rows + extra),
    worth: fc.array(
      fc.integer({ min: -40, max: 40 }).map((eighths) => eighths / 8),
      { minLength: rows * (rows + extra), maxLength: rows * (rows + extra) },
    ),
  }),
);

describe('bestAssignment', () => {
  test('gives each row a column of its own', () => {
    fc.assert(
      fc.property(table, ({ worth, rows, columns }) => {
        const chosen = bestAssignment(worth, rows, columns);
        expect(chosen.length).toBe(rows);
        expect(new Set(chosen).size).toBe(rows);
        for (const column of chosen) expect(column >= 0 && column < columns).toBe(true);
      }),
    );
  });

  test('is worth as much as the best of all ways', () => {
    fc.assert(
      fc.property(table, ({ worth, rows, columns }) => {
        expect(total(worth, columns, bestAssignment(worth, rows, columns))).toBe(bestOfAll(worth, rows, columns));
      }),
    );
  });

  test('is worth as much as the munkres package finds', () => {
    fc.assert(
      fc.property(table, ({ worth, rows, columns }) => {
        const costs = Array.from({ length: rows }, (_, row) =>
          worth.slice(row * columns, (row + 1) * columns).map((value) => 40 - value),
        );
        const theirs: number[] = [];
        for (const [row, column] of munkres(costs)) theirs[row] = column;
        expect(total(worth, columns, bestAssignment(worth, rows, columns))).toBe(total(worth, columns, theirs));
      }),
    );
  });

  test('does not care for a constant added to one row', () => {
    fc.assert(
      fc.property(table, fc.integer({ min: -80, max: 80 }), ({ worth, rows, columns }, added) => {
        const lifted = worth.map((value, i) => (i < columns ? value + added : value));
        expect(total(worth, columns, bestAssignment(lifted, rows, columns))).toBe(bestOfAll(worth, rows, columns));
      }),
    );
  });
});

function total(worth: readonly number[], columns: number, chosen: readonly number[]): number {
  return chosen.reduce((sum, column, row) => sum + worth[row * columns + column]!, 0);
}

/** Tries every way; eighths add exactly, so totals compare with `toBe`. */
function bestOfAll(worth: readonly number[], rows: number, columns: number, row = 0, taken = 0): number {
  if (row === rows) return 0;
  let best = Number.NEGATIVE_INFINITY;
  for (let column = 0; column < columns; column++) {
    if ((taken & (1 << column)) !== 0) continue;
    best = Math.max(
      best,
      worth[row * columns + column]! + bestOfAll(worth, rows, columns, row + 1, taken | (1 << column)),
    );
  }
  return best;
}

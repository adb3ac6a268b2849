import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../engine/index.ts';
import { contourRings, type Grid } from './contour.ts';

const grids: fc.Arbitrary<Grid> = fc
  .record({ columns: fc.integer({ min: 1, max: 7 }), rows: fc.integer({ min: 1, max: 7 }) })
  .chain(({ columns, rows }) =>
    fc
      .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: columns * rows, maxLength: columns * rows })
      .map((values) => ({ columns, rows, values })),
  );
const levels = fc.double({ min: 0.01, max: 1, noNaN: true });

/** How often the rings run round a point, by the crossings of a ray to the right: an oracle that knows nothing of squares. */
function windings(rings: readonly (readonly Point[])[], { x, y }: Point): number {
  let count = 0;
  for (const ring of rings)
    for (const [index, a] of ring.entries()) {
      const b = ring[(index + 1) % ring.length]!;
      if (a.y <= y === b.y <= y) continue;
      const crossing = a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
      if (crossing > x) count += a.y < b.y ? 1 : -1;
    }
  return count;
}

describe('contourRings', () => {
  it('runs once round each point of the grid that is reached, and round no other', () => {
    fc.assert(
      fc.property(grids, levels, (grid, level) => {
        const rings = contourRings(grid, level);
        for (let row = 0; row < grid.rows; row += 1)
          for (let column = 0; column < grid.columns; column += 1) {
            const reached = grid.values[row * grid.columns + column]! >= level;
            expect(windings(rings, { x: column, y: row })).toBe(reached ? 1 : 0);
          }
      }),
    );
  });

  it('takes in more for a lower level', () => {
    fc.assert(
      fc.property(grids, levels, levels, (grid, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(area(contourRings(grid, low))).toBeGreaterThanOrEqual(area(contourRings(grid, high)) - 1e-9);
      }),
    );
  });

  it('finds a circle where the grid is a cone', () => {
    const size = 41;
    const values = Array.from(
      { length: size * size },
      (_, at) => 20 - Math.hypot((at % size) - 20, Math.floor(at / size) - 20),
    );
    const [ring, ...others] = contourRings({ columns: size, rows: size, values }, 8);
    expect(others).toEqual([]);
    // The straight line between two points of the grid lies at most this far inside the cone's own edge.
    for (const { x, y } of ring!) expect(Math.abs(Math.hypot(x - 20, y - 20) - 12)).toBeLessThan(0.02);
  });

  it('refuses values that do not fill the grid', () => {
    expect(() => contourRings({ columns: 2, rows: 2, values: [1, 2, 3] }, 1)).toThrow(RangeError);
  });
});

function area(rings: readonly (readonly Point[])[]): number {
  return rings
    .flatMap((ring) => ring.map((a, index) => [a, ring[(index + 1) % ring.length]!] as const))
    .reduce((sum, [a, b]) => sum + (a.x * b.y - b.x * a.y) / 2, 0);
}

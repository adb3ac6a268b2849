/**
 * The assignment of rows to columns with the greatest total worth, every row to one column of its own.
 *
 * `worth` is row-major, `rows` x `columns`, every entry finite; needs `rows <= columns`. Returns the column of each row.
 * Ties go to the lower column where the search meets it first, so equal inputs give equal answers.
 * Throws RangeError on a wrong size or an entry that is not finite.
 *
 * Kuhn's Hungarian method in its shortest-augmenting-path form with potentials (J. Munkres, "Algorithms for the
 * Assignment and Transportation Problems", J. SIAM 5(1), 1957; R. Jonker and A. Volgenant, Computing 38, 1987).
 *
 * `bestAssignment([1, 5, 4, 9], 2, 2)` is `[0, 1]` (1 + 9 beats 5 + 4).
 */
export function bestAssignment(worth: ArrayLike<number>, rows: number, columns: number): readonly number[] {
  if (rows > columns) throw new RangeError(`invalid rows: ${rows} (expected at most ${columns}, the columns)`);
  if (worth.length !== rows * columns)
    throw new RangeError(`invalid worth: ${worth.length} entries (expected ${rows * columns})`);
  for (let i = 0; i < worth.length; i++) {
    if (!Number.isFinite(worth[i]))
      throw new RangeError(`invalid worth: ${worth[i]} at ${i} (expected a finite number)`);
  }
  // Rows and columns are counted from 1 below; column 0 is where each search starts.
  const rowPotential = new Float64Array(rows + 1);
  const columnPotential = new Float64Array(columns + 1);
  const row_byColumn = new Int32Array(columns + 1);
  const previousColumn = new Int32Array(columns + 1);
  const slack = new Float64Array(columns + 1);
  const visited = new Uint8Array(columns + 1);

  for (let row = 1; row <= rows; row++) {
    row_byColumn[0] = row;
    slack.fill(Number.POSITIVE_INFINITY);
    visited.fill(0);
    let column = 0;
    // Grow a tree of tight edges from this row until it touches a free column.
    do {
      visited[column] = 1;
      const from = row_byColumn[column]!;
      let step = Number.POSITIVE_INFINITY;
      let next = 0;
      for (let j = 1; j <= columns; j++) {
        if (visited[j] === 1) continue;
        // Costs are the negated worths, so the least cost is the greatest worth.
        const reduced = -worth[(from - 1) * columns + (j - 1)]! - rowPotential[from]! - columnPotential[j]!;
        if (reduced < slack[j]!) {
          slack[j] = reduced;
          previousColumn[j] = column;
        }
        if (slack[j]! < step) {
          step = slack[j]!;
          next = j;
        }
      }
      for (let j = 0; j <= columns; j++) {
        if (visited[j] === 1) {
          rowPotential[row_byColumn[j]!]! += step;
          columnPotential[j]! -= step;
        } else {
          slack[j]! -= step;
        }
      }
      column = next;
    } while (row_byColumn[column] !== 0);
    // Flip the edges back along the path that was found.
    while (column !== 0) {
      const before = previousColumn[column]!;
      row_byColumn[column] = row_byColumn[before]!;
      column = before;
    }
  }

  const column_byRow = new Array<number>(rows).fill(-1);
  for (let j = 1; j <= columns; j++) {
    const row = row_byColumn[j]!;
    if (row > 0) column_byRow[row - 1] = j - 1;
  }
  return column_byRow;
}

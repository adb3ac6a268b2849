/**
 * Coefficients that fit `targets` best by columns of `rows`, each coefficient drawn toward 0 by `ridge` rows of its own.
 *
 * `rows` holds `columns` numbers a row. Solved by Householder reflections, which keep twice the digits that normal equations do
 * (Golub and Van Loan, Matrix Computations, 5.3). A column that is a sum of others, to rounding, gets 0.
 * RangeError when the sizes do not fit or there is no row.
 */
export function fitLeastSquares(rows: Float64Array, columns: number, targets: Float64Array, ridge = 0): Float64Array {
  return fitManyLeastSquares(rows, columns, [targets], ridge)[0];
}

/** The same for several targets of the same rows, in hardly more time than one takes: the columns are turned once for all. */
export function fitManyLeastSquares(
  rows: Float64Array,
  columns: number,
  targets: readonly Float64Array[],
  ridge = 0,
): readonly Float64Array[] {
  const count = rows.length / columns;
  const misfit = targets.find(({ length }) => length !== count);
  if (targets.length === 0 || count === 0 || columns < 1 || misfit !== undefined) {
    throw new RangeError(
      `invalid rows: ${rows.length} numbers for ${misfit?.length ?? count} targets of ${columns} columns`,
    );
  }
  const penalties = ridge > 0 ? columns : 0;
  const height = count + penalties;
  const matrix = new Float64Array(height * columns);
  matrix.set(rows);
  for (let column = 0; column < penalties; column++) matrix[(count + column) * columns + column] = Math.sqrt(ridge);
  const rights = targets.map((target) => {
    const right = new Float64Array(height);
    right.set(target);
    return right;
  });
  const pivots: (Pivot | null)[] = [];
  for (let column = 0; column < columns; column++) {
    const row = pivots.reduce((next, pivot) => (pivot === null ? next : next + 1), 0);
    const largest = pivots.reduce((most, pivot) => Math.max(most, Math.abs(pivot?.diagonal ?? 0)), 0);
    pivots.push(turnColumn(matrix, columns, column, row, nothingNew * largest, rights));
  }
  return rights.map((right) => solveTriangle(matrix, right, columns, pivots));
}

/** Where a column stands on its axis: the row, and what it comes to there. */
interface Pivot {
  readonly row: number;
  readonly diagonal: number;
}

/** A column of which less is left than this share of the largest tells nothing new: to rounding it is a sum of others. */
const nothingNew = 1e-12;

/**
 * Turn what is left of a column from `row` on onto its axis, and all that is to the right of it with it. Its reflector stays in its place. `null` when
 * it tells nothing new: the row is then left to the next column.
 */
function turnColumn(
  matrix: Float64Array,
  columns: number,
  column: number,
  row: number,
  tiny: number,
  rights: readonly Float64Array[],
): Pivot | null {
  const height = matrix.length / columns;
  let square = 0;
  for (let at = row; at < height; at++) square += matrix[at * columns + column] ** 2;
  const length = Math.sqrt(square);
  if (length <= tiny) return null;
  const top = matrix[row * columns + column];
  const diagonal = top > 0 ? -length : length;
  matrix[row * columns + column] = top - diagonal;
  // Half the square of the reflector.
  const half = square - top * diagonal;
  const dots = dotsWithReflector(matrix, columns, column, row);
  for (let at = row; at < height; at++) {
    const share = matrix[at * columns + column] / half;
    for (let other = column + 1; other < columns; other++) matrix[at * columns + other] -= dots[other] * share;
  }
  for (const right of rights) {
    let dot = 0;
    for (let at = row; at < height; at++) dot += matrix[at * columns + column] * right[at];
    for (let at = row; at < height; at++) right[at] -= (dot / half) * matrix[at * columns + column];
  }
  return { row, diagonal };
}

/** What each column to the right has in common with a reflector: gone through row by row, as it lies in memory. */
function dotsWithReflector(matrix: Float64Array, columns: number, column: number, row: number): Float64Array {
  const dots = new Float64Array(columns);
  for (let at = row * columns; at < matrix.length; at += columns) {
    const reflector = matrix[at + column];
    for (let other = column + 1; other < columns; other++) dots[other] += reflector * matrix[at + other];
  }
  return dots;
}

function solveTriangle(
  matrix: Float64Array,
  right: Float64Array,
  columns: number,
  pivots: readonly (Pivot | null)[],
): Float64Array {
  const coefficients = new Float64Array(columns);
  for (let column = columns - 1; column >= 0; column--) {
    const pivot = pivots[column];
    if (pivot === null) continue;
    let sum = right[pivot.row];
    for (let other = column + 1; other < columns; other++)
      sum -= matrix[pivot.row * columns + other] * coefficients[other];
    coefficients[column] = sum / pivot.diagonal;
  }
  return coefficients;
}

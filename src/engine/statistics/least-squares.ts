/**
 * Coefficients that fit `targets` best by columns of `rows`, each coefficient drawn toward 0 by `ridge` rows of its own.
 *
 * `rows` holds `columns` numbers a row. Solved by Householder reflections, which keep twice the digits that normal equations do
 * (Golub and Van Loan, Matrix Computations, 5.3). A column that is a sum of others, to rounding, gets 0.
 * RangeError when the sizes do not fit or there is no row.
 */
export function fitLeastSquares(rows: Float64Array, columns: number, targets: Float64Array, ridge = 0): Float64Array {
  const count = targets.length;
  if (count === 0 || columns < 1 || rows.length !== count * columns) {
    throw new RangeError(`invalid rows: ${rows.length} numbers for ${count} targets of ${columns} columns`);
  }
  const penalties = ridge > 0 ? columns : 0;
  const height = count + penalties;
  const matrix = new Float64Array(height * columns);
  matrix.set(rows);
  for (let column = 0; column < penalties; column++) matrix[(count + column) * columns + column] = Math.sqrt(ridge);
  const right = new Float64Array(height);
  right.set(targets);
  const diagonal = new Float64Array(columns);
  for (let column = 0; column < Math.min(columns, height); column++) reflect(matrix, right, columns, column, diagonal);
  return solveTriangle(matrix, right, columns, diagonal);
}

/** Turn one column onto its axis, and all that is to the right of it with it. Its reflector stays below, the diagonal goes to `diagonal`. */
function reflect(
  matrix: Float64Array,
  right: Float64Array,
  columns: number,
  column: number,
  diagonal: Float64Array,
): void {
  const height = right.length;
  let square = 0;
  for (let row = column; row < height; row++) square += matrix[row * columns + column] ** 2;
  const length = Math.sqrt(square);
  if (length === 0) return;
  const top = matrix[column * columns + column];
  const turned = top > 0 ? -length : length;
  diagonal[column] = turned;
  matrix[column * columns + column] = top - turned;
  // Half the square of the reflector.
  const half = square - top * turned;
  for (let other = column + 1; other < columns; other++) {
    let dot = 0;
    for (let row = column; row < height; row++) dot += matrix[row * columns + column] * matrix[row * columns + other];
    const share = dot / half;
    for (let row = column; row < height; row++) matrix[row * columns + other] -= share * matrix[row * columns + column];
  }
  let dot = 0;
  for (let row = column; row < height; row++) dot += matrix[row * columns + column] * right[row];
  for (let row = column; row < height; row++) right[row] -= (dot / half) * matrix[row * columns + column];
}

/** A diagonal that is smaller than this share of the largest stands for a column that tells nothing new. */
const nothingNew = 1e-12;

function solveTriangle(
  matrix: Float64Array,
  right: Float64Array,
  columns: number,
  diagonal: Float64Array,
): Float64Array {
  const largest = diagonal.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  const coefficients = new Float64Array(columns);
  for (let column = columns - 1; column >= 0; column--) {
    if (Math.abs(diagonal[column]) <= nothingNew * largest) continue;
    let sum = right[column];
    for (let other = column + 1; other < columns; other++)
      sum -= matrix[column * columns + other] * coefficients[other];
    coefficients[column] = sum / diagonal[column];
  }
  return coefficients;
}

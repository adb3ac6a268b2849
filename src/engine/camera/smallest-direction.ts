/**
 * The direction in which a set of equations is nearest to zero: the unit vector v for which the rows, each multiplied with v, leave the least sum
 * of squares. `rows` are alike in length; `spread` says how sharply it is told: the next smallest sum over the largest, 0 when a second direction does as well.
 *
 * By the eigenvectors of the rows' own products, turned two at a time until nothing is left beside the diagonal (Jacobi 1846; Golub and Van Loan,
 * Matrix Computations, 8.5). RangeError without a row.
 */
export function smallestDirection(rows: readonly (readonly number[])[]): {
  readonly direction: readonly number[];
  readonly spread: number;
} {
  const size = rows[0]?.length ?? 0;
  if (size === 0) throw new RangeError('invalid equations: none (expected at least one)');
  const products = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (__, j) => rows.reduce((sum, row) => sum + row[i] * row[j], 0)),
  );
  const vectors = Array.from({ length: size }, (_, i) => Array.from({ length: size }, (__, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < mostSweeps && offDiagonal(products) > tiny * trace(products); sweep++) {
    for (let i = 0; i < size; i++) for (let j = i + 1; j < size; j++) rotate(products, vectors, i, j);
  }
  const order = products.map((row, at) => ({ at, value: row[at] })).sort((one, other) => one.value - other.value);
  const largest = order[size - 1].value;
  return {
    direction: vectors.map((row) => row[order[0].at]),
    spread: largest > 0 ? Math.max(0, order[Math.min(1, size - 1)].value) / largest : 0,
  };
}

/** Sweeps over all pairs; five or six are enough for nine unknowns. */
const mostSweeps = 60;
/** What is left beside the diagonal for its sum, at which nothing more is gained. */
const tiny = 1e-18;

/** Turns axes i and j so that nothing is left where they cross. */
function rotate(matrix: number[][], vectors: number[][], i: number, j: number): void {
  const across = matrix[i][j];
  if (across === 0) return;
  const tilt = (matrix[j][j] - matrix[i][i]) / (2 * across);
  const tangent = (tilt >= 0 ? 1 : -1) / (Math.abs(tilt) + Math.hypot(tilt, 1));
  const cos = 1 / Math.hypot(tangent, 1);
  const sin = tangent * cos;
  for (let k = 0; k < matrix.length; k++) {
    const [a, b] = [matrix[k][i], matrix[k][j]];
    matrix[k][i] = cos * a - sin * b;
    matrix[k][j] = sin * a + cos * b;
  }
  for (let k = 0; k < matrix.length; k++) {
    const [a, b] = [matrix[i][k], matrix[j][k]];
    matrix[i][k] = cos * a - sin * b;
    matrix[j][k] = sin * a + cos * b;
  }
  for (const row of vectors) {
    const [a, b] = [row[i], row[j]];
    row[i] = cos * a - sin * b;
    row[j] = sin * a + cos * b;
  }
}

function offDiagonal(matrix: readonly (readonly number[])[]): number {
  let sum = 0;
  for (const [i, row] of matrix.entries()) for (const [j, value] of row.entries()) if (i !== j) sum += Math.abs(value);
  return sum;
}

function trace(matrix: readonly (readonly number[])[]): number {
  return matrix.reduce((sum, row, at) => sum + Math.abs(row[at]), 0);
}

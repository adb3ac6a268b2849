/** How to play a game in which one side picks a row, the other a column, and neither sees the other's choice. */
export interface MatrixGame {
  /** What the row side gets on average when both play as well as they can. */
  readonly value: number;
  /** How often to play each row, and what the other side's best answer is: 0 to 1, 1 in all. There may be other mixes that do as well. */
  readonly share_byRow: readonly number[];
  readonly share_byColumn: readonly number[];
}

/** Numbers closer to nothing than this are nothing: far under what a hundredth of a goal is, far over what rounding leaves. */
const nothing = 1e-11;

/**
 * The best mix of rows against the best mix of columns: `payoff_byRowColumn` is what the row side gets. Von Neumann 1928; solved as a linear programme by
 * the simplex method (Dantzig 1951; Bland's rule 1977, which cannot go round in circles). RangeError for no row, no column, rows of different lengths, or a number
 * that is not finite.
 *
 * @example
 * // Odd or even with one or two fingers: the first wins a twelfth a game.
 * solveMatrixGame([[-2, 3], [3, -4]]).value;
 */
export function solveMatrixGame(payoff_byRowColumn: readonly (readonly number[])[]): MatrixGame {
  check(payoff_byRowColumn);
  // With all payoffs above nothing the value is too, and both sides' mixes are a programme's two solutions.
  const lowest = Math.min(...payoff_byRowColumn.flat());
  const shift = 1 - lowest;
  const tableau = createTableau(payoff_byRowColumn.map((row) => row.map((payoff) => payoff + shift)));
  while (pivotOnce(tableau));
  const { columns, cells, basis, objective } = tableau;
  const total = objective.at(-1)!;
  const share_byColumn = Array.from({ length: columns }, () => 0);
  for (const [row, variable] of basis.entries())
    if (variable < columns) share_byColumn[variable] = cells[row]!.at(-1)! / total;
  const share_byRow = payoff_byRowColumn.map((_, row) => Math.max(0, objective[columns + row]!) / total);
  return { value: 1 / total - shift, share_byRow: whole(share_byRow), share_byColumn: whole(share_byColumn) };
}

/** What the row side gets when it plays this mix and the other side's best answer meets it. */
export function worstCase(payoff_byRowColumn: readonly (readonly number[])[], share_byRow: readonly number[]): number {
  const columns = payoff_byRowColumn[0]?.length ?? 0;
  return Math.min(
    ...Array.from({ length: columns }, (_, column) =>
      payoff_byRowColumn.reduce((sum, row, at) => sum + row[column]! * share_byRow[at]!, 0),
    ),
  );
}

/**
 * Maximise the sum of y with A y <= 1, y >= 0: a row of the tableau for each of ours with its slack variable, a last column for the right side. Its
 * dual variables, in the objective under the slacks, are our own mix.
 */
interface Tableau {
  readonly columns: number;
  readonly cells: number[][];
  /** Which variable is basic in each row. */
  readonly basis: number[];
  readonly objective: number[];
}

function createTableau(payoffs: readonly (readonly number[])[]): Tableau {
  const columns = payoffs[0]!.length;
  const rows = payoffs.length;
  return {
    columns,
    cells: payoffs.map((row, at) => [...row, ...Array.from({ length: rows }, (_, slack) => (slack === at ? 1 : 0)), 1]),
    basis: payoffs.map((_, at) => columns + at),
    objective: [...Array.from({ length: columns }, () => -1), ...Array.from({ length: rows + 1 }, () => 0)],
  };
}

/** One step to a better corner; false when there is none. By Bland's rule: the first variable that helps, and of rows that bound it alike the one of the first. */
function pivotOnce({ cells, basis, objective }: Tableau): boolean {
  const entering = objective.findIndex((cost, at) => at < objective.length - 1 && cost < -nothing);
  if (entering < 0) return false;
  let leaving = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const [row, line] of cells.entries()) {
    const pivot = line[entering]!;
    if (pivot <= nothing) continue;
    const bound = line.at(-1)! / pivot;
    const isFirst = leaving >= 0 && Math.abs(bound - least) <= nothing && basis[row]! < basis[leaving]!;
    if (bound < least - nothing || isFirst) [leaving, least] = [row, bound];
  }
  // Every payoff is above nothing, so that each variable is bounded.
  if (leaving < 0) throw new TypeError('a matrix game without a bound');
  const line = cells[leaving]!;
  const pivot = line[entering]!;
  for (let at = 0; at < line.length; at++) line[at]! /= pivot;
  for (const other of [...cells, objective]) {
    const factor = other[entering]!;
    if (other === line || factor === 0) continue;
    for (let at = 0; at < other.length; at++) other[at]! -= factor * line[at]!;
  }
  basis[leaving] = entering;
  return true;
}

/** Shares that add up to 1: rounding leaves a hair too much or too little. */
function whole(shares: readonly number[]): readonly number[] {
  const clean = shares.map((share) => (share > nothing ? share : 0));
  const all = clean.reduce((sum, share) => sum + share, 0);
  return clean.map((share) => share / all);
}

function check(rows: readonly (readonly number[])[]): void {
  const columns = rows[0]?.length ?? 0;
  if (columns === 0) throw new RangeError('invalid game: no row or no column (expected at least one of each)');
  for (const row of rows) {
    if (row.length !== columns) throw new RangeError(`invalid row: ${row.length} payoffs (expected ${columns})`);
    const wrong = row.find((payoff) => !Number.isFinite(payoff));
    if (wrong !== undefined) throw new RangeError(`invalid payoff: ${wrong} (expected a finite number)`);
  }
}

import type { Chance, NewChance, Playbook } from '../../playbook/index.ts';
import { chanceColumnOf, chanceColumns } from './chance-columns.ts';
import type { ChanceColumn } from './column-kinds.ts';

/** Something in a table of man-ups that cannot be taken. Lines count from 1 as an editor of text counts them. */
export interface ChanceTableProblem {
  readonly line: number;
  readonly text: string;
}

/** What a table of man-ups holds. With one problem nothing of it may be taken: half a season would count wrongly. */
export interface ChanceTableReading {
  readonly chances: readonly NewChance[];
  readonly problems: readonly ChanceTableProblem[];
  /** What was passed over and costs nothing: columns that are none of ours. */
  readonly notes: readonly string[];
}

/**
 * Reads man-ups from the cells of a table whose first row names the columns, in any order; `result` is needed, `side` is ours where it is left out. Names of plays, schemes and opponents become
 * their ids. `cells` are all rows of the file, empty ones too, so that lines can be told. Never throws.
 */
export function readChanceTable(playbook: Playbook, cells: readonly (readonly string[])[]): ChanceTableReading {
  const lines = lineNumbers(cells);
  const top = cells.findIndex(isFilled);
  if (top < 0) return { chances: [], problems: [{ line: 1, text: 'The table is empty.' }], notes: [] };
  const columns = cells[top]!.map(chanceColumnOf);
  const wrong = headProblem(cells[top]!, columns);
  if (wrong !== undefined) return { chances: [], problems: [{ line: lines[top]!, text: wrong }], notes: [] };
  const chances: NewChance[] = [];
  const problems: ChanceTableProblem[] = [];
  for (const [row, filled] of cells.entries()) {
    if (row <= top || !isFilled(filled)) continue;
    const taken = readRow(playbook, columns, filled);
    if (Array.isArray(taken)) problems.push(...taken.map((text) => ({ line: lines[row]!, text })));
    else chances.push(taken as NewChance);
  }
  if (chances.length + problems.length === 0)
    problems.push({ line: lines[top]!, text: 'There is no man-up below the names of the columns.' });
  return { chances, problems, notes: unknownNotes(cells[top]!, columns) };
}

/** The man-ups of a season as cells: names of the columns, then a row each. Marks are left out: they stay in the playbook. */
export function writeChanceTable(chances: readonly Chance[]): readonly (readonly string[])[] {
  return [
    chanceColumns.map(({ head }) => head),
    ...chances.map((chance) => chanceColumns.map(({ print }) => print(chance))),
  ];
}

/**
 * Of man-ups that were read, those that the playbook does not have yet, so that the same file can be loaded again. Two that are alike in every column may both be new: each that is known stands for one.
 */
export function newChances(playbook: Playbook, read: readonly NewChance[]): readonly NewChance[] {
  const known = new Map<string, number>();
  for (const chance of playbook.chances ?? []) {
    const key = rowKey(chance);
    known.set(key, (known.get(key) ?? 0) + 1);
  }
  return read.filter((chance) => {
    const key = rowKey({ id: '', ...chance });
    const left = known.get(key) ?? 0;
    known.set(key, left - 1);
    return left <= 0;
  });
}

function rowKey(chance: Chance): string {
  return JSON.stringify(chanceColumns.map(({ print }) => print(chance)));
}

/** The line on which each row begins: a cell in quotes may hold line ends of its own. */
function lineNumbers(cells: readonly (readonly string[])[]): readonly number[] {
  let line = 1;
  return cells.map((row) => {
    const begins = line;
    line += 1 + row.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return begins;
  });
}

function isFilled(row: readonly string[]): boolean {
  return row.some((cell) => cell.trim() !== '');
}

function headProblem(heads: readonly string[], columns: readonly (ChanceColumn | undefined)[]): string | undefined {
  const names = columns.map((column) => column?.head);
  if (!names.includes('result'))
    return 'There is no column "result". The first row must name the columns; save the man-ups of this playbook to see all names.';
  const twice = names.find((name, at) => name !== undefined && names.indexOf(name) !== at);
  return twice === undefined
    ? undefined
    : `Two columns say "${twice}": ${heads.filter((_, at) => names[at] === twice).join(' and ')}. Leave one of them out.`;
}

function unknownNotes(heads: readonly string[], columns: readonly (ChanceColumn | undefined)[]): readonly string[] {
  const unknown = heads.filter((head, at) => columns[at] === undefined && head.trim() !== '');
  return unknown.length === 0 ? [] : [`Columns that were passed over: ${unknown.join(', ')}.`];
}

function readRow(
  playbook: Playbook,
  columns: readonly (ChanceColumn | undefined)[],
  cells: readonly string[],
): NewChance | readonly string[] {
  const problems: string[] = [];
  // Without a result it is none; that is told below.
  let chance = { side: 'ours' } as NewChance;
  for (const [at, column] of columns.entries()) {
    const cell = plainCell(cells[at] ?? '');
    if (column === undefined || cell === '') continue;
    const taken = column.read(cell, playbook);
    if (taken.kind === 'problem') problems.push(`${column.head}: ${taken.text}`);
    else chance = taken.change(chance);
  }
  if (cells.slice(columns.length).some((cell) => cell.trim() !== ''))
    problems.push('It has more cells than there are columns; a comma in a cell needs quotes round the cell.');
  return problems.length > 0 ? problems : (wholeProblems(chance) ?? chance);
}

function wholeProblems({ result, penalty, expected, shots, onTarget }: NewChance): readonly string[] | undefined {
  const problems = [
    result === undefined && 'result: It is empty. Say how the man-up ended.',
    penalty !== undefined && Number.isNaN(penalty.seconds) && 'penalty: It is empty, and "fixed" or "men" is not.',
    expected !== undefined &&
      Object.values(expected).some(Number.isNaN) &&
      'expected: It needs "expected", "expected low" and "expected high", or none of them.',
    expected !== undefined &&
      (expected.low > expected.goals || expected.goals > expected.high) &&
      'expected: It is not between its low and its high.',
    shots !== undefined && onTarget !== undefined && onTarget > shots && 'on target: It is more than "shots".',
  ].filter((text) => text !== false);
  return problems.length > 0 ? problems : undefined;
}

/** Spreadsheets are given a mark before what looks like a formula, so that they do not run it: it is no part of the text. */
function plainCell(cell: string): string {
  return cell.trim().replace(/^'(?=[=+\-@\t\r])/, '');
}

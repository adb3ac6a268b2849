import type { Chance, NewChance, Playbook } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { chanceColumnOf, chanceColumns } from './chance-columns.ts';
import type { CellContext, ChanceColumn } from './column-kinds.ts';
import { type DayOrder, dayOrderOf, readDay } from './day-cell.ts';
import { tableWarnings } from './table-warnings.ts';

/** Something in a table of chances that cannot be taken. Lines count from 1 as an editor of text counts them. */
export interface ChanceTableProblem {
  readonly line: number;
  readonly text: string;
}

/** What a table of chances holds. */
export interface ChanceTableReading {
  /** Those of the lines that can be read. */
  readonly chances: readonly NewChance[];
  readonly problems: readonly ChanceTableProblem[];
  /** Lines below the head that hold something. */
  readonly lines: number;
  /** Lines that cannot be read. */
  readonly badLines: number;
  /** What was passed over or taken in a way that should be known, a sentence each. */
  readonly notes: readonly string[];
  /** What is likely a slip, though it can be taken as it stands, a sentence each. */
  readonly warnings: readonly string[];
  /** Some days may be one of two, and neither the table nor the caller says which: one answer makes all of them clear. */
  readonly asksDays: boolean;
}

/** How a table is read. */
export interface ChanceTableOptions {
  /** What comes first in days such as 3/4/2026; by what other days of the table show when left out. */
  readonly days?: DayOrder;
}

/**
 * Reads chances from the cells of a table whose first row names the columns, in any order; `result` is needed, `side` is ours where it is left out. Names of plays, schemes and opponents become
 * their ids. `cells` are all rows of the file, empty ones too, so that lines can be told. Never throws.
 */
export function readChanceTable(
  playbook: Playbook,
  cells: readonly (readonly string[])[],
  { days }: ChanceTableOptions = {},
): ChanceTableReading {
  const lines = lineNumbers(cells);
  const top = cells.findIndex(isFilled);
  if (top < 0) return unread(1, 'The table is empty.');
  const columns = cells[top]!.map(chanceColumnOf);
  const wrong = headProblem(cells[top]!, columns);
  if (wrong !== undefined) return unread(lines[top]!, wrong);
  const rows = [...cells.entries()].filter(([row, filled]) => row > top && isFilled(filled));
  if (rows.length === 0) return unread(lines[top]!, 'There is no chance below the names of the columns.');
  const written = dayCells(columns, rows);
  const shown = dayOrderOf(written);
  const context: CellContext = { playbook, days: days ?? shown?.order };
  const taken = rows.map(([row, filled]) => ({ line: lines[row]!, ...readRow(context, columns, filled) }));
  const chances = taken.flatMap(({ chance }) => chance ?? []);
  const isUnclear = (order: DayOrder | undefined) => written.some((cell) => readDay(cell, order).kind === 'unclear');
  const isShown = days === undefined && shown !== undefined && isUnclear(undefined);
  return {
    chances,
    ...problemsOf(taken),
    lines: rows.length,
    notes: [
      ...unknownNotes(cells[top]!, columns),
      ...(isShown ? [orderNote(shown)] : []),
      ...rangeNotes(taken.filter(({ isWithoutRange }) => isWithoutRange).length),
    ],
    warnings: tableWarnings(playbook, chances),
    asksDays: isUnclear(context.days),
  };
}

function problemsOf(
  taken: readonly (RowRead & { readonly line: number })[],
): Pick<ChanceTableReading, 'problems' | 'badLines'> {
  return {
    problems: taken.flatMap(({ line, problems }) => problems.map((text) => ({ line, text }))),
    badLines: taken.filter(({ problems }) => problems.length > 0).length,
  };
}

/** A table of which no line can be read. */
function unread(line: number, text: string): ChanceTableReading {
  return { chances: [], problems: [{ line, text }], lines: 0, badLines: 0, notes: [], warnings: [], asksDays: false };
}

/** The chances of a season as cells: names of the columns, then a row each. Marks and what was expected of the scheme are left out: they stay in the playbook. */
export function writeChanceTable(chances: readonly Chance[]): readonly (readonly string[])[] {
  return [
    chanceColumns.map(({ head }) => head),
    ...chances.map((chance) => chanceColumns.map(({ print }) => print(chance))),
  ];
}

/**
 * Of chances that were read, those that the playbook does not have yet, so that the same file can be loaded again. Two that are alike in every column may both be new: each that is known stands for one.
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
    return 'There is no column "result". The first row must name the columns; all names stand in the list of columns.';
  const twice = names.find((name, at) => name !== undefined && names.indexOf(name) !== at);
  return twice === undefined
    ? undefined
    : `Two columns say "${twice}": ${heads.filter((_, at) => names[at] === twice).join(' and ')}. Leave one of them out.`;
}

function unknownNotes(heads: readonly string[], columns: readonly (ChanceColumn | undefined)[]): readonly string[] {
  const unknown = heads.filter((head, at) => columns[at] === undefined && head.trim() !== '');
  return unknown.length === 0 ? [] : [`Columns that were passed over: ${unknown.join(', ')}.`];
}

/** What stands in the columns of days. */
function dayCells(
  columns: readonly (ChanceColumn | undefined)[],
  rows: readonly (readonly [number, readonly string[]])[],
): readonly string[] {
  const at = columns.findIndex((column) => column?.key === 'date');
  return at < 0 ? [] : rows.map(([, row]) => plainCell(row[at] ?? '')).filter((cell) => cell !== '');
}

function orderNote({ order, shownBy }: { readonly order: DayOrder; readonly shownBy: string }): string {
  return `Days were read with the ${order === 'monthFirst' ? 'month' : 'day'} first, as ${shownBy} shows.`;
}

function rangeNotes(count: number): readonly string[] {
  if (count === 0) return [];
  return [
    `expected: ${counted(count, 'line gives', 'lines give')} no "expected low" and "expected high"; the number is kept without a range.`,
  ];
}

/** A row as a chance, or what is wrong with it. */
interface RowRead {
  readonly chance: NewChance | undefined;
  readonly problems: readonly string[];
  /** What was expected came as one number. */
  readonly isWithoutRange: boolean;
}

function readRow(
  context: CellContext,
  columns: readonly (ChanceColumn | undefined)[],
  cells: readonly string[],
): RowRead {
  const problems: string[] = [];
  // Without a result it is none; that is told below.
  let chance = { side: 'ours' } as NewChance;
  for (const [at, column] of columns.entries()) {
    const cell = plainCell(cells[at] ?? '');
    if (column === undefined || cell === '') continue;
    const taken = column.read(cell, context);
    if (taken.kind === 'problem') problems.push(`${column.head}: ${taken.text}`);
    else chance = taken.change(chance);
  }
  if (cells.slice(columns.length).some((cell) => cell.trim() !== ''))
    problems.push('It has more cells than there are columns; a comma in a cell needs quotes round the cell.');
  const ranged = withRange(chance);
  const found = problems.length > 0 ? problems : wholeProblems(ranged);
  return {
    chance: found.length > 0 ? undefined : ranged,
    problems: found,
    isWithoutRange: found.length === 0 && ranged !== chance,
  };
}

/** What was expected, given as one number, is kept as a range of no width: only the number is counted with. */
function withRange(chance: NewChance): NewChance {
  const { expected } = chance;
  if (expected === undefined || !Number.isNaN(expected.low) || !Number.isNaN(expected.high)) return chance;
  return { ...chance, expected: { goals: expected.goals, low: expected.goals, high: expected.goals } };
}

function wholeProblems({ result, penalty, expected, shots, onTarget }: NewChance): readonly string[] {
  return [
    result === undefined && 'result: It is empty. Say how the chance ended.',
    penalty !== undefined && Number.isNaN(penalty.seconds) && 'penalty: It is empty, and "fixed" or "men" is not.',
    expected !== undefined &&
      Object.values(expected).some(Number.isNaN) &&
      'expected: It needs "expected low" and "expected high", or neither of them.',
    expected !== undefined &&
      (expected.low > expected.goals || expected.goals > expected.high) &&
      'expected: It is not between its low and its high.',
    shots !== undefined && onTarget !== undefined && onTarget > shots && 'on target: It is more than "shots".',
  ].filter((text) => text !== false);
}

/** Spreadsheets are given a mark before what looks like a formula, so that they do not run it: it is no part of the text. */
function plainCell(cell: string): string {
  return cell.trim().replace(/^'(?=[=+\-@\t\r])/, '');
}

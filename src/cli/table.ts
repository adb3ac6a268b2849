import Table from 'cli-table3';

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** A text column that gives way when the table is too wide: its words are wrapped. */
  readonly flexible?: true;
}

/** Cells in the columns' order, or one line across the whole table that heads the rows below it. */
export type Row = readonly string[] | { readonly section: string };

/** The most that a table may be wide, in letters: the usual terminal. */
export const tableWidth = 80;

/**
 * A plain table of at most `tableWidth` letters: a line under the titles, two blanks between columns, nothing else.
 * Throws a RangeError when the fixed columns alone are wider.
 */
export function formatTable(columns: readonly Column[], rows: readonly Row[]): string {
  const widths = columnWidths(columns, rows);
  const table = new Table({
    head: columns.map((column) => column.title),
    colWidths: widths.map((width) => width + 2),
    colAligns: columns.map((column) => column.align),
    wordWrap: true,
    chars: plainChars,
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2, compact: true },
  });
  const whole = widths.reduce((sum, width) => sum + width + 2, 0) - 2;
  for (const row of rows) {
    table.push('section' in row ? [{ colSpan: columns.length, content: row.section }] : [...row]);
  }
  return table
    .toString()
    .split('\n')
    .map((line) => (/^-+$/.test(line) ? line.slice(0, whole) : line.trimEnd()))
    .join('\n');
}

const plainChars = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  mid: '-',
  'mid-mid': '',
  right: '',
  'right-mid': '',
  middle: '',
};

function columnWidths(columns: readonly Column[], rows: readonly Row[]): readonly number[] {
  const wanted = columns.map((column, index) =>
    Math.max(column.title.length, ...rows.map((row) => ('section' in row ? 0 : longestLine(row[index] ?? '')))),
  );
  const whole = wanted.reduce((sum, width) => sum + width + 2, 0) - 2;
  const surplus = whole - tableWidth;
  if (surplus <= 0) return wanted;
  const flexible = columns.flatMap((column, index) => (column.flexible === true ? [index] : []));
  return shrink(wanted, flexible, surplus);
}

// The widest flexible column gives way first, letter by letter, but never below a word's usual length.
function shrink(wanted: readonly number[], flexible: readonly number[], surplus: number): readonly number[] {
  const widths = [...wanted];
  for (let left = surplus; left > 0; left -= 1) {
    const widest = flexible.reduce<number>(
      (best, index) => ((widths[index] ?? 0) > (widths[best] ?? 0) ? index : best),
      flexible[0] ?? -1,
    );
    if (widest < 0 || (widths[widest] ?? 0) <= narrowest) {
      throw new RangeError(`a table of ${columnsWord(widths.length)} does not fit ${tableWidth} letters`);
    }
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}

/** No flexible column becomes narrower, letters. */
const narrowest = 10;

function columnsWord(count: number): string {
  return count === 1 ? 'one column' : `${count} columns`;
}

function longestLine(cell: string): number {
  return Math.max(...cell.split('\n').map((line) => line.length));
}

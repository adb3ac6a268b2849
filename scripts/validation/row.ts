import type { Estimate } from '../../src/engine/index.ts';
import type { Published } from './pro-table.ts';

/** How a row came about: a check of a model by itself, a number that free parameters were fitted on, or one kept out of every fit. */
export type RowUse = 'check' | 'fitted' | 'held out';

/** One line of docs/validation.md: theirs beside ours. */
export interface Row {
  /** Distinct in the whole page; causes.ts names red rows by it. */
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly theirs: string;
  readonly ours: string;
  /** What had to be true for the row to pass. */
  readonly test: string;
  readonly use: RowUse;
  readonly pass: boolean;
}

/** Rows that belong together. */
export interface Group {
  readonly id: string;
  readonly title: string;
  /** A paragraph for the page: what is compared, and what a reader must know. */
  readonly about: string;
  /** Figures that no row asks anything of. */
  readonly figures?: FigureTable;
  readonly rows: readonly Row[];
}

/** Figures side by side: one name for each column, as many cells in each line. */
export interface FigureTable {
  readonly head: readonly string[];
  readonly lines: readonly (readonly string[])[];
}

type Label = Pick<Row, 'id' | 'what' | 'source'> & Partial<Pick<Row, 'use'>>;

/** A number that must agree to the digits that it was printed with. */
export function printedRow(label: Label, theirs: number, ours: number, digits: number): Row {
  const half = 0.5 * 10 ** -digits;
  return {
    use: 'check',
    ...label,
    theirs: theirs.toFixed(digits),
    ours: ours.toFixed(digits),
    test: 'printed digits',
    // A value that sits on the rounding's edge may fall either way.
    pass: Math.abs(ours - theirs) <= half * (1 + 1e-6),
  };
}

/** A number that must agree within a tolerance that is written beside it. */
export function nearRow(label: Label, theirs: number, ours: number, tolerance: number, digits: number): Row {
  return {
    use: 'check',
    ...label,
    theirs: theirs.toFixed(digits),
    ours: ours.toFixed(digits),
    test: `within ${tolerance}`,
    pass: Math.abs(ours - theirs) <= tolerance,
  };
}

/** A number that must lie in a range, both ends included. */
export function rangeRow(label: Label, theirs: string, ours: number | Estimate, low: number, high: number): Row {
  const value = typeof ours === 'number' ? ours : ours.mean;
  return {
    use: 'check',
    ...label,
    theirs,
    ours: typeof ours === 'number' ? format(ours) : estimateWords(ours),
    test: `${format(low)} to ${format(high)}`,
    pass: value >= low && value <= high,
  };
}

/** A fact that holds or does not. */
export function factRow(label: Label, theirs: string, ours: string, pass: boolean): Row {
  return { use: 'check', ...label, theirs, ours, test: 'as stated', pass };
}

/** A condition in words of its own that was written down beforehand; `asked` stands where others have a published number. */
export function askedRow(label: Omit<Label, 'source'>, asked: string, ours: string, test: string, pass: boolean): Row {
  return { use: 'held out', source: 'asked of ourselves', ...label, theirs: asked, ours, test, pass };
}

export function publishedWords({ value, low, high }: Published): string {
  if (low === undefined || high === undefined) return format(value);
  return `${format(value)} (${format(low)} to ${format(high)})`;
}

export function estimateWords({ mean, low, high }: Estimate): string {
  return `${format(mean)} (${format(low)} to ${format(high)})`;
}

/** Three digits for shares, one for seconds and counts. */
function format(value: number): string {
  return Math.abs(value) >= 5 ? value.toFixed(1) : value.toFixed(3);
}

import { readFileSync } from 'node:fs';
import { type DutyRow, duty, dutyNames, type Scheme, type SchemeId } from '../../src/engine/index.ts';

/** A table from which man-down units are taught, as the data file says it; the words of a duty are explained there. */
export interface DoctrineTable {
  /** Distinct in the file. */
  readonly id: string;
  readonly scheme: SchemeId;
  readonly set: string;
  /** The man whom a shutoff locks. */
  readonly star?: string;
  /** Stands so in the source, follows from the roles or rules that it gives, or is common practice. */
  readonly origin: 'published' | 'derived' | 'trade';
  readonly source: string;
  /** What is special about this walk of the ball. */
  readonly about?: string;
  readonly rows: readonly DoctrineRow[];
}

/** Where the ball is, and what each defender does then. */
export interface DoctrineRow {
  readonly ball: string;
  readonly duties: Readonly<Record<string, string>>;
  /** Those whom no duty names, where the table says so. */
  readonly open?: string;
  readonly why?: string;
}

/** Relative to the repository, where its scripts and tests run. */
const dataFile = 'data/doctrine-tables.json';

/** How far from the place that a table names a man may stand, yd: tables name places to the half yard, and units differ by more. */
const placeTolerance = 1.5;

/** Every table of the data file, in its order. */
export function readDoctrineTables(): readonly DoctrineTable[] {
  return (JSON.parse(readFileSync(dataFile, 'utf8')) as { readonly tables: readonly DoctrineTable[] }).tables;
}

/**
 * The first thing that a scheme does otherwise than a row says, in words; `undefined` when it keeps the row.
 * `names` are the set's spots in the play's order.
 */
export function firstFault(
  scheme: Scheme,
  names: readonly string[],
  row: DoctrineRow,
  given: DutyRow,
): string | undefined {
  const named = Object.keys(row.duties).sort().join(' ');
  const men = [...scheme.names].sort().join(' ');
  if (named !== men) return `ball ${row.ball}: the table names ${named}, the scheme has ${men}`;
  for (const [index, defender] of scheme.names.entries()) {
    const cell = row.duties[defender]!;
    if (keepsCell(cell, given, index, names)) continue;
    return `ball ${row.ball}: ${defender} is "${given.duties[index]}" (the table: "${cell}")`;
  }
  if (row.open === undefined || sorted(row.open, ' ') === sorted(given.open.join(' '), ' ')) return undefined;
  return `ball ${row.ball}: open are ${given.open.join(' ') || 'none'} (the table: ${row.open})`;
}

function keepsCell(cell: string, given: DutyRow, defender: number, names: readonly string[]): boolean {
  const kind = given.board.kind[defender]!;
  const a = names[given.board.a[defender]!];
  const b = names[given.board.b[defender]!];
  if (cell === '-') return true;
  if (cell === 'ball') return kind === duty.ball && a === given.ball;
  if (cell.startsWith('at ')) {
    const [x, y] = cell.slice(3).split(',').map(Number);
    const place = given.places[defender]!;
    return kind === duty.place && Math.hypot(place.x - x!, place.y - y!) < placeTolerance;
  }
  if (cell.includes('+')) return kind === duty.split && sorted(`${a}+${b}`, '+') === sorted(cell, '+');
  const [word, who] = cell.includes(' ') ? cell.split(' ') : ['', cell];
  if (word !== '') return dutyNames[kind] === word && a === who;
  return a === who && kind !== duty.place && kind !== duty.ball && kind !== duty.split;
}

function sorted(words: string, between: string): string {
  return words.split(between).sort().join(between);
}

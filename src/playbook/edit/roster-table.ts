import { limits } from '../limits.ts';
import type { Player } from '../schema.ts';
import { guessColumns } from './guess-columns.ts';
import {
  type CellReading,
  readCounts,
  readCrosse,
  readGrade,
  readHand,
  readHeight,
  readLevel,
  readNumber,
  readOnGoal,
  readRole,
  readSpeeds,
  readTimes,
  readYes,
} from './roster-cells.ts';
import { columnOf, type RosterColumn } from './roster-columns.ts';

/** Something in a table that could not be taken as it stands. Rows and columns count from 0, the header included. */
export interface TableProblem {
  readonly severity: 'error' | 'warning' | 'note';
  readonly row: number;
  /** Absent when the whole row is meant. */
  readonly column?: number;
  readonly message: string;
}

export interface RosterReading {
  readonly players: readonly Player[];
  readonly problems: readonly TableProblem[];
  /** What each column was taken for; undefined for those that were left out. */
  readonly columns: readonly (RosterColumn | undefined)[];
  readonly hasHeader: boolean;
}

/**
 * Reads players from the cells of a table, with or without a header. Rows without a number or a name are left out and told; a cell that
 * cannot be read is told and the rest of its row is taken. Never throws.
 */
export function readRosterTable(rows: readonly (readonly string[])[]): RosterReading {
  const problems: TableProblem[] = [];
  const first = rows.findIndex((row) => row.some((cell) => cell.trim() !== ''));
  const top = rows[first];
  if (top === undefined)
    return {
      players: [],
      problems: [{ severity: 'error', row: 0, message: 'The table is empty.' }],
      columns: [],
      hasHeader: false,
    };
  const named = top.map((cell) => columnOf(cell));
  const hasHeader = isHeader(top, named);
  const columns = hasHeader ? onceEach(named, first, problems) : guessColumns(rows.slice(first));
  if (hasHeader) tellUnknown(top, columns, first, problems);
  else tellGuess(columns, first, problems);
  const players: Player[] = [];
  for (const [row, cells] of rows.entries()) {
    if (row < first || (hasHeader && row === first) || cells.every((cell) => cell.trim() === '')) continue;
    const player = readRow(cells, row, columns, players, problems);
    if (player !== undefined) players.push(player);
  }
  return { players, problems, columns, hasHeader };
}

/** A row of words that name columns, and no numbers. */
function isHeader(cells: readonly string[], named: readonly (RosterColumn | undefined)[]): boolean {
  const known = named.filter((column) => column !== undefined).length;
  const filled = cells.filter((cell) => cell.trim() !== '').length;
  const hasNumber = cells.some((cell) => readNumber(cell).kind === 'read');
  return known > 0 && !hasNumber && known * 2 >= filled;
}

function onceEach(
  named: readonly (RosterColumn | undefined)[],
  row: number,
  problems: TableProblem[],
): readonly (RosterColumn | undefined)[] {
  const seen = new Set<string>();
  return named.map((column, i) => {
    if (column === undefined) return undefined;
    const key = keyOf(column);
    if (!seen.has(key)) {
      seen.add(key);
      return column;
    }
    problems.push({
      severity: 'warning',
      row,
      column: i,
      message: 'Another column says the same; this one is left out.',
    });
    return undefined;
  });
}

function keyOf(column: RosterColumn): string {
  switch (column.kind) {
    case 'grade':
      return column.grade;
    case 'speed':
      return column.of;
    default:
      return column.kind;
  }
}

function tellUnknown(
  cells: readonly string[],
  columns: readonly (RosterColumn | undefined)[],
  row: number,
  problems: TableProblem[],
): void {
  for (const [column, cell] of cells.entries()) {
    if (columns[column] !== undefined || cell.trim() === '' || columnOf(cell) !== undefined) continue;
    problems.push({
      severity: 'note',
      row,
      column,
      message: `"${shortened(cell)}" is no column that is known; it is left out.`,
    });
  }
}

function tellGuess(columns: readonly (RosterColumn | undefined)[], row: number, problems: TableProblem[]): void {
  for (const [column, taken] of columns.entries()) {
    const words = taken === undefined ? 'left out' : `taken for ${taken.kind}`;
    problems.push({ severity: 'note', row, column, message: `There is no header: this column is ${words}.` });
  }
}

function readRow(
  cells: readonly string[],
  row: number,
  columns: readonly (RosterColumn | undefined)[],
  before: readonly Player[],
  problems: TableProblem[],
): Player | undefined {
  const found: FoundPlayer = { grades: {}, measured: {} };
  for (const [column, what] of columns.entries()) {
    const text = (cells[column] ?? '').trim();
    if (what === undefined || text === '') continue;
    const reading = take(what, text, found);
    const say = (severity: TableProblem['severity'], why: string) =>
      problems.push({ severity, row, column, message: `"${shortened(text)}" ${why}.` });
    if (reading.kind === 'unread') say('error', `${reading.why}; it is left out`);
    else if (reading.doubt !== undefined) say('warning', reading.doubt);
  }
  return finish(found, row, before, problems);
}

/** A row while it is read. */
interface FoundPlayer {
  number?: number;
  name?: string;
  firstName?: string;
  lastName?: string;
  hand?: Player['hand'];
  crosse?: NonNullable<Player['crosse']>;
  role?: NonNullable<Player['role']>;
  level?: NonNullable<Player['level']>;
  absent?: boolean;
  notes?: string;
  grades: NonNullable<Player['grades']>;
  measured: NonNullable<Player['measured']>;
}

function take(column: RosterColumn, text: string, found: FoundPlayer): CellReading<unknown> {
  const keep = <T>(reading: CellReading<T>, set: (value: T) => void): CellReading<T> => {
    if (reading.kind === 'read') set(reading.value);
    return reading;
  };
  switch (column.kind) {
    case 'number':
      return keep(readNumber(text), (value) => (found.number = value));
    case 'name':
    case 'firstName':
    case 'lastName':
      found[column.kind] = text;
      return { kind: 'read', value: text };
    case 'notes':
      return keep(readNote(text), (value) => (found.notes = value));
    case 'hand':
      return keep(readHand(text), (value) => (found.hand = value));
    case 'crosse':
      return keep(readCrosse(text), (value) => (found.crosse = value));
    case 'role':
      return keep(readRole(text), (value) => (found.role = value));
    case 'level':
      return keep(readLevel(text), (value) => (found.level = value));
    case 'absent':
      return keep(readYes(text), (value) => (found.absent = value));
    case 'present':
      return keep(readYes(text), (value) => (found.absent = !value));
    case 'grade':
      return keep(readGrade(text), (value) => (found.grades[column.grade] = value));
    case 'speed':
      return keep(several(readSpeeds(text, column.unit)), (value) => (found.measured[column.of] = value));
    case 'sprint':
      return keep(several(readTimes(text)), (value) => (found.measured.sprint20ydSeconds = value));
    case 'wallBall':
      return keep(several(readCounts(text)), (value) => (found.measured.wallBallIn30s = value));
    case 'onGoal':
      return keep(readOnGoal(text), (value) => (found.measured.onGoal = value));
    case 'height':
      return keep(readHeight(text, column.unit), (value) => (found.measured.heightCm = value));
    default:
      return exhaustive(column);
  }
}

function readNote(text: string): CellReading<string> {
  return text.length <= limits.note
    ? { kind: 'read', value: text }
    : { kind: 'unread', why: `has more than ${limits.note} letters` };
}

function several(reading: CellReading<number[]>): CellReading<number[]> {
  if (reading.kind === 'unread' || reading.value.length <= limits.readings) return reading;
  return { kind: 'unread', why: `holds more than ${limits.readings} readings` };
}

function finish(
  found: FoundPlayer,
  row: number,
  before: readonly Player[],
  problems: TableProblem[],
): Player | undefined {
  const { number, hand, role, level, absent, notes, grades, measured } = found;
  const name = nameOf(found);
  const leaveOut = (message: string): undefined => {
    problems.push({ severity: 'error', row, message: `${message} The row is left out.` });
  };
  if (number === undefined)
    return leaveOut(name === '' ? 'There is no number and no name.' : `${shortened(name)} has no number.`);
  if (name === '') return leaveOut(`Number ${number} has no name.`);
  if (name.length > limits.name) return leaveOut(`A name has at most ${limits.name} letters.`);
  const other = before.find((player) => player.number === number);
  if (other !== undefined) return leaveOut(`${other.name} wears ${number} already.`);
  if (hand === undefined) problems.push({ severity: 'warning', row, message: `${name} has no hand: right was taken.` });
  const crosse = found.crosse ?? crosseOf(role);
  return {
    number,
    name,
    hand: hand ?? 'right',
    ...(crosse !== undefined && { crosse }),
    ...(Object.keys(grades).length > 0 && { grades }),
    ...(Object.keys(measured).length > 0 && { measured }),
    ...(absent === true && { absent }),
    ...(role !== undefined && { role }),
    ...(level !== undefined && { level }),
    ...(notes !== undefined && { notes }),
  };
}

/** "Arden, Noel" in one cell, or the two in two. */
function nameOf({ name, firstName, lastName }: FoundPlayer): string {
  const whole = name ?? [firstName, lastName].filter((part) => part !== undefined).join(' ');
  const turned = name === undefined ? null : /^([^,]+),\s*([^,]+)$/.exec(whole);
  return (turned === null ? whole : `${turned[2]} ${turned[1]}`).trim();
}

/** The crosse that goes with what he plays, when the table does not say. */
function crosseOf(role: Player['role']): Player['crosse'] {
  if (role === 'goalkeeper') return 'goalkeeper';
  return role === 'defense' || role === 'lsm' ? 'pole' : undefined;
}

function shortened(text: string): string {
  return text.length > longestShown ? `${text.slice(0, longestShown)}...` : text;
}

const longestShown = 40;

function exhaustive(column: never): never {
  throw new TypeError(`unknown column: ${JSON.stringify(column)}`);
}

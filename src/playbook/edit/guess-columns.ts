import { type CellReading, readCrosse, readHand, readNumber, readRole } from './roster-cells.ts';
import type { RosterColumn } from './roster-columns.ts';

/** What the columns of a table without a header hold, by what stands in them; undefined for those that nothing can be said of. */
export function guessColumns(rows: readonly (readonly string[])[]): readonly (RosterColumn | undefined)[] {
  const width = Math.max(...rows.map((row) => row.length));
  const cells = Array.from({ length: width }, (_, column) =>
    rows.map((row) => (row[column] ?? '').trim()).filter((cell) => cell !== ''),
  );
  const taken: (RosterColumn | undefined)[] = Array.from({ length: width }, () => undefined);
  const give = (
    kind: Exclude<RosterColumn, { grade: unknown } | { of: unknown } | { unit: unknown }>['kind'],
    fits: (texts: readonly string[]) => boolean,
  ) => {
    const column = cells.findIndex((texts, i) => taken[i] === undefined && texts.length > 0 && fits(texts));
    if (column >= 0) taken[column] = { kind };
  };
  give('number', (texts) => new Set(texts).size === texts.length && allRead(texts, readNumber));
  give('hand', (texts) => allRead(texts, readHand));
  give('role', (texts) => allRead(texts, readRole));
  give('crosse', (texts) => allRead(texts, readCrosse));
  give('name', (texts) => texts.every((text) => /\p{L}{2}/u.test(text)));
  // "Noel | Arden": the column after the name, when it holds single words as the name does.
  const name = taken.findIndex((column) => column?.kind === 'name');
  const next = cells[name + 1];
  const oneWord = (texts: readonly string[] | undefined) =>
    texts !== undefined && texts.length > 0 && texts.every((text) => /^[\p{L}'’.-]{2,}$/u.test(text));
  if (name >= 0 && taken[name + 1] === undefined && oneWord(cells[name]) && oneWord(next)) {
    taken[name] = { kind: 'firstName' };
    taken[name + 1] = { kind: 'lastName' };
  }
  return taken;
}

function allRead(texts: readonly string[], reader: (text: string) => CellReading<unknown>): boolean {
  return texts.every((text) => reader(text).kind === 'read');
}

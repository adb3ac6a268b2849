import Papa from 'papaparse';
import { type Player, writeRosterTable } from '../../playbook/index.ts';

/** The cells of a table that was copied from a spreadsheet, or that a CSV file holds. Tabs, commas or semicolons part them, as the text itself shows. */
export function readTableText(text: string): readonly (readonly string[])[] {
  // The byte order mark that some spreadsheets write is no part of the first cell.
  const plain = text.replace(/^\uFEFF/, '');
  const firstLine = plain.slice(0, plain.search(/[\r\n]|$/));
  // Names hold commas and readings semicolons: where there are tabs, nothing else parts cells.
  const delimiter = firstLine.includes('\t') ? '\t' : '';
  return Papa.parse<string[]>(plain, { delimiter, skipEmptyLines: 'greedy' }).data;
}

/** The cells that a spreadsheet put on the clipboard: parted by tabs, empty rows kept in their places. */
export function readPastedCells(text: string): readonly (readonly string[])[] {
  return Papa.parse<string[]>(text.replace(/\r?\n$/, ''), { delimiter: '\t' }).data;
}

/** Rows as the text of a CSV file, which every spreadsheet opens. A cell that begins like a formula is written as text, so that no spreadsheet runs what somebody typed. */
export function tableCsv(rows: readonly (readonly string[])[]): string {
  return `${Papa.unparse(rows as string[][], { escapeFormulae: true, newline: '\r\n' })}\r\n`;
}

/** The roster as the text of a CSV file. */
export function rosterCsv(roster: readonly Player[]): string {
  return tableCsv(writeRosterTable(roster));
}

/** The text of a file, in whichever of the usual ways a spreadsheet wrote it: UTF-8, UTF-16 with its mark, or the old Windows letters. */
export function decodeTable(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

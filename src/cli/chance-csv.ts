import Papa from 'papaparse';

/** The rows of a CSV file (RFC 4180; commas, semicolons or tabs, as the file itself shows), empty ones too, so that lines can be told. */
export function readCsv(text: string): readonly (readonly string[])[] {
  // The byte order mark that some spreadsheets write is no part of the first cell.
  return Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false }).data;
}

/** Rows as the text of a CSV file. A cell that begins like a formula is written as text, so that no spreadsheet runs what somebody typed. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return `${Papa.unparse(rows as string[][], { escapeFormulae: true, newline: '\r\n' })}\r\n`;
}

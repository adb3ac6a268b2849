import Papa from 'papaparse';

/** The rows of a table of man-ups, empty ones too, so that lines can be told. Tabs, commas or semicolons part its cells, as the text itself shows. */
export function readTable(text: string): readonly (readonly string[])[] {
  const plain = text.replace(/^\uFEFF/, '');
  if (plain.trim() === '') return [];
  return Papa.parse<string[]>(plain, { skipEmptyLines: false }).data;
}

/** Rows as the text of a CSV file, which every spreadsheet opens. A cell that begins like a formula is written as text. */
export function tableCsv(rows: readonly (readonly string[])[]): string {
  return `${Papa.unparse(rows as string[][], { escapeFormulae: true, newline: '\r\n' })}\r\n`;
}

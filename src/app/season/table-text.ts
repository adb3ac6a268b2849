import Papa from 'papaparse';

/** The rows of a table of chances, empty ones too, so that lines can be told. Tabs, commas or semicolons part its cells, as the text itself shows. */
export function readTable(text: string): readonly (readonly string[])[] {
  const plain = text.replace(/^\uFEFF/, '');
  if (plain.trim() === '') return [];
  return Papa.parse<string[]>(plain, { skipEmptyLines: false }).data;
}

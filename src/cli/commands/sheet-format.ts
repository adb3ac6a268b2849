import { pagesToPdf } from '../../press/index.ts';
import { type PaperName, pageToSvg } from '../../render/index.ts';
import type { PrintedPages, SheetKind } from '../../teach/index.ts';
import { shown } from '../conditions.ts';
import { badUse } from '../failure.ts';
import { readPageFonts } from '../press/page-fonts.ts';
import { pageToPng } from '../press/page-to-png.ts';

const formats = ['pdf', 'svg', 'png'] as const;
/** As what pages are written. */
export type SheetFormat = (typeof formats)[number];

/** The format by the ending of a file's name; a picture holds one page, so only a sheet can be one. */
export function readSheetFormat(path: string, kind: SheetKind): SheetFormat {
  const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
  const format = formats.find((one) => one === ending);
  if (format === undefined)
    throw badUse(`invalid --out: ${shown(path)} (expected a file that ends in .pdf, .svg or .png).`);
  if (format !== 'pdf' && kind !== 'sheet' && kind !== 'opponent')
    throw badUse(`invalid --out: ${shown(path)} (several pages go into one file only as .pdf).`);
  return format;
}

/** The same for the pages of a practice: a picture is of its plan alone. */
export function readPracticeFormat(path: string): SheetFormat {
  return readSheetFormat(path, 'sheet');
}

/** The paper by its name. */
export function readPaper(raw: string): PaperName {
  const name = raw.toLowerCase();
  if (name === 'letter' || name === 'a4') return name;
  throw badUse(`invalid --paper: ${shown(raw)} (expected letter or a4).`);
}

/** The file's content. */
export async function written(
  { pages, title, outline }: PrintedPages,
  format: SheetFormat,
  made: Date,
): Promise<string | Uint8Array> {
  switch (format) {
    case 'pdf':
      return pagesToPdf(pages, readPageFonts(), { title, made: made.toISOString(), ...(outline && { outline }) });
    case 'svg':
      return pageToSvg(pages[0]!);
    case 'png':
      return pageToPng(pages[0]!);
    default:
      return exhaustive(format);
  }
}

function exhaustive(format: never): never {
  throw new TypeError(`unknown format: ${JSON.stringify(format)}`);
}

import PDFDocument from 'pdfkit';
import SVGtoPDF from 'svg-to-pdfkit';
import {
  type Bookmark,
  type Page,
  type PageBox,
  type PageMark,
  type PagePicture,
  type PageRule,
  type PageText,
  pageInks,
  pageTint,
  pictureToSvg,
  type Weight,
} from '../render/index.ts';

/** The files of the letters of our pages, TrueType: they go into each PDF. */
export type PageFonts = Readonly<Record<Weight, Uint8Array>>;

/** What a PDF says of itself. */
export interface PdfNotes {
  readonly title: string;
  /** The day it is made, ISO 8601. */
  readonly made: string;
  /** What can be jumped to; each page by its title when left out. */
  readonly outline?: readonly Bookmark[];
}

/**
 * Pages as one PDF: lines and letters, no pixels, with the letters' shapes inside the file and bookmarks. RangeError when there is no page, and
 * for a bookmark of a page that is not there.
 */
export async function pagesToPdf(
  pages: readonly Page[],
  fonts: PageFonts,
  { title, made, outline }: PdfNotes,
): Promise<Uint8Array> {
  if (pages.length === 0) throw new RangeError('invalid pages: none (expected at least one)');
  const document = new PDFDocument({
    autoFirstPage: false,
    // An outline's entry belongs to the page that is open when it is made: all pages stay open until the outline is written.
    bufferPages: true,
    margin: 0,
    // Ours are registered below: in a browser there is no other to begin with.
    font: '',
    info: { Title: title, Creator: 'Sliderule', CreationDate: new Date(made) },
    lang: 'en',
    displayTitle: true,
  });
  const done = bytesOf(document);
  for (const [weight, file] of Object.entries(fonts)) document.registerFont(weight, file);
  for (const page of pages) {
    const { width, height } = page;
    document.addPage({ size: [width, height], margin: 0 });
    for (const mark of page.marks) drawMark(document, mark);
  }
  const bookmarks = outline ?? pages.map(({ title }, page): Bookmark => ({ title, page, children: [] }));
  addBookmarks(document, document.outline, bookmarks);
  document.end();
  return done;
}

function addBookmarks(document: PDFKit.PDFDocument, above: PDFKit.PDFOutline, bookmarks: readonly Bookmark[]): void {
  for (const { title, page, children } of bookmarks) {
    if (document.bufferedPageRange().count <= page)
      throw new RangeError(`invalid bookmark: page ${page} of "${title}"`);
    document.switchToPage(page);
    addBookmarks(document, above.addItem(title), children);
  }
}

function drawMark(document: PDFKit.PDFDocument, mark: PageMark): void {
  switch (mark.kind) {
    case 'text':
      drawText(document, mark);
      break;
    case 'rule':
      drawRule(document, mark);
      break;
    case 'box':
      drawBox(document, mark);
      break;
    case 'picture':
      drawPicture(document, mark);
      break;
    default:
      exhaustive(mark);
  }
}

// Letters as whole lines, so that words can be searched for and copied.
function drawText(document: PDFKit.PDFDocument, { at, text, size, weight, tone, anchor }: PageText): void {
  document.font(weight).fontSize(size).fillColor(pageInks[tone]);
  const share = { start: 0, middle: 0.5, end: 1 }[anchor];
  const left = at.x - share * document.widthOfString(text);
  document.text(text, left, at.y, { lineBreak: false, baseline: 'alphabetic' });
}

function drawRule(document: PDFKit.PDFDocument, { from, to, width, dash }: PageRule): void {
  document.save().lineWidth(width).strokeColor(pageInks.ink);
  if (dash !== undefined) document.dash(dash[0], { space: dash[1] });
  document.moveTo(from.x, from.y).lineTo(to.x, to.y).stroke().restore();
}

function drawBox(document: PDFKit.PDFDocument, { left, top, width, height, fill, edge }: PageBox): void {
  document.save();
  if (fill !== 'none') {
    document.rect(left, top, width, height).fill(fill === 'ink' ? pageInks.ink : pageTint);
  }
  if (edge > 0) document.rect(left, top, width, height).lineWidth(edge).stroke(pageInks.ink);
  document.restore();
}

function drawPicture(document: PDFKit.PDFDocument, picture: PagePicture): void {
  const { left, top, width, height } = picture;
  SVGtoPDF(document, pictureToSvg({ ...picture, left: 0, top: 0 }), left, top, {
    width,
    height,
    assumePt: true,
    fontCallback: (_family: string, isBold: boolean) => (isBold ? 'bold' : 'regular'),
    warningCallback: (warning: string) => {
      throw new TypeError(`a page holds what a PDF cannot: ${warning}`);
    },
  });
}

function exhaustive(mark: never): never {
  throw new TypeError(`unknown mark: ${JSON.stringify(mark)}`);
}

function bytesOf(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const parts: Uint8Array[] = [];
    document.on('data', (part: Uint8Array) => parts.push(part));
    document.on('end', () => resolve(joined(parts)));
    document.on('error', reject);
  });
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

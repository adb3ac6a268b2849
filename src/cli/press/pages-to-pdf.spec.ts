import { Resvg } from '@resvg/resvg-js';
import type { PDFDocumentProxy } from 'pdfjs-dist';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { demoPlaybook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { pagesToPdf } from '../../press/index.ts';
import { drawnField, type Page, pageToSvg, playSheet, printedBook, type SheetContent } from '../../render/index.ts';
import { pageFontFiles, readPageFonts } from './page-fonts.ts';
import { pageToPng } from './page-to-png.ts';

const made = '2026-03-01';
const contents = demoPlaybook.plays.map(
  ({ id }): SheetContent => ({
    play: toEnginePlay(demoPlaybook, id),
    set: '2-3-1',
    team: 'Łódź Harriers', // A name beyond the Latin of the West.
    side: 'right',
    field: drawnField(ruleCodeOf(demoPlaybook).markings),
    men: [],
    worths: [],
    trials: 0,
    version: 'abc123',
    date: '1 March 2026',
    paper: 'letter',
  }),
);
const pages = contents.map((content): Page => playSheet(content));

/** Read back by a reader that is not ours: pdf.js. */
function read(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
}

async function wordsOf(pdf: PDFDocumentProxy, number: number): Promise<string> {
  const { items } = await (await pdf.getPage(number)).getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join('');
}

describe('a PDF of pages', async () => {
  const bytes = await pagesToPdf(pages, readPageFonts(), { title: 'Three sheets', made });
  const pdf = await read(bytes);

  it('has them in their order and size, each with a bookmark', async () => {
    expect(pdf.numPages).toBe(pages.length);
    for (let number = 1; number <= pages.length; number++) {
      expect((await pdf.getPage(number)).view).toEqual([0, 0, 612, 792]);
    }
    const outline = await pdf.getOutline();
    expect(outline.map(({ title }) => title)).toEqual(pages.map(({ title }) => title));
    const { info } = await pdf.getMetadata();
    expect(info).toMatchObject({ Title: 'Three sheets', Creator: 'Sliderule' });
  });

  it('can be searched for every word that stands on it', async () => {
    for (const [at, { marks }] of pages.entries()) {
      const found = (await wordsOf(pdf, at + 1)).replace(/\s/g, '');
      for (const mark of marks) {
        if (mark.kind === 'text') expect(found).toContain(mark.text.replace(/\s/g, ''));
      }
    }
  });

  it('holds its letters’ shapes, and no pixels', () => {
    const text = Buffer.from(bytes).toString('latin1');
    const fonts = new Set(text.match(/\/BaseFont \/[A-Z]{6}\+Inter-(Regular|Bold)/g));
    expect([...fonts].some((name) => name.endsWith('Regular'))).toBe(true);
    expect([...fonts].some((name) => name.endsWith('Bold'))).toBe(true);
    expect(text.match(/\/FontFile2 /g)!.length).toBeGreaterThanOrEqual(2);
    expect(text).not.toContain('/Subtype /Image');
  });

  it('looks like the picture that another drawer makes of the page', async () => {
    const width = 612;
    const page = await pdf.getPage(1);
    // biome-ignore lint/suspicious/noExplicitAny: the factory that makes a canvas in Node has no type
    const { canvas, context } = (pdf.canvasFactory as any).create(width, 792);
    await page.render({ canvas, canvasContext: context, viewport: page.getViewport({ scale: 1 }) }).promise;
    const ours = greys(context.getImageData(0, 0, width, 792).data);
    const font = { fontFiles: Object.values(pageFontFiles), loadSystemFonts: false, defaultFontFamily: 'Inter' };
    const theirs = greys(
      new Resvg(pageToSvg(pages[0]!), { fitTo: { mode: 'width', value: width }, font }).render().pixels,
    );
    expect(theirs).toHaveLength(ours.length);
    // Two drawers smooth edges in their own ways: blocks of 12 by 12 pixels are as dark as each other.
    const [one, other] = [blocks(ours, width), blocks(theirs, width)];
    const apart = one.filter((dark, at) => Math.abs(dark - other[at]!) > 12).length;
    expect(apart / one.length).toBeLessThan(0.01);
    expect(one.filter((dark) => dark < 245).length / one.length).toBeGreaterThan(0.1);
  });

  it('is none of no page', async () => {
    await expect(pagesToPdf([], readPageFonts(), { title: '', made })).rejects.toThrow(RangeError);
  });
});

describe('a PDF of a whole playbook', async () => {
  const book = printedBook(contents);
  const pdf = await read(await pagesToPdf(book.pages, readPageFonts(), { title: 'Book', made, outline: book.outline }));

  it('has every page in its size, with every word on it', async () => {
    expect(pdf.numPages).toBe(book.pages.length);
    for (const [at, { width, height, marks }] of book.pages.entries()) {
      expect((await pdf.getPage(at + 1)).view).toEqual([0, 0, width, height]);
      const found = (await wordsOf(pdf, at + 1)).replace(/\s/g, '');
      for (const mark of marks) if (mark.kind === 'text') expect(found).toContain(mark.text.replace(/\s/g, ''));
    }
  });

  it('has bookmarks by play, below each its pages, that lead where they say', async () => {
    const outline = await pdf.getOutline();
    expect(outline.map(({ title }) => title)).toEqual(book.outline.map(({ title }) => title));
    for (const [at, { items, dest }] of outline.entries()) {
      const { page, children } = book.outline[at]!;
      expect(await pageOf(dest)).toBe(page);
      expect(items.map(({ title }) => title)).toEqual(children.map(({ title }) => title));
      for (const [below, item] of items.entries()) expect(await pageOf(item.dest)).toBe(children[below]!.page);
    }
  });

  it('draws what is pale as pale, also by another drawer', async () => {
    const at = book.pages.findIndex(({ title }) => title === 'Lantern: WR');
    const shown = await pdf.getPage(at + 1);
    // biome-ignore lint/suspicious/noExplicitAny: the factory that makes a canvas in Node has no type
    const { canvas, context } = (pdf.canvasFactory as any).create(612, 792);
    await shown.render({ canvas, canvasContext: context, viewport: shown.getViewport({ scale: 1 }) }).promise;
    const darkest = (left: number, width: number): number =>
      Math.min(...greys(context.getImageData(left, 40, width, 170).data));
    // His home picture is at the upper right: he stands at its right edge, the others left of him.
    expect(darkest(540, 34)).toBeLessThan(60);
    expect(darkest(394, 140)).toBeGreaterThan(120);
    expect(darkest(394, 140)).toBeLessThan(200);
  });

  async function pageOf(dest: string | readonly unknown[] | null): Promise<number> {
    if (!Array.isArray(dest)) throw new TypeError('a bookmark without a place');
    return pdf.getPageIndex(dest[0]);
  }
});

it('a bookmark leads to a page that is there', async () => {
  const outline = [{ title: 'Nowhere', page: pages.length, children: [] }];
  await expect(pagesToPdf(pages, readPageFonts(), { title: '', made, outline })).rejects.toThrow(RangeError);
});

it('a PNG of a page is as many dots wide as 200 an inch', () => {
  const png = Buffer.from(pageToPng(pages[0]!));
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1700, 2200]);
});

/** How light each pixel is, 0 black to 255 white. */
function greys(pixels: ArrayLike<number>): readonly number[] {
  return Array.from({ length: pixels.length / 4 }, (_, at) => {
    const [red, green, blue] = [pixels[4 * at]!, pixels[4 * at + 1]!, pixels[4 * at + 2]!];
    return 0.299 * red + 0.587 * green + 0.114 * blue;
  });
}

function blocks(greys: readonly number[], width: number, side = 12): readonly number[] {
  const [across, down] = [Math.floor(width / side), Math.floor(greys.length / width / side)];
  return Array.from({ length: across * down }, (_, block) => {
    const [left, top] = [(block % across) * side, Math.floor(block / across) * side];
    let sum = 0;
    for (let y = 0; y < side; y++) for (let x = 0; x < side; x++) sum += greys[(top + y) * width + left + x]!;
    return sum / (side * side);
  });
}

import { Resvg } from '@resvg/resvg-js';
import type { PDFDocumentProxy } from 'pdfjs-dist';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { demoPlaybook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { drawnField, type Page, pageToSvg, playSheet } from '../../render/index.ts';
import { pageFontFiles } from './page-fonts.ts';
import { pageToPng } from './page-to-png.ts';
import { pagesToPdf } from './pages-to-pdf.ts';

const made = '2026-03-01';
const pages = demoPlaybook.plays.map(({ id }): Page => {
  const play = toEnginePlay(demoPlaybook, id);
  return playSheet({
    play,
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
  });
});

/** Read back by a reader that is not ours: pdf.js. */
function read(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
}

async function wordsOf(pdf: PDFDocumentProxy, number: number): Promise<string> {
  const { items } = await (await pdf.getPage(number)).getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join('');
}

describe('a PDF of pages', async () => {
  const bytes = await pagesToPdf(pages, { title: 'Three sheets', made });
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
    await expect(pagesToPdf([], { title: '', made })).rejects.toThrow(RangeError);
  });
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

import { Resvg } from '@resvg/resvg-js';
import { type Page, pageFont, pageToSvg } from '../../render/index.ts';
import { pageFontFiles } from './page-fonts.ts';

/** Dots an inch: sharp in print, and small enough to send. */
const dotsPerInch = 200;
const pointsPerInch = 72;

/** A page as a PNG picture. */
export function pageToPng(page: Page): Uint8Array {
  const drawing = new Resvg(pageToSvg(page), {
    fitTo: { mode: 'width', value: Math.round((page.width * dotsPerInch) / pointsPerInch) },
    font: { fontFiles: Object.values(pageFontFiles), loadSystemFonts: false, defaultFontFamily: pageFont },
  });
  return drawing.render().asPng();
}

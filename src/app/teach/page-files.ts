import { type Page, pageToSvg } from '../../render/index.ts';
import type { PrintedPages } from '../../teach/index.ts';
import { pageLetters } from './page-letters.ts';

/** The pages as one PDF, made in the browser with its letters inside. What makes it is loaded now: nobody who does not print pays for it. */
export async function pdfOf({ pages, title, outline }: PrintedPages, made: string): Promise<Blob> {
  const [{ pagesToPdf }, letters] = await Promise.all([import('../../press/index.ts'), pageLetters()]);
  const bytes = await pagesToPdf(pages, letters, { title, made, ...(outline && { outline }) });
  return new Blob([bytes.slice().buffer], { type: 'application/pdf' });
}

/** A page as an SVG file that carries its letters, so that it looks the same wherever it is opened. */
export async function svgOf(page: Page): Promise<string> {
  const { regular, bold } = await pageLetters();
  const style = [
    ['400', regular],
    ['700', bold],
  ] as const;
  const faces = style.map(
    ([weight, bytes]) =>
      `@font-face{font-family:Inter;font-weight:${weight};src:url(data:font/ttf;base64,${base64Of(bytes)})}`,
  );
  return pageToSvg(page).replace('<title>', `<style>${faces.join('')}</style>\n<title>`);
}

/** Dots an inch: sharp in print, and small enough to send. */
const dotsPerInch = 200;
const pointsPerInch = 72;

/** A page as a PNG picture. Rejects where the browser cannot draw it. */
export async function pngOf(page: Page): Promise<Blob> {
  const picture = new Image();
  picture.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(await svgOf(page))}`;
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round((page.width * dotsPerInch) / pointsPerInch);
  canvas.height = Math.round((page.height * dotsPerInch) / pointsPerInch);
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob === null ? reject(new Error('the picture could not be made')) : resolve(blob)),
      'image/png',
    );
  });
}

function base64Of(bytes: Uint8Array): string {
  let binary = '';
  // In parts: a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += part) binary += String.fromCharCode(...bytes.subarray(at, at + part));
  return btoa(binary);
}

const part = 0x8000;

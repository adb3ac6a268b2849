import { escapeXml, printedMarksToSvg } from '../svg.ts';
import { pxPerYard } from '../svg-styles.ts';
import type { Page, PageBox, PageMark, PagePicture, PageText, Tone } from './page.ts';

/** The family under which pages ask for their letters: embedded in a PDF, on the screen the workbench's own. */
export const pageFont = 'Inter';

/** Colours of the tones, and of a tinted box: all of them are told apart in grey print. */
export const pageInks: Readonly<Record<Tone, string>> = { ink: '#16181d', quiet: '#50565e', paper: '#ffffff' };
export const pageTint = '#eef0f2';

/** How much is left of what is drawn pale: enough to be seen in a poor copy. */
const paleness = 0.45;

/** One page as a whole SVG file, in points. The same page gives the same text on every machine. */
export function pageToSvg(page: Page): string {
  const { width, height, title, description, marks } = page;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${number(width)} ${number(height)}" width="${number(width)}pt" height="${number(height)}pt" role="img" aria-label="${escapeXml(title)}" font-family="${pageFont}, system-ui, sans-serif">`,
    `<title>${escapeXml(title)}</title>`,
    `<desc>${escapeXml(description)}</desc>`,
    `<rect width="${number(width)}" height="${number(height)}" fill="#ffffff"/>`,
    ...marks.map(markToSvg),
    '</svg>',
    '',
  ].join('\n');
}

function markToSvg(mark: PageMark): string {
  switch (mark.kind) {
    case 'text':
      return textToSvg(mark);
    case 'rule': {
      const dash = mark.dash === undefined ? '' : ` stroke-dasharray="${mark.dash.map(number).join(' ')}"`;
      return `<line x1="${number(mark.from.x)}" y1="${number(mark.from.y)}" x2="${number(mark.to.x)}" y2="${number(mark.to.y)}" stroke="${pageInks.ink}" stroke-width="${number(mark.width)}"${dash}/>`;
    }
    case 'box':
      return boxToSvg(mark);
    case 'picture':
      return pictureToSvg(mark);
    default:
      return exhaustive(mark);
  }
}

function textToSvg({ at, text, size, weight, tone, anchor }: PageText): string {
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  const end = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text x="${number(at.x)}" y="${number(at.y)}" font-size="${number(size)}" fill="${pageInks[tone]}"${bold}${end}>${escapeXml(text)}</text>`;
}

function boxToSvg({ left, top, width, height, fill, edge }: PageBox): string {
  const inside = { none: 'none', tint: pageTint, ink: pageInks.ink }[fill];
  const line = edge > 0 ? ` stroke="${pageInks.ink}" stroke-width="${number(edge)}"` : '';
  return `<rect x="${number(left)}" y="${number(top)}" width="${number(width)}" height="${number(height)}" fill="${inside}"${line}/>`;
}

/** A scene drawn in its own pixels and scaled as a whole into the middle of its place, cut off at its view: an SVG element. */
export function pictureToSvg({ scene, faded, left, top, width, height }: PagePicture): string {
  const { view } = scene;
  const box = `0 0 ${number(view.width * pxPerYard)} ${number(view.height * pxPerYard)}`;
  const pale = faded.length === 0 ? '' : `<g opacity="${paleness}">\n${printedMarksToSvg(faded, view)}\n</g>\n`;
  return `<svg xmlns="http://www.w3.org/2000/svg" x="${number(left)}" y="${number(top)}" width="${number(width)}" height="${number(height)}" viewBox="${box}">\n${pale}${printedMarksToSvg(scene.items, view)}\n</svg>`;
}

/** Hundredths of a point are finer than any printer. */
function number(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

function exhaustive(mark: never): never {
  throw new TypeError(`unknown mark: ${JSON.stringify(mark)}`);
}

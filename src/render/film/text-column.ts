import { textWidth, wrapLines } from '../pages/measure-text.ts';
import type { Weight } from '../pages/page.ts';
import type { FilmInk, FilmText } from './film-marks.ts';

/** From one line to the next, in sizes of its letters, and how far its feet stand below its top. */
export const lineStep = 1.28;
const footAt = 1;

/** Share of a line that is written on: a browser that fits letters to its pixels makes them up to a hundredth wider than they are measured. */
export const widthKept = 0.985;

/** How a paragraph is written. */
export interface TextLook {
  readonly size: number;
  readonly weight: Weight;
  readonly ink: FilmInk;
}

/** Lines of text from `top` down, as wide as `width` at most. */
export function linesAt(lines: readonly string[], left: number, top: number, look: TextLook): readonly FilmText[] {
  return lines.map((text, index) => ({
    kind: 'text',
    text,
    x: left,
    y: top + (index * lineStep + footAt) * look.size,
    anchor: 'start',
    ...look,
  }));
}

/** The same, ended at `right`. */
export function lineEndedAt(text: string, right: number, top: number, look: TextLook): FilmText {
  return { kind: 'text', text, x: right, y: top + footAt * look.size, anchor: 'end', ...look };
}

export function heightOf(lines: number, size: number): number {
  return lines * lineStep * size;
}

/** A text as one line: what has no room ends in three dots. */
export function oneLine(text: string, { size, weight }: TextLook, width: number): string {
  if (textWidth(text, size, weight) <= width) return text;
  let kept = text;
  while (kept !== '' && textWidth(`${kept}…`, size, weight) > width) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
}

/** Free height between two paragraphs, in sizes of their letters. */
const paragraphGap = 0.45;

/** Paragraphs that have room together. */
export interface FittedText {
  readonly size: number;
  readonly paragraphs: readonly (readonly string[])[];
  readonly height: number;
}

/** Paragraphs in the largest of `sizes` (falling) in which all of them have room; in the smallest what has none is left out, with three dots. */
export function fitParagraphs(
  texts: readonly string[],
  sizes: readonly number[],
  weight: Weight,
  { width, height }: { readonly width: number; readonly height: number },
): FittedText {
  const tried = sizes.map((size): FittedText => {
    const paragraphs = texts.map((text) => wrapLines(text, size, weight, width));
    return { size, paragraphs, height: paragraphsHeight(paragraphs, size) };
  });
  const smallest = tried.at(-1);
  if (smallest === undefined) throw new RangeError('missing sizes: a text needs one at least');
  return tried.find((one) => one.height <= height) ?? cutTo(smallest, height);
}

/** What was fitted, from `top` down. */
export function paragraphsAt(
  { size, paragraphs }: FittedText,
  left: number,
  top: number,
  look: Omit<TextLook, 'size'>,
): readonly FilmText[] {
  let at = top;
  return paragraphs.flatMap((lines) => {
    const written = linesAt(lines, left, at, { ...look, size });
    at += heightOf(lines.length, size) + paragraphGap * size;
    return written;
  });
}

function paragraphsHeight(paragraphs: readonly (readonly string[])[], size: number): number {
  const lines = paragraphs.reduce((sum, { length }) => sum + length, 0);
  return heightOf(lines, size) + Math.max(0, paragraphs.length - 1) * paragraphGap * size;
}

function cutTo({ size, paragraphs }: FittedText, height: number): FittedText {
  const kept: (readonly string[])[] = [];
  for (const lines of paragraphs) {
    for (let count = lines.length; count > 0; count -= 1) {
      const part = count === lines.length ? lines : [...lines.slice(0, count - 1), `${lines[count - 1]}…`];
      if (paragraphsHeight([...kept, part], size) > height) continue;
      kept.push(part);
      if (count < lines.length) return { size, paragraphs: kept, height: paragraphsHeight(kept, size) };
      break;
    }
  }
  return { size, paragraphs: kept, height: paragraphsHeight(kept, size) };
}

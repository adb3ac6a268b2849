import { measuredLetters, widths_byLetter } from './inter-widths.ts';
import type { Weight } from './page.ts';

const place_byLetter: ReadonlyMap<string, number> = new Map([...measuredLetters].map((letter, at) => [letter, at]));
/** A letter that was not measured is taken to be as wide as a wide one: rather a gap than an overlap. Thousandths of the size. */
const unknownWidth = 1000;

/** How wide a line of letters is, points. Kerning makes it a little less in print, hardly ever more. */
export function textWidth(text: string, size: number, weight: Weight): number {
  const widths = widths_byLetter[weight];
  let sum = 0;
  for (const letter of text) {
    const place = place_byLetter.get(letter);
    sum += (place === undefined ? undefined : widths[place]) ?? unknownWidth;
  }
  return (sum * size) / 1000;
}

/** A text broken at its spaces into lines of at most `width` points; a longer word stands alone and is broken where it must be. Empty text is no line. */
export function wrapLines(text: string, size: number, weight: Weight, width: number): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(/[ \n]+/).filter((piece) => piece !== '')) {
    for (const piece of piecesOf(word, size, weight, width)) {
      const longer = current === '' ? piece : `${current} ${piece}`;
      if (current === '' || textWidth(longer, size, weight) <= width) {
        current = longer;
        continue;
      }
      lines.push(current);
      current = piece;
    }
  }
  return current === '' ? lines : [...lines, current];
}

/** A word as it is when it fits, else the longest beginnings that do. */
function piecesOf(word: string, size: number, weight: Weight, width: number): readonly string[] {
  if (textWidth(word, size, weight) <= width) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && textWidth(piece + letter, size, weight) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}

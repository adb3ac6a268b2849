import { wrapLines } from '../pages/measure-text.ts';
import { viewpointNote } from '../play-scene.ts';
import type { Film } from './film.ts';
import { type FilmMark, type FilmText, rect } from './film-marks.ts';
import { heightOf, linesAt, type TextLook, widthKept } from './text-column.ts';

/** What stands beside the field before a play begins: the play, the scheme, who plays where, and how this man-up was chosen. */
export function filmTitle(film: Film, part: number): readonly FilmMark[] {
  const { words, margin, letters } = film.layout;
  const { name } = film.clip.schemes[part]!;
  const left = words.left + margin;
  const width = (words.width - 2 * margin) * widthKept;
  const bottom = words.top + words.height - margin;
  const several = film.parts.length > 1 ? ` (${part + 1} of ${film.parts.length})` : '';
  const wanted: readonly Paragraph[] = [
    { texts: [film.clip.play], look: { size: letters.title, weight: 'bold', ink: 'onChosen' }, after: 0.15, most: 2 },
    {
      texts: [`against ${name}${several}`],
      look: { size: letters.titleScheme, weight: 'bold', ink: 'onChosenQuiet' },
      after: 0.7,
      most: 3,
    },
    {
      texts: manLines(film),
      look: { size: letters.scheme, weight: 'regular', ink: 'onChosen' },
      after: 0.8,
      most: 8,
    },
    { texts: [film.clip.team], look: { size: letters.scheme, weight: 'bold', ink: 'onChosen' }, after: 0.4, most: 1 },
    {
      texts: [viewpointNote],
      look: { size: letters.small + 2, weight: 'regular', ink: 'onChosenQuiet' },
      after: 0.4,
      most: 3,
    },
    {
      texts: [film.clip.schemes[part]!.note],
      look: { size: letters.small + 2, weight: 'regular', ink: 'onChosenQuiet' },
      after: 0,
      most: 8,
    },
  ];
  return [
    rect(words.left, words.top, words.width, words.height, 'chosen'),
    ...stacked(wanted, left, words.top + margin, bottom, width),
  ];
}

interface Paragraph {
  readonly texts: readonly string[];
  readonly look: TextLook;
  /** Free height below it, in sizes of its letters. */
  readonly after: number;
  /** Lines at most. */
  readonly most: number;
}

/** From the top down; what has no room whole is left out, the more important above it stays. */
function stacked(
  paragraphs: readonly Paragraph[],
  left: number,
  from: number,
  to: number,
  width: number,
): readonly FilmText[] {
  let top = from;
  return paragraphs.flatMap(({ texts, look, after, most }) => {
    const lines = texts.flatMap((text) => wrapLines(text, look.size, look.weight, width)).slice(0, most);
    const height = heightOf(lines.length, look.size);
    if (top + height > to) return [];
    const marks = linesAt(lines, left, top, look);
    top += height + after * look.size;
    return marks;
  });
}

/** "TR number 7", as many on a line as the form has room for. */
function manLines({ clip, layout }: Film): readonly string[] {
  const men = clip.spots.map(
    (spot, index) => `${spot}\u00a0\u00a0${(clip.men[index] ?? '').replaceAll(' ', '\u00a0')}`,
  );
  const { menOnALine } = layout;
  return Array.from({ length: Math.ceil(men.length / menOnALine) }, (_, row) =>
    men.slice(row * menOnALine, (row + 1) * menOnALine).join(', '),
  );
}

import type { ClipCaption } from '../clip/clip.ts';
import { textWidth, wrapLines } from '../pages/measure-text.ts';
import { viewpointNote } from '../play-scene.ts';
import type { Film, FilmMoment } from './film.ts';
import { type FilmMark, type FilmText, rect } from './film-marks.ts';
import {
  fitParagraphs,
  heightOf,
  lineEndedAt,
  linesAt,
  oneLine,
  paragraphsAt,
  type TextLook,
  widthKept,
} from './text-column.ts';

/** What stands beside the field while a play runs: which play against which scheme, the clock, what happens and what happened. */
export function filmWords(film: Film, moment: FilmMoment): readonly FilmMark[] {
  const { words } = film.layout;
  const foot = footMarks(film);
  const head = headMarks(film, moment);
  const said = saidMarks(film, moment, head.bottom);
  return [
    rect(words.left, words.top, words.width, words.height, 'panel'),
    ...head.marks,
    ...said.marks,
    ...pastMarks(film, moment, said.bottom, foot.top),
    ...foot.marks,
  ];
}

/** Marks and where they end. */
interface Placed {
  readonly marks: readonly FilmMark[];
  readonly bottom: number;
}

/** Height of the line that shows how far the play is, px. */
const progressHeight = 5;

function headMarks({ clip, parts, layout, options }: Film, { part, time }: FilmMoment): Placed {
  const { words, margin, letters, legend } = layout;
  const [left, right] = [words.left + margin, words.left + words.width - margin];
  const head: TextLook = { size: letters.head, weight: 'bold', ink: 'ink' };
  const scheme: TextLook = { size: letters.scheme, weight: 'regular', ink: 'ink' };
  const small: TextLook = { size: letters.small, weight: 'regular', ink: 'quiet' };
  const { end, scheme: shown } = parts[part]!;
  const clock = `${time.toFixed(1)} s`;
  const second = words.top + margin + heightOf(1, letters.head);
  const how = [
    ...(legend ? [] : ['one simulated man-up']),
    ...(parts.length === 1 ? [] : [`${part + 1} of ${parts.length}`]),
    ...speedWords(options.speed),
  ].join(', ');
  const bar = Math.round(second + heightOf(1, letters.scheme) + letters.scheme * 0.3);
  const width = right - left;
  return {
    marks: [
      ...linesAt(
        [oneLine(clip.play, head, width - textWidth(`000${clock}`, head.size, 'bold'))],
        left,
        words.top + margin,
        head,
      ),
      lineEndedAt(clock, right, words.top + margin, head),
      ...linesAt(
        [oneLine(`against ${shown.name}`, scheme, width - textWidth(`00${how}`, small.size, 'regular'))],
        left,
        second,
        scheme,
      ),
      lineEndedAt(how, right, second + (scheme.size - small.size), small),
      rect(left, bar, width, progressHeight, 'rule'),
      rect(left, bar, end <= 0 ? width : (width * time) / end, progressHeight, 'chosen'),
    ],
    bottom: bar + progressHeight,
  };
}

function speedWords(speed: number): readonly string[] {
  if (speed === 1) return [];
  return [speed === 0.5 ? 'half speed' : `${speed} times real speed`];
}

/** Room inside the frame of what happens now, px, and the bar at its left edge. */
const saidPadding = 16;
const saidBar = 7;

function saidMarks({ parts, layout }: Film, { part, time }: FilmMoment, from: number): Placed {
  const { words, margin, letters, saidHeight } = layout;
  const [left, width] = [words.left + margin, words.width - 2 * margin];
  const top = from + margin * 0.5;
  const padding = Math.min(saidPadding, margin);
  const room = { width: (width - saidBar - 2 * padding) * widthKept, height: saidHeight - 1.6 * padding };
  const { now } = saidAt(parts[part]!.scheme.captions, time);
  const texts = now.length === 0 ? ['The play is about to begin.'] : now.map(([, text]) => text);
  const fitted = fitParagraphs(texts, letters.said, 'bold', room);
  return {
    marks: [
      rect(left, top, width, saidHeight, 'tint'),
      rect(left, top, saidBar, saidHeight, 'chosen'),
      ...paragraphsAt(fitted, left + saidBar + padding, top + 0.8 * padding, { weight: 'bold', ink: 'ink' }),
    ],
    bottom: top + saidHeight,
  };
}

/** What happens this soon after one another is said together, s: a catch, and the step that it begins. */
const saidTogether = 0.25;

/** What is said at `time`: the last thing that happened with what came with it, and all that was said before, in order of time. */
export function saidAt(
  captions: readonly ClipCaption[],
  time: number,
): { readonly now: readonly ClipCaption[]; readonly before: readonly ClipCaption[] } {
  const past = captions.filter(([from]) => from <= time + 1e-6);
  const since = (past.at(-1)?.[0] ?? 0) - saidTogether - 1e-6;
  return { now: past.filter(([from]) => from >= since), before: past.filter(([from]) => from < since) };
}

/** The newest first, each with its moment, as many as have room. */
function pastMarks({ parts, layout }: Film, { part, time }: FilmMoment, from: number, to: number): readonly FilmText[] {
  const { words, margin, letters } = layout;
  const look: TextLook = { size: letters.past, weight: 'regular', ink: 'quiet' };
  const left = words.left + margin;
  const clockWidth = textWidth('00.0 s ', letters.past, 'bold');
  const width = (words.width - 2 * margin - clockWidth) * widthKept;
  const { before } = saidAt(parts[part]!.scheme.captions, time);
  const marks: FilmText[] = [];
  let top = from + margin * 0.6;
  for (const [at, text] of [...before].reverse()) {
    const lines = wrapLines(text, letters.past, 'regular', width);
    if (top + heightOf(lines.length, letters.past) > to) break;
    marks.push(...linesAt([`${at.toFixed(1)} s`], left, top, { ...look, weight: 'bold' }));
    marks.push(...linesAt(lines, left + clockWidth, top, look));
    top += heightOf(lines.length, letters.past) + letters.past * 0.35;
  }
  return marks;
}

const legendWords =
  'Circles: offense, filled with the ball. Crosses: defense. G: keeper. Dashed line: a pass. Ring: open.';

function footMarks({ clip, layout }: Film): { readonly marks: readonly FilmText[]; readonly top: number } {
  const { words, margin, letters, legend } = layout;
  const bottom = words.top + words.height - margin * 0.7;
  if (!legend) return { marks: [], top: words.top };
  const width = words.width - 2 * margin;
  const told = `${clip.team}. One simulated man-up, no promise. ${viewpointNote} ${legendWords}`;
  const lines = wrapLines(told, letters.small, 'regular', width * widthKept);
  const top = bottom - heightOf(lines.length, letters.small);
  return {
    marks: linesAt(lines, words.left + margin, top, { size: letters.small, weight: 'regular', ink: 'quiet' }),
    top: top - letters.small * 0.4,
  };
}

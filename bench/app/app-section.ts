import { describeLoad, type LoadedProgram } from '../../test/browser/first-load.ts';
import { appHeading } from '../page-section.ts';
import type { Edit } from './measure-edits.ts';
import type { MadeFilm } from './measure-films.ts';
import type { Opening } from './measure-opening.ts';
import type { Playback } from './measure-playback.ts';
import type { SharedLuck } from './measure-shared-luck.ts';
import { percentile } from './percentile.ts';

export interface AppResult {
  /** Machine and browser in general words. */
  readonly conditions: string;
  readonly programs: readonly LoadedProgram[];
  readonly openings: readonly Opening[];
  readonly edits: readonly Edit[];
  /** The same in a playbook of many plays. */
  readonly manyPlays: { readonly plays: number; readonly edits: readonly Edit[] };
  readonly playback: Playback;
  /** Bytes of the page's heap at the start and after each minute. */
  readonly heap_byMinute: readonly number[];
  readonly sharedLuck: readonly SharedLuck[];
  readonly films: readonly MadeFilm[];
}

/** The part of docs/bench.md about the workbench. */
export function appSection(result: AppResult): string {
  const { programs, openings, edits, manyPlays, playback, heap_byMinute, sharedLuck, films } = result;
  const load = describeLoad(programs);
  return [
    appHeading,
    `Written by \`npm run bench:app\`, not by hand: the built workbench as \`npm start\` serves it, driven as by a person on a screen of 1280 by 800. ${result.conditions} ${openings.length} first visits, ${edits.length} drags, ${playback.frames.length} pictures.`,
    table(
      ['what', 'here', 'target'],
      [
        ['JavaScript of the first load, compressed, threads included', kilobytes(load.gzipBytes), '300 kB'],
        ...openingRows(openings),
        ...editRows(edits),
        ...playbackRows(playback, heap_byMinute),
      ],
    ),
    `A playbook of ${manyPlays.plays} plays, ${manyPlays.edits.length} drags:`,
    table(['what', 'here', 'target'], editRows(manyPlays.edits)),
    'Films of a play against one scheme, at half speed, made in a thread beside the page. The last column is what twelve seconds of the film take.',
    table(['film', 'length', 'file', 'seconds to make', 'of 12 s', 'target'], films.map(filmRow)),
    'How much luck an edited play shares with the play before it: one man moved, the same trials, medians over the edits. The interval is the half width of that of the change, goals a chance.',
    table(
      ['moved by', 'edits', 'trials', 'correlation, one scheme', 'interval', 'all schemes together', 'interval'],
      sharedLuck.map(luckRow),
    ),
    `Heap of the page after each minute of looped playback, once what is not used is collected: ${heap_byMinute.map(megabytes).join(', ')}.`,
    'What the first load takes:',
    `\`\`\`text\n${load.table}\n\`\`\``,
  ].join('\n\n');
}

type Row = readonly string[];

function openingRows(openings: readonly Opening[]): readonly Row[] {
  const interactive = openings.map((one) => one.interactive);
  const firstAnswer = openings.map((one) => one.firstAnswer);
  const longestTask = openings.map((one) => one.longestTask);
  return [
    ['first visit to the first grip of the field, p50', milliseconds(interactive, 0.5), '2000 ms'],
    ['the slowest of the visits', milliseconds(interactive, 1), ''],
    ['first visit to the first guess for every scheme, p50', milliseconds(firstAnswer, 0.5), ''],
    ['longest task of a first visit, p50', milliseconds(longestTask, 0.5), '50 ms'],
    ['the longest of all visits', milliseconds(longestTask, 1), ''],
  ];
}

function editRows(edits: readonly Edit[]): readonly Row[] {
  const first = edits.map((one) => one.first);
  const of = (part: (edit: Edit) => number | undefined, share: number): string => milliseconds(edits.map(part), share);
  return [
    ['a man let go to the picture of it, p95 (32 ms is as fine as it is measured)', of((one) => one.painted, 0.95), ''],
    ['a man let go to a guess for every scheme, p50', milliseconds(first, 0.5), ''],
    ['the same, p95', milliseconds(first, 0.95), '100 ms'],
    ['to every interval within .05 goals a chance, p95', of((one) => one.near, 0.95), '2000 ms'],
    ['to every interval within .03 goals a chance, p95', of((one) => one.fair, 0.95), '6000 ms'],
    ['longest task during a drag and its answers', of((one) => one.longestTask, 1), '50 ms'],
  ];
}

function playbackRows({ frames, longTasks }: Playback, heap_byMinute: readonly number[]): readonly Row[] {
  const [start = 0, end = start] = [heap_byMinute[0], heap_byMinute.at(-1)];
  const more = `${end >= start ? '+' : '-'}${megabytes(Math.abs(end - start))}`;
  return [
    ['a picture of looped playback, all fields in step, p50', milliseconds(frames, 0.5), ''],
    ['the same, p95', milliseconds(frames, 0.95), '17 ms'],
    ['tasks over 50 ms in the playback', String(longTasks), '0'],
    [`heap of the page after ${heap_byMinute.length - 1} min of it`, `${megabytes(end)} (${more})`, 'flat'],
  ];
}

function filmRow({ name, length, bytes, seconds }: MadeFilm): Row {
  const ofTwelve = (12 * seconds) / length;
  return [name, `${length.toFixed(0)} s`, megabytes(bytes), seconds.toFixed(1), ofTwelve.toFixed(1), '15'];
}

function luckRow({ moved, edits, trials, one, all }: SharedLuck): Row {
  const interval = (halfWidth: number): string => `±${halfWidth.toFixed(3).replace(/^0/, '')}`;
  const correlation = (value: number): string => value.toFixed(2).replace(/^0/, '');
  return [
    `${moved} yd`,
    String(edits),
    String(trials),
    correlation(one.correlation),
    interval(one.halfWidth),
    correlation(all.correlation),
    interval(all.halfWidth),
  ];
}

/** A percentile in milliseconds; what was never seen counts as later than all that was. */
function milliseconds(values: readonly (number | undefined)[], share: number): string {
  const found = percentile(
    values.map((value) => value ?? Number.POSITIVE_INFINITY),
    share,
  );
  return found === Number.POSITIVE_INFINITY ? 'not seen in time' : `${found.toFixed(found < 100 ? 1 : 0)} ms`;
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`;
}

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');
}

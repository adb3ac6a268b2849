import { describeLoad, type LoadedProgram } from '../../test/browser/first-load.ts';
import { appHeading } from '../page-section.ts';
import type { Edit } from './measure-edits.ts';
import type { Opening } from './measure-opening.ts';
import type { Playback } from './measure-playback.ts';
import { percentile } from './percentile.ts';

export interface AppResult {
  /** Machine and browser in general words. */
  readonly conditions: string;
  readonly programs: readonly LoadedProgram[];
  readonly openings: readonly Opening[];
  readonly edits: readonly Edit[];
  readonly playback: Playback;
  /** Bytes of the page's heap at the start and after each minute. */
  readonly heap_byMinute: readonly number[];
}

/** The part of docs/bench.md about the workbench. */
export function appSection(result: AppResult): string {
  const { programs, openings, edits, playback, heap_byMinute } = result;
  const load = describeLoad(programs);
  const [start = 0, end = start] = [heap_byMinute[0], heap_byMinute.at(-1)];
  const rows = [
    ['JavaScript of the first load, compressed, threads included', kilobytes(load.gzipBytes), '300 kB'],
    [
      'first visit to the first grip of the field, p50',
      milliseconds(
        openings.map(({ interactive }) => interactive),
        0.5,
      ),
      '2000 ms',
    ],
    [
      'the slowest of the visits',
      milliseconds(
        openings.map(({ interactive }) => interactive),
        1,
      ),
      '',
    ],
    [
      'first visit to the first guess for every scheme, p50',
      milliseconds(
        openings.map(({ firstAnswer }) => firstAnswer),
        0.5,
      ),
      '',
    ],
    [
      'longest task of a first visit',
      milliseconds(
        openings.map(({ longestTask }) => longestTask),
        1,
      ),
      '50 ms',
    ],
    [
      'drag of one man to a guess for every scheme, p50',
      milliseconds(
        edits.map(({ first }) => first),
        0.5,
      ),
      '',
    ],
    [
      'the same, p95',
      milliseconds(
        edits.map(({ first }) => first),
        0.95,
      ),
      '100 ms',
    ],
    [
      'drag to every interval within .05 goals a chance, p95',
      milliseconds(
        edits.map(({ near }) => near),
        0.95,
      ),
      '2000 ms',
    ],
    [
      'drag to every interval within .03 goals a chance, p95',
      milliseconds(
        edits.map(({ fair }) => fair),
        0.95,
      ),
      '6000 ms',
    ],
    [
      'longest task during a drag and its answers',
      milliseconds(
        edits.map(({ longestTask }) => longestTask),
        1,
      ),
      '50 ms',
    ],
    ['a picture of looped playback, all fields in step, p50', milliseconds(playback.frames, 0.5), ''],
    ['the same, p95', milliseconds(playback.frames, 0.95), '17 ms'],
    ['tasks over 50 ms in the playback', String(playback.longTasks), '0'],
    [
      `heap of the page after ${heap_byMinute.length - 1} min of looped playback`,
      `${megabytes(end)} (${end >= start ? '+' : ''}${megabytes(end - start)})`,
      'flat',
    ],
  ];
  return [
    appHeading,
    `Written by \`npm run bench:app\`, not by hand: the built workbench as \`npm start\` serves it, driven as by a person on a screen of 1280 by 800. ${result.conditions} ${openings.length} first visits, ${edits.length} drags, ${playback.frames.length} pictures.`,
    table(['what', 'here', 'target'], rows),
    'What the first load takes:',
    `\`\`\`text\n${load.table}\n\`\`\``,
  ].join('\n\n');
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

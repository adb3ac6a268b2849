import type { FilmFormName, FilmOptions } from '../../render/index.ts';
import { filmFormNames } from '../../render/index.ts';
import { shown } from '../conditions.ts';
import { badUse } from '../failure.ts';

const formats = ['html', 'mp4', 'webm', 'gif'] as const;
/** As what a clip is written: a page, or a film in one of three kinds of file. */
export type ClipFormat = (typeof formats)[number];

/** The switches of the shell that a film alone has, and the one that a page alone has. */
export interface RawClipLook {
  readonly follow?: string;
  readonly speed?: string;
  readonly form?: string;
}

/** The format by the ending of a file's name. */
export function readClipFormat(path: string): ClipFormat {
  const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
  const format = formats.find((one) => one === (ending === 'htm' ? 'html' : ending));
  if (format === undefined)
    throw badUse(
      `invalid --out: ${shown(path)} (expected a name that ends in .html for a page, or in .mp4, .webm or .gif for a film).`,
    );
  return format;
}

/** Fails with what to do when a switch is asked of what does not have it. */
export function checkClipLook(format: ClipFormat, { follow, speed, form }: RawClipLook): void {
  if (format !== 'html' && follow !== undefined)
    throw badUse('--follow is for a page, on which the view can be changed: a film shows the whole unit.');
  if (format !== 'html') return;
  const asked = speed === undefined ? (form === undefined ? undefined : '--form') : '--speed';
  if (asked !== undefined)
    throw badUse(`${asked} is for a film: a page has its own buttons. Name a file that ends in .mp4, .webm or .gif.`);
}

const speeds = { half: 0.5, real: 1 } as const;

/** Pictures a second: as a video is, and as few as motion in a message needs, a whole number of hundredths of a second apart. */
const rates = { video: 30, gif: 12.5 } as const;

/** How a film of this format is drawn. */
export function readFilmOptions(
  format: Exclude<ClipFormat, 'html'>,
  { speed = 'half', form = format === 'gif' ? 'card' : 'wide' }: RawClipLook,
): FilmOptions {
  return { form: readForm(form), speed: readSpeed(speed), rate: format === 'gif' ? rates.gif : rates.video };
}

function readSpeed(raw: string): number {
  const speed = Object.entries(speeds).find(([name]) => name === raw.toLowerCase())?.[1];
  if (speed === undefined) throw badUse(`invalid --speed: ${shown(raw)} (expected half or real).`);
  return speed;
}

function readForm(raw: string): FilmFormName {
  const form = filmFormNames.find((name) => name === raw.toLowerCase());
  if (form === undefined) throw badUse(`invalid --form: ${shown(raw)} (expected ${filmFormNames.join(', ')}).`);
  return form;
}

import type { Clip } from '../clip/clip.ts';
import type { FieldMarkings } from '../field-scene.ts';
import type { View } from '../scene.ts';
import { type FilmForm, type FilmFormName, filmForms } from './film-form.ts';
import { type FilmPart, filmPart } from './film-part.ts';
import { filmView } from './film-view.ts';

/** How a clip becomes a film. */
export interface FilmOptions {
  readonly form: FilmFormName;
  /** Pictures a second, > 0. */
  readonly rate: number;
  /** Seconds of the play a second of the film, > 0. */
  readonly speed: number;
}

/** Half speed: something happens every half second of a play, and a film does not wait for who reads as a page does. */
export const defaultFilmOptions: FilmOptions = { form: 'wide', rate: 30, speed: 0.5 };

/**
 * All that a film is made of, as plain data that crosses between threads and programs as JSON: a clip, the ground and the choices. Made of a clip
 * and not of a trace, so that page, film and quiz come of one small form that is already there.
 */
export interface FilmScript {
  readonly clip: Clip;
  readonly field: FieldMarkings;
  readonly options: FilmOptions;
}

/** A film ready to be drawn picture by picture: each scheme's man-up with a title before it and a rest at its end. */
export interface Film extends FilmScript {
  readonly layout: FilmForm;
  readonly parts: readonly FilmPart[];
  readonly view_byPart: readonly View[];
  /** Pictures of each part, and of all. */
  readonly frames_byPart: readonly number[];
  readonly frames: number;
  /** How long it is, s. */
  readonly seconds: number;
}

/** What is seen in one picture. */
export interface FilmMoment {
  readonly part: number;
  /** Seconds of the play; 0 while the title stands. */
  readonly time: number;
  readonly isTitle: boolean;
}

/** How long a title stands, and the last picture of a part, s of the film. */
export const titleSeconds = 3;
export const restSeconds = 2;

/** RangeError for a clip without a scheme, and for a rate or a speed that is no number above 0. */
export function createFilm({ clip, field, options }: FilmScript): Film {
  if (clip.schemes.length === 0) throw new RangeError('a film needs one scheme at least');
  for (const name of ['rate', 'speed'] as const)
    if (!(options[name] > 0 && Number.isFinite(options[name])))
      throw new RangeError(`invalid ${name}: ${options[name]} (expected more than 0)`);
  const layout = filmForms[options.form];
  const parts = clip.schemes.map(filmPart);
  const frames_byPart = parts.map(({ end }) => framesOf(end, options));
  const frames = frames_byPart.reduce((sum, count) => sum + count, 0);
  return {
    ...{ clip, field, options, layout, parts, frames_byPart, frames },
    view_byPart: parts.map((part) => filmView(part, layout.field)),
    seconds: frames / options.rate,
  };
}

/** What picture `frame` shows, 0 to `frames - 1`; others give the first or the last. */
export function filmMoment({ parts, frames_byPart, frames, options }: Film, frame: number): FilmMoment {
  let within = Math.min(Math.max(Math.floor(frame), 0), frames - 1);
  let part = 0;
  while (within >= frames_byPart[part]!) {
    within -= frames_byPart[part]!;
    part += 1;
  }
  const seconds = within / options.rate - titleSeconds;
  // The title's last picture and the play's first are one second of 30 or 10 pictures apart by a rounding error at most.
  const isTitle = seconds < -1e-9;
  return { part, isTitle, time: isTitle ? 0 : Math.min(seconds * options.speed, parts[part]!.end) };
}

function framesOf(end: number, { rate, speed }: FilmOptions): number {
  return Math.round((titleSeconds + end / speed + restSeconds) * rate);
}

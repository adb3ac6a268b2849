import type { ClipScheme } from '../render/index.ts';
import { decodeTrack, placeAt, samplesPerSecond } from './decode-track.ts';

/** A place on the field, yd (docs/units-and-frames.md). */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** One man-up ready to be shown: the same as in the page, with its places unpacked. */
export interface Film {
  readonly scheme: ClipScheme;
  /** Last moment, s. */
  readonly end: number;
  readonly x_byMan: readonly (readonly number[])[];
  readonly y_byMan: readonly (readonly number[])[];
  readonly ballX: readonly number[];
  readonly ballY: readonly number[];
}

export const offenseCount = 6;

export function filmOf(scheme: ClipScheme): Film {
  return {
    scheme,
    end: (scheme.samples - 1) / samplesPerSecond,
    x_byMan: scheme.x_byMan.map(decodeTrack),
    y_byMan: scheme.y_byMan.map(decodeTrack),
    ballX: decodeTrack(scheme.ballX),
    ballY: decodeTrack(scheme.ballY),
  };
}

/** Where a man is: offense, then defenders, then the keeper. */
export function manAt({ x_byMan, y_byMan }: Film, man: number, time: number): Place {
  return { x: placeAt(x_byMan[man] ?? [], time), y: placeAt(y_byMan[man] ?? [], time) };
}

export function ballAt({ ballX, ballY }: Film, time: number): Place {
  return { x: placeAt(ballX, time), y: placeAt(ballY, time) };
}

/** Who has the ball: an offense index, -1 nobody, 100 + a defender's index, 99 the keeper. */
export function holderAt({ scheme }: Film, time: number): number {
  const sample = time * samplesPerSecond + 1e-6;
  return scheme.holders.filter(([from]) => from <= sample).at(-1)?.[1] ?? -1;
}

/** Whether a man is on the field: the penalized one, who stands behind the others in the list, comes when he is released. */
export function isOn({ scheme, x_byMan }: Film, man: number, time: number): boolean {
  const isExtra = man >= offenseCount + scheme.defenders.length && man < x_byMan.length - 1;
  return !isExtra || (scheme.released !== null && scheme.released <= time);
}

/** Who is open, with the word beside him; each man once. */
export function openAt({ scheme }: Film, time: number): ReadonlyMap<number, string> {
  return new Map(scheme.open.flatMap(([who, from, to, word]) => (time >= from && time <= to ? [[who, word]] : [])));
}

/** Index of the last caption whose time has come; -1 before the first. */
export function captionAt({ scheme }: Film, time: number): number {
  return scheme.captions.filter(([from]) => from <= time + 1e-6).length - 1;
}

/** What happens this soon after one another is said together, s: a catch, and the step that it begins. */
const saidTogether = 0.25;

/** What is said at `time`: the last thing that happened, and what came with it; nothing before the first. */
export function saidAt(film: Film, time: number): string {
  const last = captionAt(film, time);
  const { captions } = film.scheme;
  const since = (captions[last]?.[0] ?? 0) - saidTogether;
  return captions
    .slice(0, last + 1)
    .filter(([from]) => from >= since)
    .map(([, text]) => text)
    .join(' ');
}

/** Two things this close are one stop for who steps from one to the next, s. */
const sameStop = 0.05;

/** The time of the next thing that happens after `time` (`way` 1), or of the one before it (-1); the film's end or start when there is none. */
export function nextStop({ scheme, end }: Film, time: number, way: 1 | -1): number {
  const times = scheme.captions.map(([from]) => from);
  return way === 1
    ? Math.min(times.find((from) => from > time + sameStop) ?? end, end)
    : (times.filter((from) => from < time - sameStop).at(-1) ?? 0);
}

import type { Point } from '../../engine/index.ts';
import type { ClipScheme, Track } from '../clip/clip.ts';
import { samplesPerSecond, stepsPerYard } from '../clip/track.ts';
import type { Holder, TraceFrame } from '../trace-frame.ts';
import type { OpenMan } from '../watch-marks.ts';

/** One man-up of a clip with its tracks unpacked, ready to be asked for any moment. Times are seconds of the play. */
export interface FilmPart {
  readonly scheme: ClipScheme;
  readonly end: number;
  /** Offense, then defenders, then the keeper: places at every sample, yd. */
  readonly places_byMan: readonly (readonly Point[])[];
  readonly ball: readonly Point[];
}

const offenseCount = 6;

export function filmPart(scheme: ClipScheme): FilmPart {
  const places_byMan = scheme.x_byMan.map((track, man) => placesOf(track, scheme.y_byMan[man] ?? []));
  return {
    scheme,
    end: (scheme.samples - 1) / samplesPerSecond,
    places_byMan,
    ball: placesOf(scheme.ballX, scheme.ballY),
  };
}

/** Everything at one moment, as a trace would give it; times outside the part give its first or last. A clip keeps no height and no duties. */
export function momentAt(part: FilmPart, time: number): TraceFrame {
  const men = part.places_byMan.map((places) => smoothAt(places, time));
  const defense = men.slice(offenseCount, -1);
  return {
    time,
    offense: men.slice(0, offenseCount),
    defense: isReleased(part, time) ? defense : defense.slice(0, part.scheme.defenders.length),
    keeper: men.at(-1) ?? { x: 0, y: 0 },
    ball: { ...placeAt(part.ball, time), height: 0 },
    holder: holderAt(part, time),
    duties: [],
  };
}

/** Where the ball is, on the straight line between two samples: it flies straight. */
export function ballAt({ ball }: FilmPart, time: number): Point {
  return placeAt(ball, time);
}

/** Who is open at `time`, each man once. */
export function openMenOf({ scheme }: FilmPart, time: number): readonly OpenMan[] {
  const open = new Map<number, OpenMan>();
  for (const [who, from, to, word] of scheme.open) if (time >= from && time <= to) open.set(who, { who, word });
  return [...open.values()];
}

/** Where one of the six has run from `from` to `to`, a point every tenth of a second. */
export function runOf(part: FilmPart, man: number, from: number, to: number): readonly Point[] {
  const start = Math.max(0, from);
  const steps = Math.max(0, Math.round((to - start) * samplesPerSecond));
  const places = part.places_byMan[man] ?? [];
  return Array.from({ length: steps + 1 }, (_, step) => smoothAt(places, to - (steps - step) / samplesPerSecond));
}

function placesOf(xs: Track, ys: Track): readonly Point[] {
  let [x, y] = [0, 0];
  return xs.map((change, sample) => {
    x += change;
    y += ys[sample] ?? 0;
    return { x: x / stepsPerYard, y: y / stepsPerYard };
  });
}

function isReleased({ scheme }: FilmPart, time: number): boolean {
  return scheme.released !== null && scheme.released <= time;
}

function holderAt({ scheme }: FilmPart, time: number): Holder {
  const sample = time * samplesPerSecond + 1e-6;
  const code = scheme.holders.filter(([from]) => from <= sample).at(-1)?.[1] ?? -1;
  if (code >= 100) return { kind: 'defender', index: code - 100 };
  if (code === 99) return { kind: 'keeper' };
  return code >= 0 ? { kind: 'attacker', index: code } : { kind: 'nobody' };
}

function placeAt(places: readonly Point[], time: number): Point {
  const { early, share } = between(places, time);
  const [from, to] = [sampleOf(places, early), sampleOf(places, early + 1)];
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

/**
 * A man's place on the uniform cubic B-spline over the samples (C. de Boor, A Practical Guide to Splines, 1978, ch. IX): it averages three
 * neighbours, so that the rounding of a clip to a tenth of a yard, two pixels of a large picture, is not seen as a tremble. A man who changes
 * his speed by 8 yd/s² is shown .013 yd beside his place.
 */
function smoothAt(places: readonly Point[], time: number): Point {
  const { early, share: t } = between(places, time);
  const weights = [(1 - t) ** 3, 3 * t ** 3 - 6 * t ** 2 + 4, -3 * t ** 3 + 3 * t ** 2 + 3 * t + 1, t ** 3];
  let [x, y] = [0, 0];
  for (const [index, weight] of weights.entries()) {
    const at = sampleOf(places, early - 1 + index);
    x += (weight * at.x) / 6;
    y += (weight * at.y) / 6;
  }
  return { x, y };
}

function between(places: readonly Point[], time: number): { readonly early: number; readonly share: number } {
  const exact = Math.min(Math.max(time * samplesPerSecond, 0), Math.max(0, places.length - 1));
  const early = Math.floor(exact);
  return { early, share: exact - early };
}

function sampleOf(places: readonly Point[], sample: number): Point {
  return places[Math.min(Math.max(sample, 0), places.length - 1)] ?? { x: 0, y: 0 };
}

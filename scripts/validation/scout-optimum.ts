import {
  type ChanceModel,
  type MarkedFilm,
  type MarkedMoment,
  oddsOfMarks,
  type Play,
  recordTrace,
} from '../../src/engine/index.ts';
import { filmOfTrace } from './scout-film.ts';

/** What was seen of one scheme in many fresh trials of one play: where its men stood, by who had the ball and from whom. */
export interface SchemeSeen {
  /** Places of a moment, x and y each, with the number of its trial; by the pair of men between whom the ball went. */
  readonly byPass: ReadonlyMap<string, readonly SeenMoment[]>;
}

interface SeenMoment {
  readonly trial: number;
  readonly places: Float64Array;
}

/** Moments of a trial that are kept: as many as are ever asked about, and some. */
const mostMoments = 10;

/** Watch trials `from` (included) to `to` (excluded) of a matchup, every man in his true place. */
export function watchScheme(model: ChanceModel, play: Play, from: number, to: number): SchemeSeen {
  const byPass = new Map<string, SeenMoment[]>();
  for (let trial = from; trial < to; trial++) {
    const film = filmOfTrace(recordTrace(model, trial), play, { error: 0, seed: 1, offense: false });
    for (const [at, { defenders }] of film.moments.slice(0, mostMoments).entries()) {
      const key = passOf(film, at);
      const list = byPass.get(key) ?? [];
      byPass.set(key, list);
      list.push({ trial, places: flat(defenders) });
    }
  }
  return { byPass };
}

/** How far a mark may lie from a place that was seen before: a yard of error, and a little because no two trials are the same to the inch. */
const spread = { error: 1, model: 0.4, astray: 0.05, astrayTimes: 3, missing: 0.05, extra: 0.3 };
/** A pass that was never seen says nothing, rather than that it cannot be. */
const least = 1e-12;

/**
 * How likely the marks of each moment of a film are to who has seen this very play against this very scheme so many times, with the logarithm taken: a mean over
 * all moments with the same pass in the first `trials` of them.
 */
export function logOddsSeen(seen: SchemeSeen, film: MarkedFilm, moments: number, trials: number): readonly number[] {
  return film.moments.slice(0, moments).map((moment: MarkedMoment, at) => {
    const alike = (seen.byPass.get(passOf(film, at)) ?? []).filter(({ trial }) => trial < trials);
    if (alike.length === 0) return Math.log(least);
    const marks = flat(moment.defenders);
    const sum = alike.reduce(
      (all, { places }) => all + oddsOfMarks(marks, -1, places, 0, places.length / 2, spread),
      0,
    );
    return Math.log(Math.max(least, sum / alike.length));
  });
}

function passOf({ moments }: MarkedFilm, at: number): string {
  return `${moments[at - 1]?.ball ?? -1} ${moments[at]!.ball}`;
}

function flat(places: readonly { readonly x: number; readonly y: number }[]): Float64Array {
  return Float64Array.from(places.flatMap(({ x, y }) => [x, y]));
}

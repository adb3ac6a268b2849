import type { Point } from '../geometry/point.ts';
import { checkFilm, type MarkedFilm, type MarkedMoment } from './marked-film.ts';

/** What a rehearsal follows: where the six are at the times of the moments, and who has the ball when. Made once a film. */
export interface FilmPath {
  /** Whole steps would be no use here: seconds from the beginning of the rehearsal to each moment. */
  readonly time_byMoment: Float64Array;
  /** Twelve numbers a moment: x at 2i, y at 2i + 1. */
  readonly places_byMoment: Float64Array;
  /** Twelve numbers a moment: the speed with which each man then goes on to the next moment, yards a second. */
  readonly speeds_byMoment: Float64Array;
  readonly ball_byMoment: Int8Array;
  /** Seconds since the ball came; NaN where nobody said. */
  readonly since_byMoment: Float64Array;
  /** How far off each of the six may be, standard deviation along each axis: what marks leave open. Yards. */
  readonly uncertain: number;
  /** Seconds of the penalty that are left at the end. */
  readonly timeLeft: number;
  /** Whether the man with the first ball may have brought it in himself: not in a lap that a unit begins from its set. */
  readonly carried: boolean;
  /** Where play was restarted; `null` when nobody said. */
  readonly restart: Point | null;
  /** The men from whom the first ball may have come: his neighbours round the set. */
  readonly before: readonly number[];
}

/** A unit that is rehearsed stands so long with the ball where it was before the first moment. Seconds. */
export const leadIn = 5;

/**
 * More than this between two moments tells nothing more of where men are: it is played as this much, so that a film of a whole game's minute costs no more
 * than its moments. Seconds.
 */
const longestGap = 4;

/** Under this a man has stood still, as far as marks can tell: two of them are a yard and a half apart by error alone. Yards. */
const stoodStill = 2.5;

/** What is left of a penalty when nobody says: long enough that nobody hurries. Seconds. */
const usualTimeLeft = 30;

/** What is left of a yard's error once a man's marks have been set against each other. Yards. */
const usualUncertain = 0.5;

/** Follow a film. Throws a RangeError for one that cannot be followed. */
export function pathOfFilm(film: MarkedFilm, uncertain = usualUncertain, carried = true): FilmPath {
  checkFilm(film);
  const { moments } = film;
  const count = moments.length;
  const time_byMoment = new Float64Array(count);
  const places_byMoment = new Float64Array(12 * count);
  const speeds_byMoment = new Float64Array(12 * count);
  for (const [at, moment] of moments.entries()) {
    const before = moments[at - 1];
    time_byMoment[at] =
      before === undefined ? leadIn : time_byMoment[at - 1]! + Math.min(longestGap, moment.time - before.time);
    placeSix(film, at, places_byMoment);
  }
  for (let at = 0; at + 1 < count; at++) speedSix(time_byMoment, places_byMoment, at, speeds_byMoment);
  return {
    time_byMoment,
    places_byMoment,
    speeds_byMoment,
    ball_byMoment: Int8Array.from(moments, ({ ball }) => ball),
    since_byMoment: Float64Array.from(moments, ({ since }) => since ?? Number.NaN),
    uncertain,
    timeLeft: film.timeLeft ?? usualTimeLeft,
    carried,
    restart: film.restart ?? null,
    before: moments[0] === undefined ? [] : neighboursOf(places_byMoment, moments[0].ball),
  };
}

/** Marks of one man that are farther apart than this are hardly of the same place: two of them are about two yards apart by error alone. Yards. */
const samePlace = 2.2;
/** Marks that are farther apart in time than this say little of each other. Seconds. */
const sameTime = 4;
/** What the spot itself counts beside a mark of a man who is near it: men come back to their spots. */
const spotCounts = 0.7;

/**
 * Where each of the six is taken to have been: the mean of his marks and his spot, those that lie near this one in place and time counting most (a bilateral
 * filter: Tomasi and Manduchi 1998, ICCV; from memory), because men of a set mostly stand. One who was not marked is where he was last, before that at his spot.
 */
function placeSix({ spots, moments }: MarkedFilm, at: number, out: Float64Array): void {
  const { offense, time } = moments[at] as MarkedMoment;
  for (let man = 0; man < 6; man++) {
    const marked = offense?.[man] ?? null;
    const to = 12 * at + 2 * man;
    if (marked === null) {
      out[to] = at > 0 ? out[to - 12]! : spots[man]!.x;
      out[to + 1] = at > 0 ? out[to - 11]! : spots[man]!.y;
      continue;
    }
    let weights = 0;
    let x = 0;
    let y = 0;
    const count = (place: Point, weight: number): void => {
      const dx = place.x - marked.x;
      const dy = place.y - marked.y;
      const near = weight * Math.exp(-(dx * dx + dy * dy) / (2 * samePlace * samePlace));
      weights += near;
      x += near * place.x;
      y += near * place.y;
    };
    for (const other of moments) {
      const place = other.offense?.[man] ?? null;
      if (place !== null) count(place, Math.exp(-Math.abs(other.time - time) / sameTime));
    }
    count(spots[man]!, spotCounts);
    out[to] = x / weights;
    out[to + 1] = y / weights;
  }
}

function speedSix(times: Float64Array, places: Float64Array, at: number, out: Float64Array): void {
  const gap = times[at + 1]! - times[at]!;
  if (gap <= 0) return;
  for (let man = 0; man < 6; man++) {
    const from = 12 * at + 2 * man;
    const dx = places[from + 12]! - places[from]!;
    const dy = places[from + 13]! - places[from + 1]!;
    if (dx * dx + dy * dy < stoodStill * stoodStill) continue;
    out[from] = dx / gap;
    out[from + 1] = dy / gap;
  }
}

/** The two who stand nearest to him: a ball comes to a man from beside him as a rule. */
function neighboursOf(places: Float64Array, ball: number): readonly number[] {
  const far = (man: number): number =>
    Math.hypot(places[2 * man]! - places[2 * ball]!, places[2 * man + 1]! - places[2 * ball + 1]!);
  return [0, 1, 2, 3, 4, 5]
    .filter((man) => man !== ball)
    .sort((one, other) => far(one) - far(other))
    .slice(0, 2);
}

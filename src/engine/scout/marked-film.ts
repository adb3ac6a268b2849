import type { Point } from '../geometry/point.ts';

/** One moment of a man-up as it was marked on film or on a field: nobody is named but the man with the ball. */
export interface MarkedMoment {
  /** Seconds from any start that all moments of the man-up share. */
  readonly time: number;
  /** Offense index 0 to 5 of the man who has the ball. */
  readonly ball: number;
  /** Seconds since it came to him; unknown when absent. */
  readonly since?: number;
  /** Where defenders were seen, yards, in any order: some may be missing, and one too many may be there. */
  readonly defenders: readonly Point[];
  /** Where the six were, in the order of the film's spots; `null` for one who was not marked. At their spots when absent. */
  readonly offense?: readonly (Point | null)[];
}

/** A man-up as it was marked. */
export interface MarkedFilm {
  /** The six places of the set, in an order that the moments share. Yards. */
  readonly spots: readonly Point[];
  /** In the order of their times. */
  readonly moments: readonly MarkedMoment[];
  /** Where the ball was put in play; unknown when absent. */
  readonly restart?: Point;
  /** Seconds of the penalty that are left at the last moment; unknown when absent. */
  readonly timeLeft?: number;
}

/**
 * Throws a RangeError for a film that cannot be followed: not six spots, no such man, times that go back, or a place that is no number.
 */
export function checkFilm({ spots, moments }: MarkedFilm): void {
  if (spots.length !== 6) throw new RangeError(`invalid spots of a film: ${spots.length} (expected 6)`);
  for (const [at, moment] of moments.entries()) {
    const { time, ball, since, defenders, offense } = moment;
    const where = `moment ${at + 1}`;
    if (!Number.isInteger(ball) || ball < 0 || ball > 5)
      throw new RangeError(`invalid ball at ${where}: ${ball} (expected 0 to 5)`);
    if (!Number.isFinite(time) || time < (moments[at - 1]?.time ?? Number.NEGATIVE_INFINITY))
      throw new RangeError(`invalid time at ${where}: ${time} (expected no less than that of the moment before)`);
    if (since !== undefined && !(since >= 0))
      throw new RangeError(`invalid time since the ball came at ${where}: ${since} (expected 0 or more)`);
    if (offense !== undefined && offense.length !== 6)
      throw new RangeError(`invalid places of the six at ${where}: ${offense.length} (expected 6)`);
    for (const place of [...defenders, ...(offense ?? [])])
      if (place !== null && !(Number.isFinite(place.x) && Number.isFinite(place.y)))
        throw new RangeError(`invalid place at ${where}: ${place.x}, ${place.y} (expected yards)`);
  }
}

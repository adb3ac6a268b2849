import { type Level, levelMean, levelValue } from '../../engine/index.ts';

/** How fast a level plays, for finding runs that nobody could make. Yards, seconds. */
export interface Pace {
  /** Top speed of the level's fastest men, yd/s. */
  readonly run: number;
  /** The same with the ball. */
  readonly carry: number;
  /** From catch to release of an unhurried pass, s. */
  readonly release: number;
  readonly passSpeed: number;
}

/** Standard deviations over the mean at which the fastest of a level run: grade 5. */
const fastest = 1.6;
/** A man with the ball in his stick runs at this share of his speed (common practice, no source). */
const carryShare = 0.8;
/** On the practice field nobody hurries: release takes longer and the ball goes softer than in need by this much. */
const unhurried = 1.5;
const soft = 0.8;

/**
 * Generous to the runner: his legs are the fastest of his level and the ball is slow, so that what is called
 * impossible here really is.
 */
export function paceOf(level: Level): Pace {
  const run = levelValue(level, 'topSpeed', fastest);
  return {
    run,
    carry: run * carryShare,
    release: levelMean(level, 'passRelease') * unhurried,
    passSpeed: levelMean(level, 'passSpeed') * soft,
  };
}

import { arrivalTime, type Level, levelMean, levelValue } from '../../engine/index.ts';

/** How a man runs by the drag model (docs/models/motion.md): yd/s and 1/s. */
export interface Gait {
  readonly topSpeed: number;
  readonly drag: number;
}

/** How fast a level plays, for finding runs that nobody could make and those that take long. Yards, seconds. */
export interface Pace {
  /** The level's fastest men, and the same with the ball. */
  readonly run: Gait;
  readonly carry: Gait;
  /** The level's usual men. */
  readonly usualRun: Gait;
  readonly usualCarry: Gait;
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
  const run = gaitOf(level, fastest);
  const usualRun = gaitOf(level, 0);
  return {
    run,
    carry: withBall(run),
    usualRun,
    usualCarry: withBall(usualRun),
    release: levelMean(level, 'passRelease') * unhurried,
    passSpeed: levelMean(level, 'passSpeed') * soft,
  };
}

/** Seconds for a way of so many yards; corners are taken without a loss. Who runs already (`rolling`) has his top speed from the first step. */
export function secondsFor(length: number, { topSpeed, drag }: Gait, rolling = false): number {
  return rolling ? length / topSpeed : arrivalTime(topSpeed, drag, 0, 0, 0, 0, length, 0, 0);
}

/** Yards that are run in so many seconds: the inverse of `secondsFor`. */
export function yardsIn(seconds: number, { topSpeed, drag }: Gait, rolling = false): number {
  if (seconds <= 0) return 0;
  return rolling ? topSpeed * seconds : topSpeed * (seconds + Math.expm1(-drag * seconds) / drag);
}

function gaitOf(level: Level, z: number): Gait {
  return { topSpeed: levelValue(level, 'topSpeed', z), drag: levelValue(level, 'drag', z) };
}

function withBall({ topSpeed, drag }: Gait): Gait {
  return { topSpeed: topSpeed * carryShare, drag };
}

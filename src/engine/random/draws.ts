import { normalQuantile } from '../statistics/normal-quantile.ts';
import { philoxInto } from './philox.ts';

/**
 * A source of random numbers in which every number has an address: (seed, trial, who, kind, index).
 *
 * Two runs that differ only in the play, the scheme or one edit draw the same number for the same event, so that their
 * difference is not drowned in luck (common random numbers), and any worker
 * can run any trial. Holds scratch memory only: a `Draws` may be shared by everything on one thread.
 */
export interface Draws {
  readonly seed: number;
  readonly key0: number;
  readonly key1: number;
  /** The last block drawn, four words of 32 bits. */
  readonly words: Uint32Array;
  /** The last pair of standard normals. */
  readonly normals: Float64Array;
}

/** A source for `seed`, a whole number from 0 to 2^53 - 1 (included). Throws a RangeError otherwise. */
export function createDraws(seed: number): Draws {
  if (!Number.isSafeInteger(seed) || seed < 0) {
    throw new RangeError(`invalid seed: ${seed} (expected a whole number from 0 to 9007199254740991)`);
  }
  return {
    seed,
    key0: seed >>> 0,
    key1: Math.floor(seed / 2 ** 32) >>> 0,
    words: new Uint32Array(4),
    normals: new Float64Array(2),
  };
}

/**
 * Fill `draws.words` with the four words of one event, for an event that needs several numbers.
 *
 * `trial`, `who`, `kind` and `index` are whole numbers; -1 is allowed (it counts as 2^32 - 1). Allocates nothing.
 */
export function block(draws: Draws, trial: number, who: number, kind: number, index: number): void {
  philoxInto(trial, who, kind, index, draws.key0, draws.key1, draws.words);
}

/** A word as a number from 0 (included) to 1 (excluded), in steps of 2^-32. */
export function unit(word: number): number {
  return (word >>> 0) * 2 ** -32;
}

/** A word as a standard normal, never infinite: at most 6.34 away from 0. */
export function standardNormal(word: number): number {
  return normalQuantile(((word >>> 0) + 0.5) * 2 ** -32);
}

/** One number from 0 (included) to 1 (excluded), with 53 random bits. Overwrites `draws.words`. */
export function uniform(draws: Draws, trial: number, who: number, kind: number, index: number): number {
  block(draws, trial, who, kind, index);
  // 27 high bits of one word above 26 high bits of the other: every double of the form k / 2^53.
  return ((draws.words[0]! >>> 5) * 2 ** 26 + (draws.words[1]! >>> 6)) * 2 ** -53;
}

/** One standard normal. Overwrites `draws.words`. */
export function normal(draws: Draws, trial: number, who: number, kind: number, index: number): number {
  block(draws, trial, who, kind, index);
  return standardNormal(draws.words[0]!);
}

/** Two independent standard normals of one event, left in `draws.normals`. Overwrites `draws.words`. */
export function normalPair(draws: Draws, trial: number, who: number, kind: number, index: number): void {
  block(draws, trial, who, kind, index);
  draws.normals[0] = standardNormal(draws.words[0]!);
  draws.normals[1] = standardNormal(draws.words[1]!);
}

import type { DutyBoard } from './duty.ts';

/**
 * What a defense goes by when it gives out duties. Everything is as its players perceive it.
 * Preallocated by the caller and reused; a scheme must not keep a reference to it.
 */
export interface SchemeView {
  /** Offense index 0 to 5 of the man who has the ball or is about to receive it; -1 when it is loose. */
  ball: number;
  /** Offense index of the man who had it before; -1 at the start. The swing's direction comes from it. */
  previousBall: number;
  /** Carrier is running with the ball rather than standing with it. */
  carrying: boolean;
  /** +1, or -1 when the whole chance is mirrored: multiply x by it before any left-right choice or tie-break. */
  sense: 1 | -1;
  /** Positions of the six attackers, yards: x at 2i, y at 2i+1. */
  readonly offense: Float64Array;
  /** Positions of the defenders, same layout. */
  readonly defense: Float64Array;
  /**
   * Perimeter men in order round the goal, from the offense's left behind the goal, over the top, to its right behind
   * (from WL over TL, P, TR to WR in a 3-3; X sits at the end of the order and is next to both low men). First `ringSize` entries count.
   */
  readonly ring: Int8Array;
  ringSize: number;
  /** Men on the crease (inside, by place with hysteresis). First `creaseSize` entries count. */
  readonly crease: Int8Array;
  creaseSize: number;
  /** Seconds left in the penalty. */
  timeLeft: number;
  /** The man that a shutoff is meant for; -1 when none was named. */
  star: number;
  /** 1 for each attacker who counts as a crease man: `readOffense` keeps its hysteresis here. */
  readonly inside: Uint8Array;
  /** Place round the goal of each attacker, 0 (straight behind, by the left) to 4 (straight behind, by the right); scratch of `readOffense`. */
  readonly round: Float64Array;
}

/** Small integers a scheme keeps between calls (who owns which seat), reset before each chance. */
export type SchemeMemory = Int8Array;

/** Four way marks of how a scheme is described to people. */
export interface SchemeNotes {
  readonly name: string;
  /** One sentence: what it does. */
  readonly summary: string;
  /** What it leaves open on purpose. */
  readonly leaves: string;
}

export interface Scheme {
  readonly id: string;
  readonly notes: SchemeNotes;
  /** Field defenders it is played with: 5, 4 (two down), 3 (three down), or 6 (settled, flag down). */
  readonly defenders: number;
  /** Defender names in index order, lower case: tr, tl, lr, ll, c ... */
  readonly names: readonly string[];
  /** Which defenders carry a short stick; the others carry a pole. */
  readonly shortSticks: readonly number[];
  /** Home places in index order: x at 2i, y at 2i+1, yards, for sense +1. */
  readonly home: readonly number[];
  readonly memorySize: number;
  /** How far out the ball man meets a carrier above the goal line extended, yards from the middle of the goal. */
  readonly extends: number;
  /** Whether one of its men is told to shut off the star of the view. */
  readonly locksStar?: true;
  /** Give every defender a duty for this view. Writes every entry of `out`; pure apart from `memory` and `out`. */
  assign(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void;
}

/** How well one defender plays his part. All zero is faultless. */
export interface Discipline {
  /** Mean extra delay before he takes a new duty, s. */
  readonly late: number;
  /** Odds that a duty is taken with the wrong man of a pair, 0 to 1. */
  readonly wrongSplit: number;
  /** How far he is drawn toward the ball off his place, 0 (not) to 1 (all the way). */
  readonly ballWatch: number;
  /** Odds that he keeps his old duty when the others change, 0 to 1. */
  readonly mixed: number;
}

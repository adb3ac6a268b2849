import type { ClipScheme } from '../clip/clip.ts';
import type { Primitive } from '../scene.ts';

/**
 * A read quiz as a page by itself carries it: moments of simulated man-ups, what the man with the ball could do at each, and what that is worth. Plain data,
 * as it stands in the page; no names.
 */
export interface Quiz {
  readonly format: 'sliderule-quiz';
  readonly version: 1;
  /** Four letters of the code's alphabet: which quiz a result code belongs to. */
  readonly id: string;
  /** Id and name of the play. */
  readonly playId: string;
  readonly play: string;
  readonly team: string;
  /** The six spots in the play's order, and the jersey numbers of those who play them. */
  readonly spots: readonly string[];
  readonly numbers: readonly number[];
  /** The man whose reads are asked, an index of `spots`; -1 for the whole unit's. */
  readonly spot: number;
  /** Seconds to answer, > 0. */
  readonly seconds: number;
  /** Futures that each worth is the mean of. */
  readonly futures: number;
  /** 1 to 20. */
  readonly questions: readonly QuizQuestion[];
}

/** One moment at which the man with the ball has to choose. */
export interface QuizQuestion {
  /** Who has the ball, an index of `spots`. */
  readonly carrier: number;
  /** Id of the scheme; its name is that of the film. */
  readonly scheme: string;
  /** What leads to the moment, which is the last of this film. */
  readonly before: ClipScheme;
  /** 3 or 4; those that are right are as good as each other. */
  readonly choices: readonly QuizChoice[];
  /** Index of the one that is worth most. */
  readonly best: number;
  /** Why it is right, a sentence or two. */
  readonly reason: string;
  /** What the play teaches for this moment and how that does here; empty when it teaches nothing. */
  readonly taught: string;
  /** What shows it on the field, in yards, drawn with the answer. */
  readonly marks: readonly Primitive[];
}

export interface QuizChoice {
  /** What is done, as it stands on its button: "Feed C". */
  readonly words: string;
  /** The man whom a tap on the field chooses it by, an index of `spots`: the receiver of a pass; -1 for none. */
  readonly target: number;
  /** Goals that come of it from here on: mean, and its 95 % interval. */
  readonly worth: Worth;
  /** How much less that is than the best, in the same futures. */
  readonly behind: Worth;
  readonly right: boolean;
  /** What speaks against it, a sentence; empty for what is right. */
  readonly why: string;
  /** What comes of it in one of its futures, the one in the middle; begins with the last picture of `before`. */
  readonly after: ClipScheme;
}

/** To a thousandth of a goal. */
export type Worth = readonly [mean: number, low: number, high: number];

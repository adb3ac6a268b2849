/**
 * A play as a page by itself carries it: one man-up against each scheme, small enough to be sent to a phone. Plain data, as it stands in the
 * page. Places are whole tenths of a yard, ten times a second (`track.ts`); other times are seconds from the picture's first moment.
 */
export interface Clip {
  readonly play: string;
  readonly team: string;
  /** The six spots in the play's order, and who plays each: "number 7". */
  readonly spots: readonly string[];
  readonly men: readonly string[];
  /** Whose view is shown at first, an index of `spots`; -1 for the whole unit's. */
  readonly follow: number;
  readonly schemes: readonly ClipScheme[];
}

/** One man-up against one scheme. */
export interface ClipScheme {
  readonly name: string;
  /** How this man-up was chosen, in a sentence. */
  readonly note: string;
  readonly defenders: readonly string[];
  /** Samples of every track. */
  readonly samples: number;
  /** Offense, then defenders, then the keeper: x and y of each, as tracks. */
  readonly x_byMan: readonly Track[];
  readonly y_byMan: readonly Track[];
  readonly ballX: Track;
  readonly ballY: Track;
  /** Who has the ball from which sample on: an offense index, -1 in flight or loose, 100 + a defender's, 99 the keeper. */
  readonly holders: readonly (readonly [sample: number, holder: number])[];
  /** When the penalized man runs in, who is the last of the defenders; null when he does not, or there is none. */
  readonly released: number | null;
  readonly flights: readonly ClipFlight[];
  readonly open: readonly ClipOpening[];
  /** What happens, in order of time. */
  readonly captions: readonly ClipCaption[];
}

/** First value, then the change to each next one: whole tenths of a yard. */
export type Track = readonly number[];

/** The ball in the air, from when to when. */
export type ClipFlight = readonly [from: number, to: number, kind: 'pass' | 'shot'];

/** An offense index who is open, from when to when, and the word beside him. */
export type ClipOpening = readonly [who: number, from: number, to: number, word: string];

/** A sentence and the time from which it holds. */
export type ClipCaption = readonly [time: number, text: string];

/** How much is simulated for one scheme. Sizes are in trials. The same plan gives the same answers, on any number of threads. */
export interface AnswerPlan {
  /**
   * Trials of one request, and those of the very first against each scheme: 5 to 10 ms of work. A new question waits for the request that
   * runs, and its first answers are one request for each scheme.
   */
  readonly batch: { readonly first: number; readonly tally: number; readonly watch: number; readonly force: number };
  /** Half widths of the interval of goals a chance that are gone for in turn. */
  readonly halfWidths: { readonly near: number; readonly fair: number; readonly fine: number };
  /** Fewer counted trials than this are only a first guess, however alike they look; more than `most` are not counted, whatever their spread. */
  readonly least: number;
  readonly most: number;
  /** Trials watched for a first look, for looks that can be named and replayed, and for good. */
  readonly watched: { readonly first: number; readonly named: number; readonly all: number };
  /** Looks that are replayed for their worth, besides those that the play throws itself, and replays of each. */
  readonly looks: number;
  readonly perLook: number;
  /** Trials of the set without the play, for each scheme, at most: what it is compared by shares most of its luck, so a few tell much. */
  readonly setAlone: number;
  /** Of what is asked beside the play: trials for each scheme, in steps, and the half width of the difference's interval that is enough. */
  readonly side: { readonly trials: readonly number[]; readonly halfWidth: number };
  /** Whole chances that are followed to find where goals come from. */
  readonly followed: number;
}

/** Measured on two cores for nine schemes (docs/models/live-answers.md). A watched trial takes half as long again as one that is counted. */
export const defaultAnswerPlan: AnswerPlan = {
  batch: { first: 4, tally: 8, watch: 6, force: 8 },
  halfWidths: { near: 0.05, fair: 0.03, fine: 0.02 },
  least: 48,
  most: 2000,
  watched: { first: 12, named: 90, all: 180 },
  looks: 5,
  perLook: 32,
  setAlone: 240,
  side: { trials: [24, 72, 144, 240], halfWidth: 0.01 },
  followed: 36,
};

/** What is done for one scheme, the most urgent first: the numbers are priorities of requests. */
export const urgency = {
  coarse: 9,
  look: 8,
  near: 7,
  watch: 6,
  fair: 5,
  force: 4,
  setAlone: 3.6,
  fine: 3,
  watchMore: 2,
  baseline: 1,
  side: 0.5,
} as const;

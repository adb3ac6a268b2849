import type { TurnoverKind } from '../chance/trace.ts';

/**
 * What a run of trials adds up to: plain data, so that a worker can send it.
 * Trials `from` (included) to `to` (excluded); the per-trial arrays keep trial order, so that paired comparisons and
 * merged answers are the same for any number of workers.
 */
export interface Tally {
  readonly from: number;
  readonly to: number;
  /** Goals in each trial (more than one only when the penalty is not releasable). */
  readonly goals_byTrial: Uint8Array;
  /** Goal odds of the shots of each trial, added up: what its goals are on average, given that it came to these shots. */
  readonly goalOdds_byTrial: Float32Array;
  readonly shots_byTrial: Uint8Array;
  readonly turnovers_byTrial: Uint8Array;
  /** Seconds from the restart to the first shot; NaN when there was none. */
  readonly firstShot_byTrial: Float32Array;
  /** Seconds of the first goal; NaN when there was none. */
  readonly firstGoal_byTrial: Float32Array;
  readonly turnovers: Readonly<Record<TurnoverKind, number>>;
  readonly shots: number;
  readonly goals: number;
  readonly onTarget: number;
  readonly saves: number;
  readonly assistedGoals: number;
  readonly goalOddsSum: number;
  /** Shots from beyond 16 yd of the goal's middle, and goals from them. */
  readonly farShots: number;
  readonly farGoals: number;
  /** Goals from shots taken straight off a pass, and such shots; the same for the rest. */
  readonly assistedShots: number;
  readonly passes: number;
  /** Passes that the play or one of its reads asked for. */
  readonly playPasses: number;
  readonly passesCaught: number;
  /** Trials in which the play began, and those in which each of its beats did, in the play's order; without what replaces them in the last ten seconds. */
  readonly begun: number;
  readonly begun_byBeat: Uint32Array;
  readonly losses: number;
  readonly backSum: number;
  readonly fastBreaks: number;
}

import type { GoalChange, Interval, SchemeReport, ScriptTrace, SeenLook } from '../../engine/index.ts';
import type { Cast } from '../../worker/index.ts';
import type { Ask } from './ask.ts';

/** One way that the play comes open, and what taking it is worth once that is known. */
export interface LookAnswer extends SeenLook {
  /** Goals from the moment that it can first be seen to the chance's end when it is taken; `null` until enough replays have been run. */
  readonly worth: (Interval & { readonly replays: number }) | null;
  /** The watched trials in which it came open, each with the first moment, in seconds after the first beat: any can be shown. */
  readonly seenIn: readonly { readonly trial: number; readonly opens: number; readonly closes: number }[];
}

/** Why a trial is shown: not because it is a usual one. Spots by their ids; `among` of `watched` trials are alike in this. */
export type ShownTrialChoice =
  /** The best look opens in it. */
  | {
      readonly kind: 'look';
      readonly look: Pick<SeenLook, 'kind' | 'from' | 'to'>;
      readonly among: number;
      readonly watched: number;
    }
  /** Nothing opens often enough: the play comes as far in it as it ever does, to this pass. `isLast`: it is the last that it asks for. */
  | {
      readonly kind: 'throw';
      readonly from: string;
      readonly to: string;
      readonly isLast: boolean;
      readonly among: number;
      readonly watched: number;
    }
  /** The play comes to none of its passes, so it is the first. */
  | { readonly kind: 'first'; readonly watched: number };

/**
 * What is known of the play against one scheme. `waiting`: nothing yet. `coarse`: a first guess from a few trials. `sharpening`: right, and
 * becoming narrower. `done`: as narrow as it becomes. `refused`: there can be no answer, and `reason` says why.
 */
export interface SchemeAnswer {
  readonly scheme: string;
  readonly state: 'waiting' | 'coarse' | 'sharpening' | 'done' | 'refused';
  readonly reason: string | null;
  /** Goals per chance with its 95 % interval, and the trials that it rests on; `null` before the first. */
  readonly goals: Interval | null;
  readonly trials: number;
  /** More goals per chance than before (see `keepBaseline`); `null` when there is nothing to compare with. */
  readonly change: GoalChange | null;
  /** Goals per chance more than the set makes without the play; `null` until that is known, and when nobody asked. */
  readonly overSetAlone: GoalChange | null;
  /** Best first: by what they are worth once that is known, by their odds until then. */
  readonly looks: readonly LookAnswer[];
  readonly watched: number;
  /** Everything else that is counted: turnovers, shots, how much of the play is run, its own throws. Its goals per chance are `goals`. */
  readonly report: SchemeReport | null;
  /** Who is who, and the script as it runs against this scheme; `null` before they are there, `script` also when the play never begins. */
  readonly cast: Cast | null;
  readonly script: ScriptTrace | null;
  /** Which trial `script` is, and why that one is shown; `null` while it is not chosen. */
  readonly shown: ShownTrialChoice | null;
  /** What is still that of the play before its last edit, so that nothing flickers while the new answer is on its way. */
  readonly stale: { readonly goals: boolean; readonly looks: boolean; readonly script: boolean };
}

/** All schemes together, by the ask's weights, over the trials that all of them have run. */
export interface OverallAnswer {
  readonly goals: Interval;
  readonly trials: number;
  readonly coarse: boolean;
  readonly change: GoalChange | null;
  /** As that of one scheme, over all of them; `null` until every one of them is known. */
  readonly overSetAlone: GoalChange | null;
}

/** Everything that is known now. Never written to: what did not change keeps its identity from one snapshot to the next. */
export interface AnswersSnapshot {
  readonly ask: Ask | null;
  /** In the order of the ask's schemes. */
  readonly schemes: readonly SchemeAnswer[];
  /** `null` until every scheme that has an answer has its first. */
  readonly overall: OverallAnswer | null;
  /** Whether there is a play to compare with. */
  readonly hasBaseline: boolean;
  readonly finished: boolean;
  /** Why the simulation itself failed, which is no fault of the play's; `null` when it runs. */
  readonly failure: string | null;
}

export const emptySnapshot: AnswersSnapshot = {
  ask: null,
  schemes: [],
  overall: null,
  hasBaseline: false,
  finished: true,
  failure: null,
};

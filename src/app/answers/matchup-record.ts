import {
  estimateGoals,
  type ForcedTrial,
  type LookValue,
  type ScriptTrace,
  type Tally,
  type WatchedPlay,
} from '../../engine/index.ts';
import type { Cast, TrialSetup } from '../../worker/index.ts';
import type { AnswerPlan } from './answer-plan.ts';
import type { ChosenTrial } from './choose-trial.ts';
import type { GoalOrigins } from './goal-origins.ts';

/** What is known of one setup so far. Grows, in steps that depend on the setup alone: when it is finished it is the same on every machine. */
export interface MatchupRecord {
  readonly setup: TrialSetup;
  /** The first trials, counted. */
  tally: Tally | null;
  /** What was seen in the first trials, watched. */
  seen: { readonly trials: number; readonly play: WatchedPlay } | null;
  /** Looks that are taken in trials in which they came open, and the goals of those that have been run, as odds, in the same order. */
  replays: { readonly plan: readonly ForcedTrial[]; readonly odds: readonly number[] } | null;
  values: readonly LookValue[];
  /** The script of the trial that is shown, or of another one until that is chosen. */
  traced: { readonly cast: Cast; readonly script: ScriptTrace | null } | null;
  /** Which trial is shown, and why that one; `null` while it is not chosen. What is chosen before all looks are known may change once. */
  chosen: (ChosenTrial & { readonly forGood: boolean }) | null;
  /** Where its goals come from; `null` until somebody asked. */
  origins: GoalOrigins | null;
  /** Why there can be no answer: a plain sentence. */
  refused: string | null;
  finished: boolean;
  /** Counts the changes above. */
  changes: number;
}

export function createRecord(setup: TrialSetup): MatchupRecord {
  return {
    setup,
    tally: null,
    seen: null,
    replays: null,
    values: [],
    traced: null,
    chosen: null,
    origins: null,
    refused: null,
    finished: false,
    changes: 0,
  };
}

/** Whether goals a chance are known so well, or will not be known better. */
export function isKnownTo(tally: Tally | null, halfWidth: number, { least, most }: AnswerPlan): boolean {
  if (tally === null || tally.to < least) return false;
  if (tally.to >= most) return true;
  const { low, high } = estimateGoals([tally]);
  return (high - low) / 2 <= halfWidth;
}

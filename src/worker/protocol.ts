import type { ForcedTrial, Level, Tally, WatchedPlay } from '../engine/index.ts';

/**
 * Everything that a set of trials depends on, as plain data that any worker can receive. Two setups that are equal
 * as JSON give the same trials.
 */
export interface TrialSetup {
  /** The playbook file's text, already known to be free of errors. */
  readonly document: string;
  readonly play: string;
  readonly scheme: string;
  /** The opponent of the playbook who plays it so well as the playbook says; anybody of the level when absent. */
  readonly opponent?: string;
  readonly side: 'left' | 'right';
  /** Seconds of penalty; the playbook's own when `null`. */
  readonly penalty: number | null;
  /** Level both sides play at; the team's own when `null`. */
  readonly level: Level | null;
  readonly seed: number;
}

/** Trials `from` (included) to `to` (excluded). */
export interface TrialRange {
  readonly from: number;
  readonly to: number;
}

/** What is asked of a worker. */
export type WorkerRequest =
  /** How do these trials end? */
  | { readonly kind: 'tally'; readonly setup: TrialSetup; readonly range: TrialRange }
  /** What comes open in these trials while the script runs by itself? */
  | { readonly kind: 'watch'; readonly setup: TrialSetup; readonly range: TrialRange }
  /** What is it worth to take these looks? */
  | { readonly kind: 'force'; readonly setup: TrialSetup; readonly trials: readonly ForcedTrial[] };

/** What a worker answers. */
export type WorkerAnswer =
  | { readonly kind: 'tally'; readonly tally: Tally }
  | { readonly kind: 'watch'; readonly watched: WatchedPlay }
  /** Goals from each forced look to its chance's end. */
  | { readonly kind: 'force'; readonly goals: Uint8Array }
  /** The setup names something that the playbook does not have: a plain sentence. */
  | { readonly kind: 'refused'; readonly reason: string };

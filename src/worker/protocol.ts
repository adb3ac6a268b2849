import type { Level, Tally } from '../engine/index.ts';

/**
 * Everything that a set of trials depends on, as plain data that any worker can receive. Two setups that are equal
 * as JSON give the same trials.
 */
export interface TrialSetup {
  /** The playbook file's text, already known to be free of errors. */
  readonly document: string;
  readonly play: string;
  readonly scheme: string;
  readonly side: 'left' | 'right';
  /** Seconds of penalty. */
  readonly penalty: number;
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
  { readonly kind: 'tally'; readonly setup: TrialSetup; readonly range: TrialRange };

/** What a worker answers. */
export type WorkerAnswer =
  | { readonly kind: 'tally'; readonly tally: Tally }
  /** The setup names something that the playbook does not have: a plain sentence. */
  | { readonly kind: 'refused'; readonly reason: string };

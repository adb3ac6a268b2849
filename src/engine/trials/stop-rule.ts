import { estimateCount } from '../statistics/estimate-count.ts';
import { mergeTallies } from './merge-tallies.ts';
import type { Tally } from './tally.ts';

/**
 * When a run of trials has told enough. The rule is looked at only where a batch ends, in the order of the trials, so that it
 * stops at the same trial whichever worker was done first.
 */
export interface StopRule {
  /** Trials of one batch, 1 or more. */
  readonly batch: number;
  /** Never fewer than this: a first batch without a goal looks narrow by luck. */
  readonly least: number;
  /** Never more than this. */
  readonly most: number;
  /** Stop when half the width of the 95 % interval of goals per chance is at most this; 0 runs all `most` trials. */
  readonly halfWidth: number;
}

export const defaultStopRule: StopRule = { batch: 250, least: 500, most: 4000, halfWidth: 0.02 };

/** Trials `from` (included) to `to` (excluded). */
export interface Batch {
  readonly from: number;
  readonly to: number;
}

/** The batches of a run that goes on to its end, in order. RangeError for a batch of no trials. */
export function batchesOf(rule: StopRule): readonly Batch[] {
  if (!(rule.batch >= 1)) throw new RangeError(`invalid batch: ${rule.batch} (expected 1 or more)`);
  const batches: Batch[] = [];
  for (let from = 0; from < rule.most; from += rule.batch)
    batches.push({ from, to: Math.min(rule.most, from + rule.batch) });
  return batches;
}

export type StopAnswer =
  /** Enough: `tally` holds the trials up to the stop, and no others. */
  | { readonly kind: 'enough'; readonly tally: Tally }
  /** Not enough yet: run this batch next. */
  | { readonly kind: 'goOn'; readonly next: Batch };

/**
 * Whether these tallies, one for each of the first batches of `batchesOf(rule)` in their order, are enough. Tallies beyond the stop
 * (a second worker may have been faster than the answer) are left out, so that the answer does not depend on them.
 */
export function applyStopRule(rule: StopRule, tallies: readonly Tally[]): StopAnswer {
  const batches = batchesOf(rule);
  for (let at = 0; at < batches.length; at++) {
    if (at >= tallies.length) return { kind: 'goOn', next: batches[at]! };
    checkBatch(batches[at]!, tallies[at]!);
    const used = tallies.slice(0, at + 1);
    if (at === batches.length - 1 || isEnough(rule, used)) return { kind: 'enough', tally: mergeTallies(used) };
  }
  throw new RangeError(`invalid most: ${rule.most} (expected 1 or more)`);
}

function checkBatch(batch: Batch, tally: Tally): void {
  if (tally.from === batch.from && tally.to === batch.to) return;
  throw new RangeError(`invalid tally: trials ${tally.from} to ${tally.to} (expected ${batch.from} to ${batch.to})`);
}

function isEnough(rule: StopRule, used: readonly Tally[]): boolean {
  const { to, goals_byTrial } = mergeTallies(used);
  if (to < rule.least) return false;
  const { low, high } = estimateCount(goals_byTrial);
  return (high - low) / 2 <= rule.halfWidth;
}

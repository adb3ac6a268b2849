import type { TrialRange } from './protocol.ts';

/**
 * Trials in one batch. It is the same for any number of threads, because an answer may stop only at a batch's end;
 * small enough that two threads share a short test evenly, large enough that handing it over costs nothing.
 */
export const batchTrials = 250;

/** Trials `from` (included) to `to` (excluded) in batches that begin at multiples of `batchTrials`, in order. */
export function trialBatches(from: number, to: number): readonly TrialRange[] {
  const batches: TrialRange[] = [];
  for (let start = from; start < to; ) {
    const end = Math.min(to, (Math.floor(start / batchTrials) + 1) * batchTrials);
    batches.push({ from: start, to: end });
    start = end;
  }
  return batches;
}

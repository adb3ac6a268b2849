import type { TrialRange } from './protocol.ts';

/** Watched trials in one batch: small enough that two threads share a short test evenly. */
export const batchTrials = 100;

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

/** The items in order, `size` at a time; the last chunk may be shorter. Throws a RangeError for a size under 1. */
export function chunksOf<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  if (!(size >= 1)) throw new RangeError(`size must be at least 1, not ${size}`);
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  );
}

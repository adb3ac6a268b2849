import { type ReadsEffort, readsEffort } from '../../worker/index.ts';

/** What is simulated one after the other, each in place of the one before: the first is rough and there in seconds. */
export const findRounds: readonly ReadsEffort[] = [9, 60, 200].map(readsEffort);

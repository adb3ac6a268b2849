import { defaultSearchLimits } from '../../engine/index.ts';
import type { ReadsEffort } from '../../worker/index.ts';

/** Half as many ordered lists as can be tried are enough: with more the answer comes later and is the same. */
const limits = { ...defaultSearchLimits, absence: false, leastShare: 0.04, lists: 25_000 };
/** What comes within so many seconds of a decision counts for it: the rest of a play, and no more. */
const horizon = 8;

/** What is simulated one after the other, each in place of the one before: the first is rough and there in seconds. */
export const findRounds: readonly ReadsEffort[] = [20, 100, 200].map((trials) => ({ trials, horizon, limits }));

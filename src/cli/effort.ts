import { defaultStopRule, leastReplays } from '../engine/index.ts';
import type { Effort } from '../worker/index.ts';

/**
 * How much is simulated for one play against one scheme. Without a number of trials it goes on until goals a chance are known to 0.03
 * either way; with one, exactly so many are counted, as large a part of them is watched for looks, and each look is replayed as
 * large a part of them, but often enough to say something of its worth.
 */
export function effortFor(trials: number | null, wanted: 'goals' | 'looks'): Effort {
  const usual = trials ?? usualTrials;
  const rule =
    trials === null
      ? { ...defaultStopRule, most: usualTrials, halfWidth: 0.03 }
      : { ...defaultStopRule, least: trials, most: trials, halfWidth: 0 };
  if (wanted === 'goals') return { rule, watched: 0, looks: 0, perLook: 0 };
  const perLook = Math.max(fewestReplays, Math.ceil(usual / 20));
  return { rule, watched: Math.max(1, Math.ceil(usual / 5)), looks: perLook > fewestReplays ? 6 : 4, perLook };
}

/** A look that not every watched man-up shows still gets the replays that its worth needs. With so few, fewer looks are replayed. */
const fewestReplays = leastReplays + 2;

/** Enough for 0.03 either way even where half of all chances bring a goal. */
const usualTrials = 1000;

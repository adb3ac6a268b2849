import { defaultStopRule } from '../engine/index.ts';
import type { Effort } from '../worker/index.ts';

/**
 * How much is simulated for one play against one scheme. Without a number of trials it goes on until goals a chance are known to 0.03
 * either way; with one, exactly so many are counted, and as large a part of them is watched and tried for looks.
 */
export function effortFor(trials: number | null, wanted: 'goals' | 'looks'): Effort {
  const usual = trials ?? usualTrials;
  const rule =
    trials === null
      ? { ...defaultStopRule, most: usualTrials, halfWidth: 0.03 }
      : { ...defaultStopRule, least: trials, most: trials, halfWidth: 0 };
  if (wanted === 'goals') return { rule, watched: 0, looks: 0, perLook: 0 };
  return { rule, watched: Math.max(1, Math.ceil(usual / 5)), looks: 6, perLook: Math.max(1, Math.ceil(usual / 20)) };
}

/** Enough for 0.03 either way even where half of all chances bring a goal. */
const usualTrials = 1000;

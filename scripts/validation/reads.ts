import { pathToFileURL } from 'node:url';
import type { TrialPool } from '../../src/worker/index.ts';
import { createTrialPool, defaultThreads } from '../../src/worker/node.ts';
import { gatherDemo } from './demo-carriers.ts';
import { readsHorizonGroup } from './reads-horizon.ts';
import { readsLuckGroup } from './reads-luck.ts';
import { readsPlayedGroup } from './reads-played.ts';
import { readsUnmetGroup } from './reads-unmet.ts';
import type { Group } from './row.ts';
import { type StudiedCarrier, studyDemoCarrier } from './studied-carrier.ts';

/** Man-ups of a scheme that are played to the chance's end: each costs five times as much. */
const wholeTrials = 20;

/** How well reads do on what they have not met, by so many man-ups a scheme to learn from and as many to measure in. The same for any number of threads. */
export async function readsGroups(trials: number): Promise<readonly Group[]> {
  const pool = createTrialPool({ threads: defaultThreads(), worker: pathToFileURL('dist/trial-worker.js') });
  try {
    return await groupsOf(pool, trials);
  } finally {
    await pool.close();
  }
}

async function groupsOf(pool: TrialPool, trials: number): Promise<readonly Group[]> {
  const carriers = await gatherDemo(pool, trials);
  const studied: StudiedCarrier[] = [];
  for (const carrier of carriers) {
    const study = await studyDemoCarrier(pool, carrier);
    if (study !== null) studied.push(study);
  }
  return [
    readsLuckGroup(studied, trials),
    readsUnmetGroup(studied),
    readsPlayedGroup(studied),
    await readsHorizonGroup(pool, carriers, Math.min(trials, wholeTrials)),
  ];
}

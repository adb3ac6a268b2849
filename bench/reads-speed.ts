import { pathToFileURL } from 'node:url';
import { demoPlaybook, toEnginePlay } from '../src/playbook/index.ts';
import { readsEffort, studyReads, type WeighedSetup } from '../src/worker/index.ts';
import { createTrialPool } from '../src/worker/node.ts';
import { houseSetups } from './house-sample.ts';

const worker = pathToFileURL('dist/trial-worker.js');

/** How long the reads of the man who starts a play take, wall-clock seconds. */
export interface ReadsSpeed {
  readonly play: string;
  readonly carrier: string;
  /** Man-ups against each scheme that are learnt from, and as many that are measured in. */
  readonly trials: number;
  readonly threads: number;
  readonly seconds: number;
}

/** The reads of the first carrier of each demo play against the nine schemes: a first answer by one thread, and cards to teach by two. */
export async function measureReads(first: number, usual: number): Promise<readonly ReadsSpeed[]> {
  const found: ReadsSpeed[] = [];
  for (const [trials, threads] of [
    [first, 1],
    [usual, 2],
  ] as const) {
    for (const { id } of demoPlaybook.plays) found.push(await secondsOf(id, trials, threads));
  }
  return found;
}

async function secondsOf(id: string, trials: number, threads: number): Promise<ReadsSpeed> {
  const play = toEnginePlay(demoPlaybook, id, 'right');
  const carrier = play.spots.findIndex((spot) => spot.id === play.start.ball);
  const setups = houseSetups().flatMap((setup): readonly WeighedSetup[] =>
    setup.play === id ? [{ setup, weight: 1 }] : [],
  );
  const pool = createTrialPool({ threads, worker });
  // Threads have booted and compiled before the clock runs, as when a coach comes from watching the play.
  await studyReads(pool, setups, { play, carrier }, readsEffort(warmUp));
  const began = performance.now();
  await studyReads(pool, setups, { play, carrier }, readsEffort(trials));
  const seconds = (performance.now() - began) / 1e3;
  await pool.close();
  return { play: id, carrier: play.start.ball, trials, threads, seconds };
}

/** Man-ups a scheme that have every matchup compiled. */
const warmUp = 5;

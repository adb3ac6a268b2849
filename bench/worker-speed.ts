import { pathToFileURL } from 'node:url';
import type { TrialPool, WorkerRequest } from '../src/worker/index.ts';
import { createTrialPool } from '../src/worker/node.ts';
import { houseSetups } from './house-sample.ts';
import { median } from './measure.ts';

const worker = pathToFileURL('dist/trial-worker.js');

export interface WorkerSpeed {
  /** Wall-clock seconds of the same work with one thread and with two. */
  readonly one: number;
  readonly two: number;
  /** How many times as fast two are. */
  readonly ratio: number;
  /** CPU seconds of the work with two over those with one: what a second thread costs, whoever else is on the machine. */
  readonly cpuRatio: number;
}

/** The same requests to a pool of one and of two threads, in turn; threads have booted and compiled before the clock runs. */
export async function measureWorkers(trials: number, repeats: number): Promise<WorkerSpeed> {
  const pools = [1, 2].map((threads) => createTrialPool({ threads, worker }));
  const [one, two] = pools as [TrialPool, TrialPool];
  const times: { one: number[]; two: number[]; ratios: number[]; cpu: number[] } = {
    one: [],
    two: [],
    ratios: [],
    cpu: [],
  };
  for (const pool of pools) for (let round = 0; round < 3; round++) await seconds(pool, trials);
  for (let repeat = 0; repeat < repeats; repeat++) {
    const alone = await seconds(one, trials);
    const together = await seconds(two, trials);
    times.one.push(alone.wall);
    times.two.push(together.wall);
    times.ratios.push(alone.wall / together.wall);
    times.cpu.push(together.cpu / alone.cpu);
  }
  await Promise.all(pools.map((pool) => pool.close()));
  return {
    one: median(times.one),
    two: median(times.two),
    ratio: median(times.ratios),
    cpuRatio: median(times.cpu),
  };
}

/** Run the house once with two threads and nothing else: what a test of a whole playbook takes. */
export async function runTwoWorkers(trials: number): Promise<void> {
  const pool = createTrialPool({ threads: 2, worker });
  await pool.answer(requests(trials));
  await pool.close();
}

async function seconds(pool: TrialPool, trials: number): Promise<{ readonly wall: number; readonly cpu: number }> {
  const began = performance.now();
  const before = process.cpuUsage();
  await pool.answer(requests(trials));
  const { user, system } = process.cpuUsage(before);
  return { wall: (performance.now() - began) / 1e3, cpu: (user + system) / 1e6 };
}

function requests(trials: number): readonly WorkerRequest[] {
  return houseSetups().map((setup) => ({ kind: 'tally', setup, range: { from: 0, to: trials } }));
}

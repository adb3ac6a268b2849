import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { type Ready, runHouse } from './chance-speed.ts';
import { median } from './measure.ts';

export interface Allocation {
  /** Bytes that the heap grows over ten thousand steps of running trials, whatever a trial's begin and end take included. */
  readonly bytesPerTenThousandSteps: number;
  /** The same a chance, for scale. */
  readonly bytesPerChance: number;
  readonly chanceSteps: number;
}

/**
 * Growth of the heap while one trial at a time runs, after warm-up: the median over all matchups and `rounds` trials of each.
 * The young generation is emptied before each trial and one trial does not fill it, so that nothing is collected in between.
 */
export function measureAllocation(house: readonly Ready[], rounds: number): Allocation {
  const collect = exposeCollector();
  runHouse(house, 0, 40);
  const samples = house.flatMap((ready) =>
    Array.from({ length: rounds }, (_, round) => {
      collect({ type: 'minor' });
      const before = process.memoryUsage().heapUsed;
      const { steps } = runHouse([ready], round, round + 1);
      return { bytes: process.memoryUsage().heapUsed - before, steps };
    }),
  );
  const perStep = median(samples.map(({ bytes, steps }) => bytes / steps));
  const chanceSteps = samples.reduce((sum, { steps }) => sum + steps, 0) / samples.length;
  return { bytesPerTenThousandSteps: perStep * 1e4, bytesPerChance: perStep * chanceSteps, chanceSteps };
}

function exposeCollector(): (options: { readonly type: 'minor' }) => void {
  setFlagsFromString('--expose_gc');
  return runInNewContext('gc');
}

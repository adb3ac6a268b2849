import { type ChanceModel, type ChanceState, compileChance, createChanceState, runTrial } from '../src/engine/index.ts';
import { benchSeed, houseMatchups } from './house-sample.ts';
import { cpuSeconds, median } from './measure.ts';

/** A matchup compiled, with its memory. */
export interface Ready {
  readonly model: ChanceModel;
  readonly state: ChanceState;
}

export function readyHouse(): readonly Ready[] {
  return houseMatchups().map((matchup) => {
    const model = compileChance(matchup, benchSeed);
    return { model, state: createChanceState(model) };
  });
}

/** What some trials came to. */
export interface Simulated {
  readonly steps: number;
  readonly seconds: number;
}

/** Run trials `from` (included) to `to` (excluded) of each matchup. */
export function runHouse(house: readonly Ready[], from: number, to: number): Simulated {
  let steps = 0;
  let seconds = 0;
  for (const { model, state } of house) {
    for (let trial = from; trial < to; trial++) {
      runTrial(model, state, trial);
      steps += state.step;
      seconds += state.time;
    }
  }
  return { steps, seconds };
}

export interface ChanceSpeed {
  /** Simulated seconds over ten over CPU seconds. */
  readonly tenSecondTrials: number;
  /** The fastest repeat: nearest to what a core does that nobody disturbs. */
  readonly best: number;
  readonly chances: number;
  /** Mean simulated length of a chance, s. */
  readonly length: number;
  /** Mean CPU time of a chance, s. */
  readonly cpu: number;
}

/** Speed on one core: the median over `repeats` of `trials` chances in every matchup of the house, after a warm-up. */
export function measureChances(house: readonly Ready[], trials: number, repeats: number): ChanceSpeed {
  runHouse(house, 0, trials);
  let seconds = 0;
  const speeds = Array.from({ length: repeats }, () => {
    const cpu = cpuSeconds(() => {
      ({ seconds } = runHouse(house, 0, trials));
    });
    return seconds / 10 / cpu;
  });
  const tenSecondTrials = median(speeds);
  const chances = trials * house.length;
  const length = seconds / chances;
  return { tenSecondTrials, best: Math.max(...speeds), chances, length, cpu: length / 10 / tenSecondTrials };
}

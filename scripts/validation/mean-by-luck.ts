import { type Estimate, weightedMeanInterval } from '../../src/engine/index.ts';

/** A number from one man-up, and with which luck that was played: what shares its luck is no independent evidence. */
export interface Lucky {
  readonly luck: number;
  readonly value: number;
}

/** Mean of some numbers, each counting the same, with an interval that allows for shared luck. RangeError when there is none. */
export function meanByLuck(numbers: readonly Lucky[]): Estimate {
  return weightedMeanInterval(
    numbers.map(({ value }) => value),
    numbers.map(() => 1),
    numbers.map(({ luck }) => luck),
  );
}

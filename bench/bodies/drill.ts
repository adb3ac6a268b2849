/** Bodies that run to places: the same for every version of the step. */
export interface Drill {
  readonly men: number;
  readonly steps: number;
  /** Seconds of a step. */
  readonly step: number;
  readonly topSpeed: number;
  readonly drag: number;
  /** Where they begin: x, y per man; yards. */
  readonly starts: Float64Array;
  /** A new place for everyone every `each` steps: x, y per man, place after place. */
  readonly each: number;
  readonly places: Float64Array;
}

const men = 13;
const steps = 400;
const each = 100;

/** Twenty seconds of thirteen men (six against five, keeper and one more) with four places each, of a small fixed generator. */
export const drill: Drill = {
  men,
  steps,
  step: 0.05,
  topSpeed: 8.2,
  drag: 1.2,
  starts: spread(men, 1),
  each,
  places: spread((men * steps) / each, 2),
};

/** Places over 30 by 20 yards: a linear congruential generator (Numerical Recipes' constants), so that all versions share them. */
function spread(count: number, seed: number): Float64Array {
  let word = seed;
  return Float64Array.from({ length: 2 * count }, (_, index) => {
    word = (Math.imul(word, 1664525) + 1013904223) >>> 0;
    const share = word / 2 ** 32;
    return index % 2 === 0 ? 30 * share - 15 : 20 * share - 2;
  });
}

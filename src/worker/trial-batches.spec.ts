import { describe, expect, it } from 'vitest';
import { batchTrials, chunksOf, trialBatches } from './trial-batches.ts';

describe('trialBatches', () => {
  it.each([
    [0, 0, []],
    [0, 1, [[0, 1]]],
    [0, batchTrials, [[0, batchTrials]]],
    [
      0,
      batchTrials + 1,
      [
        [0, batchTrials],
        [batchTrials, batchTrials + 1],
      ],
    ],
    [
      10,
      batchTrials + 5,
      [
        [10, batchTrials],
        [batchTrials, batchTrials + 5],
      ],
    ],
  ])('from %d to %d', (from, to, expected) => {
    expect(trialBatches(from, to).map((one) => [one.from, one.to])).toEqual(expected);
  });

  it('cuts a longer test at the same places as a shorter one', () => {
    const long = trialBatches(0, 4000);
    expect(long.slice(0, 4)).toEqual(trialBatches(0, 4 * batchTrials));
  });
});

describe('chunksOf', () => {
  it.each([
    [[], 2, []],
    [[1, 2, 3], 2, [[1, 2], [3]]],
    [[1, 2], 2, [[1, 2]]],
  ])('cuts %j by %d', (items, size, chunks) => {
    expect(chunksOf<number>(items, size)).toEqual(chunks);
  });

  it('refuses chunks of nothing', () => {
    expect(() => chunksOf([1], 0)).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BlockTime, fitBlocks } from './fit-blocks.ts';

const block: fc.Arbitrary<BlockTime> = fc
  .record({
    least: fc.integer({ min: 1, max: 8 }),
    usual: fc.nat({ max: 6 }),
    most: fc.nat({ max: 6 }),
    worth: fc.double({ min: 0, max: 1, noNaN: true }),
    withNext: fc.boolean(),
  })
  .map(({ least, usual, most, ...rest }) => ({ ...rest, least, usual: least + usual, most: least + usual + most }));
const blocks = fc.array(block, { maxLength: 7 });
const halves = fc.nat({ max: 120 });

const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);

describe('fitBlocks', () => {
  test('never takes more than there is, and says what is free', () => {
    fc.assert(
      fc.property(halves, blocks, blocks, (time, core, more) => {
        const fit = fitBlocks(time, core, more);
        expect(fit.free).toBeGreaterThanOrEqual(0);
        expect(sum(fit.core) + sum(fit.more) + fit.free).toBe(time);
      }),
    );
  });

  test('gives each block nothing, or from its least to its most', () => {
    fc.assert(
      fc.property(halves, blocks, blocks, (time, core, more) => {
        const fit = fitBlocks(time, core, more);
        for (const [at, got] of [...fit.core, ...fit.more].entries()) {
          if (got === 0) continue;
          const { least, most } = [...core, ...more][at]!;
          expect(got).toBeGreaterThanOrEqual(least);
          expect(got).toBeLessThanOrEqual(most);
        }
      }),
    );
  });

  test('more time never gives less of anything', () => {
    fc.assert(
      fc.property(halves, blocks, blocks, (time, core, more) => {
        const [less, longer] = [fitBlocks(time, core, more), fitBlocks(time + 1, core, more)];
        const [before, after] = [
          [...less.core, ...less.more],
          [...longer.core, ...longer.more],
        ];
        for (const [at, got] of after.entries()) expect(got).toBeGreaterThanOrEqual(before[at]!);
      }),
    );
  });

  test('leaves out the last ones first, and what begins together goes together', () => {
    fc.assert(
      fc.property(halves, blocks, (time, core) => {
        const { core: got } = fitBlocks(time, core);
        for (const [at, one] of got.entries()) {
          if (at > 0 && one > 0) expect(got[at - 1]).toBeGreaterThan(0);
          if (core[at]!.withNext === true && at + 1 < got.length) expect(got[at + 1]! > 0).toBe(one > 0);
        }
      }),
    );
  });

  test('leaves nothing free as long as something could grow', () => {
    fc.assert(
      fc.property(halves, blocks, (more, core) => {
        const least = sum(core.map((one) => one.least));
        const most = sum(core.map((one) => one.most));
        const time = Math.min(most, least + more);
        expect(fitBlocks(time, core).free).toBe(0);
      }),
    );
  });
});

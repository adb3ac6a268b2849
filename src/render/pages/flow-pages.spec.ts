import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Block, gap } from './block.ts';
import { flowPages } from './flow-pages.ts';

const heights = fc.array(fc.integer({ min: 1, max: 150 }), { maxLength: 30 });
const highOf = (blocks: readonly Block[], between: number): number =>
  blocks.reduce((sum, { height }) => sum + height, 0) + between * (blocks.length - 1);

it('blocks keep their order, and no page is overfull unless by one block that is too high for any', () => {
  fc.assert(
    fc.property(heights, fc.integer({ min: 0, max: 9 }), fc.boolean(), (list, between, headed) => {
      const blocks = list.map(gap);
      const again = headed ? gap(20) : undefined;
      const pages = flowPages(blocks, 100, between, again);
      expect(pages.flat().filter((block) => block !== again)).toEqual(blocks);
      for (const [at, page] of pages.entries()) {
        expect(page[0] === again).toBe(headed && at > 0);
        const own = page.filter((block) => block !== again);
        expect(own.length).toBeGreaterThan(0);
        if (own.length > 1) expect(highOf(page, between)).toBeLessThanOrEqual(100);
      }
    }),
  );
});

it('a page is left only when the next block does not fit on it', () => {
  fc.assert(
    fc.property(heights, (list) => {
      const pages = flowPages(list.map(gap), 100, 5);
      for (const [at, page] of pages.slice(0, -1).entries()) {
        expect(highOf([...page, pages[at + 1]![0]!], 5)).toBeGreaterThan(100);
      }
    }),
  );
});

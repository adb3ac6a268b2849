import type { Block } from './block.ts';

/**
 * Blocks dealt out to as many pages as they need, in their order, `between` apart, each page `room` high; `again` stands at the top of every page but
 * the first. A block that is higher than a page stands alone on one. No block is no page.
 */
export function flowPages(
  blocks: readonly Block[],
  room: number,
  between: number,
  again?: Block,
): readonly (readonly Block[])[] {
  const pages: Block[][] = [];
  let left = 0;
  const start = (block: Block): void => {
    const head = again === undefined || pages.length === 0 ? [] : [again];
    pages.push([...head, block]);
    left = room - block.height - head.reduce((sum, { height }) => sum + height + between, 0);
  };
  for (const block of blocks) {
    const page = pages.at(-1);
    if (page === undefined || block.height + between > left) {
      start(block);
      continue;
    }
    page.push(block);
    left -= block.height + between;
  }
  return pages;
}

import { type Block, beside, gap, lineAcross, paragraph, rule, stack, type TextLook } from './block.ts';

/** Said on every page that shows how men move. */
export const lineLegend = 'Solid: run. Zigzag: carry. Dashed: pass. Bar: pick. Double: shot.';

/** What stands at the foot of every page: a line, words, and the page's number where pages are counted. */
export function pageFoot(words: string, look: TextLook, width: number, page?: number): Block {
  const room = page === undefined ? 0 : numberRoom;
  const said = paragraph(words, look, width - room);
  const number = page === undefined ? gap(0) : lineAcross('', `${page}`, { ...look, size: 11, weight: 'bold' }, width);
  return stack([
    rule(width),
    gap(3),
    beside([
      { left: 0, block: said },
      { left: 0, block: number },
    ]),
  ]);
}

/** Kept free for three figures, points. */
const numberRoom = 40;

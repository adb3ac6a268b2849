import { type Block, badge, gap, paragraph, shortened, stack, type TextLook } from './block.ts';
import { bestAndWorst, shortScheme, triggerWord } from './call-words.ts';
import { type Page, type PageMark, type PageRule, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';
import type { SheetContent } from './play-sheet.ts';

/** A card for a wristband, points: three inches by one and a half, as their windows are (common practice, no source). */
export const cardSize = { width: 216, height: 108 } as const;

const columns = 2;
const padding = 7;

const looks = {
  name: { size: 16, weight: 'bold', tone: 'ink', leading: 1.1 },
  strong: { size: 11, weight: 'bold', tone: 'ink', leading: 1.2 },
  body: { size: 11, weight: 'regular', tone: 'ink', leading: 1.2 },
  foot: { size: 11, weight: 'regular', tone: 'quiet', leading: 1.3 },
} as const satisfies Record<string, TextLook>;

/** A play to be called, by its number in the playbook. */
export interface Call {
  readonly number: number;
  readonly content: SheetContent;
}

/**
 * Cards for a wristband, a play on each: its number, its name, the word that begins it and the schemes that it beats most. Several on a page, to be cut
 * apart along the marks at the edges of the paper. No call is no page.
 */
export function callCards(calls: readonly Call[], page?: number): readonly Page[] {
  const [first] = calls;
  if (first === undefined) return [];
  const paper = papers[first.content.paper];
  const footOf = (count?: number): Block =>
    pageFoot(`Cut along the marks. ${first.content.date}.`, looks.foot, paper.width - 2 * pageMargin, count);
  const bottom = paper.height - pageMargin - footOf().height;
  const grid = gridOf(paper.width, bottom);
  const onPage = columns * grid.rows;
  return Array.from({ length: Math.ceil(calls.length / onPage) }, (_, at) => {
    const shown = calls.slice(at * onPage, (at + 1) * onPage);
    const foot = footOf(page === undefined ? undefined : page + at);
    return {
      title: `Call cards${at === 0 ? '' : `, page ${at + 1}`}`,
      description: shown.map(({ number, content }) => `${number}: ${content.play.name}.`).join(' '),
      width: paper.width,
      height: paper.height,
      marks: [...cardsOf(shown, grid), ...cutMarks(grid), ...foot.draw(pageMargin, bottom)],
    };
  });
}

/** Where the cards of a page begin, and how many rows of them there are. */
interface Grid {
  readonly left: number;
  readonly top: number;
  readonly rows: number;
}

function gridOf(width: number, bottom: number): Grid {
  const top = pageMargin + cutMark;
  const rows = Math.floor((bottom - cutMark - top) / cardSize.height);
  return { left: (width - columns * cardSize.width) / 2, top, rows };
}

function cardsOf(calls: readonly Call[], { left, top }: Grid): readonly PageMark[] {
  return calls.flatMap((call, place) => {
    const [column, row] = [place % columns, Math.floor(place / columns)];
    return cardOf(call).draw(left + column * cardSize.width, top + row * cardSize.height);
  });
}

function cardOf({ number, content: { play, worths } }: Call): Block {
  const tag = 46;
  const width = cardSize.width - tag - 2 * padding;
  const { best } = bestAndWorst(worths, 2);
  const beats = best.length === 0 ? 'Not tried yet' : best.map(({ scheme }) => shortScheme(scheme)).join(', ');
  const words = stack([
    shortened(play.name, looks.name, width, 1),
    gap(2),
    shortened(triggerWord(play), looks.strong, width, 1),
    gap(4),
    paragraph('Best against', looks.body, width),
    shortened(beats, looks.strong, width, 2),
  ]);
  const inner = cardSize.height - 2 * padding;
  return {
    height: cardSize.height,
    draw: (left, top) => [
      { kind: 'box', left, top, ...cardSize, fill: 'none', edge: 0.5 },
      ...badge(`${number}`, number < 100 ? 26 : 18, tag - padding, inner).draw(left + padding, top + padding),
      ...words.draw(left + tag + padding, top + Math.max(padding, (cardSize.height - words.height) / 2)),
    ],
  };
}

/** How long a mark to cut along is, and how far it stays from the cards. */
const cutMark = 18;
const cutGap = 4;

/** Short lines at the edges where the cards end: a ruler laid from one to the other cuts a whole row. */
function cutMarks({ left, top, rows }: Grid): readonly PageMark[] {
  const xs = Array.from({ length: columns + 1 }, (_, at) => left + at * cardSize.width);
  const ys = Array.from({ length: rows + 1 }, (_, at) => top + at * cardSize.height);
  const bottom = top + rows * cardSize.height;
  const right = left + columns * cardSize.width;
  const mark = (x1: number, y1: number, x2: number, y2: number): PageRule => ({
    kind: 'rule',
    from: { x: x1, y: y1 },
    to: { x: x2, y: y2 },
    width: 0.5,
  });
  return [
    ...xs.flatMap((x) => [mark(x, top - cutMark, x, top - cutGap), mark(x, bottom + cutGap, x, bottom + cutMark)]),
    ...ys.flatMap((y) => [mark(left - cutMark, y, left - cutGap, y), mark(right + cutGap, y, right + cutMark, y)]),
  ];
}

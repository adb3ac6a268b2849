import { benchCard } from './bench-card.ts';
import { type Block, beside, gap, lineAcross, paragraph, rule, shortened, stack, type TextLook } from './block.ts';
import { type Call, callCards } from './call-cards.ts';
import { flowPages } from './flow-pages.ts';
import { type Page, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';
import { playSheet, type SheetContent } from './play-sheet.ts';
import { spotPages } from './spot-pages.ts';

/** An entry of a document's outline: where it begins, counted from 0, and what belongs to it. */
export interface Bookmark {
  readonly title: string;
  readonly page: number;
  readonly children: readonly Bookmark[];
}

/** A whole playbook to print. */
export interface PrintedBook {
  readonly pages: readonly Page[];
  readonly outline: readonly Bookmark[];
}

const looks = {
  team: { size: 32, weight: 'bold', tone: 'ink', leading: 1.15 },
  title: { size: 18, weight: 'regular', tone: 'ink', leading: 1.3 },
  heading: { size: 14, weight: 'bold', tone: 'ink', leading: 1.5 },
  entry: { size: 13, weight: 'regular', tone: 'ink', leading: 1.6 },
  foot: { size: 11, weight: 'regular', tone: 'quiet', leading: 1.3 },
} as const satisfies Record<string, TextLook>;

/** A line of the contents with the pages that it stands for. */
interface Part {
  readonly title: string;
  readonly pages: readonly Page[];
}

/**
 * The whole playbook: a title page with contents, then each play's sheet and a page for each of its men, then the bench card and the cards for the wrist.
 * Pages are counted from the title page. RangeError without a play.
 */
export function printedBook(plays: readonly SheetContent[]): PrintedBook {
  const [first] = plays;
  if (first === undefined) throw new RangeError('invalid plays: none (expected at least one)');
  const calls = plays.map((content, at): Call => ({ number: at + 1, content }));
  // How many pages the contents take depends on the number of plays alone: what they say is known only when all else is laid out.
  const before = contentsPages(first, partsOf(calls, 0), 0).length;
  const parts = partsOf(calls, before);
  return {
    pages: [...contentsPages(first, parts, before), ...parts.flatMap(({ pages }) => pages)],
    outline: outlineOf(parts, before),
  };
}

/** Everything behind the contents, which take `before` pages. */
function partsOf(calls: readonly Call[], before: number): readonly Part[] {
  const parts: Part[] = [];
  let page = before + 1;
  const add = (title: string, pages: readonly Page[]): void => {
    parts.push({ title, pages });
    page += pages.length;
  };
  for (const { number, content } of calls) {
    add(`${number}. ${content.play.name}`, [playSheet(content, page), ...spotPages(content, page + 1)]);
  }
  add('Bench card', benchCard(calls, page));
  add('Call cards', callCards(calls, page));
  return parts;
}

function contentsPages(first: SheetContent, parts: readonly Part[], before: number): readonly Page[] {
  const { team, paper, date, side } = first;
  const { width, height } = papers[paper];
  const inside = width - 2 * pageMargin;
  const footOf = (page: number): Block => pageFoot(`Drawn for the ${side} side. ${date}.`, looks.foot, inside, page);
  const top = height - pageMargin - footOf(1).height;
  const blocks = [titleOf(team, inside), ...entriesOf(parts, before, inside)];
  return flowPages(blocks, top - pageMargin - 6, 0).map((shown, at) => ({
    title: at === 0 ? `${team}: man-up playbook` : `Contents, page ${at + 1}`,
    description: parts.map(({ title }) => `${title}.`).join(' '),
    width,
    height,
    marks: [...stack(shown).draw(pageMargin, pageMargin), ...footOf(at + 1).draw(pageMargin, top)],
  }));
}

function titleOf(team: string, width: number): Block {
  return stack([
    gap(60),
    shortened(team, looks.team, width, 3),
    paragraph('Man-up playbook', looks.title, width),
    gap(24),
    rule(width),
    paragraph('Contents', looks.heading, width),
  ]);
}

/** Room for the page numbers on the right, points. */
const numberRoom = 50;

function entriesOf(parts: readonly Part[], before: number, width: number): readonly Block[] {
  return firstPages(parts, before).map((page, at) =>
    beside([
      { left: 0, block: shortened(parts[at]!.title, looks.entry, width - numberRoom, 1) },
      { left: 0, block: lineAcross('', String(page + 1), looks.entry, width) },
    ]),
  );
}

/** On which page each part begins, counted from 0. */
function firstPages(parts: readonly Part[], before: number): readonly number[] {
  let page = before;
  return parts.map(({ pages }) => {
    const first = page;
    page += pages.length;
    return first;
  });
}

function outlineOf(parts: readonly Part[], before: number): readonly Bookmark[] {
  const entries = firstPages(parts, before).map((first, at): Bookmark => {
    const { title, pages } = parts[at]!;
    const children = pages.map((page, below) => ({ title: page.title, page: first + below, children: [] }));
    return { title, page: first, children: pages.length === 1 ? [] : children };
  });
  return [{ title: 'Contents', page: 0, children: [] }, ...entries];
}

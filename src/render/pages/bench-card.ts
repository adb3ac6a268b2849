import { perChance } from '../number-text.ts';
import {
  type Block,
  gap,
  paragraph,
  rule,
  stack,
  type TableColumn,
  type TextLook,
  tableGap,
  tableHead,
  tableRow,
} from './block.ts';
import type { Call } from './call-cards.ts';
import { bestAndWorst, firstReadWords, firstStepWords, shortScheme, triggerWord, type Worth } from './call-words.ts';
import { flowPages } from './flow-pages.ts';
import { type Page, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';

const looks = {
  title: { size: 20, weight: 'bold', tone: 'ink', leading: 1.2 },
  body: { size: 11, weight: 'regular', tone: 'ink', leading: 1.25 },
  foot: { size: 11, weight: 'regular', tone: 'quiet', leading: 1.3 },
} as const satisfies Record<string, TextLook>;

/**
 * A card for the bench, on paper turned on its side: every call with its set, how it starts, what it beats, where not to run it, and the first read. More
 * calls than fit go on overleaf. No call is no page.
 */
export function benchCard(calls: readonly Call[], page?: number): readonly Page[] {
  const [first] = calls;
  if (first === undefined) return [];
  const { paper, team } = first.content;
  const { width: height, height: width } = papers[paper];
  const inside = width - 2 * pageMargin;
  const foot = footOf(first, inside);
  const columns = columnsOf(inside);
  const title = paragraph(`${team}: man-up calls`, looks.title, inside);
  const again = stack([title, gap(4), rule(inside), tableHead(columns, looks.body)], tableGap);
  const rows = calls.map((call) => tableRow(columns, cellsOf(call), looks.body));
  const room = height - 2 * pageMargin - foot.height - 6;
  return flowPages([again, ...rows], room, tableGap, again).map((blocks, at) => ({
    title: `Bench card${at === 0 ? '' : `, page ${at + 1}`}`,
    description: calls
      .map(({ number, content }) => `${number}: ${content.play.name}, from a ${content.set}.`)
      .join(' '),
    width,
    height,
    marks: [
      ...stack(blocks, tableGap).draw(pageMargin, pageMargin),
      ...footOf(first, inside, page === undefined ? undefined : page + at).draw(
        pageMargin,
        height - pageMargin - foot.height,
      ),
    ],
  }));
}

function columnsOf(width: number): readonly TableColumn[] {
  const shares = [
    ['No.', 0.05],
    ['Call', 0.12],
    ['Set', 0.1],
    ['Starts with', 0.17],
    ['Best against', 0.2],
    ['Not against', 0.18],
    ['First read', 0.18],
  ] as const;
  return shares.map(([title, share]) => ({ title, width: share * width, align: 'left' }));
}

function cellsOf({ number, content: { play, set, worths } }: Call): readonly string[] {
  const { best, worst } = bestAndWorst(worths, 2);
  return [
    String(number),
    play.name,
    set,
    `${triggerWord(play)}: ${firstStepWords(play)}.`,
    worthWords(best),
    worthWords(worst.slice(0, 1)),
    firstReadWords(play),
  ];
}

function worthWords(worths: readonly Worth[]): string {
  const told = worths.map(
    ({ scheme, goals: { mean, low, high } }) =>
      `${shortScheme(scheme)} ${perChance(mean)} (${perChance(low)} to ${perChance(high)})`,
  );
  return told.length === 0 ? 'Not tried yet' : told.join('; ');
}

function footOf({ content }: Call, width: number, page?: number): Block {
  const { worths, trials, date } = content;
  const basis =
    worths.length === 0
      ? ''
      : `Goals a man-up, simulated, ${trials} against each scheme; in brackets where the truth lies 95 times in 100. `;
  return pageFoot(`${basis}${date}.`, looks.foot, width, page);
}

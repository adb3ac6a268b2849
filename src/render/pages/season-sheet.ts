import {
  type Block,
  beside,
  gap,
  paragraph,
  rule,
  stack,
  type TableColumn,
  type TextLook,
  tableHead,
  tableRow,
} from './block.ts';
import { flowPages } from './flow-pages.ts';
import { intervalBar } from './interval-bar.ts';
import { type Page, type PaperName, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';

/** Everything that stands on the pages of a season. */
export interface SeasonSheet {
  /** The team, and against whom when it is not the whole season. */
  readonly title: string;
  /** "12 games, 3 March to 9 May 2026". */
  readonly about: string;
  /** What a visitor should read first, a sentence each, in large letters. */
  readonly leads: readonly string[];
  readonly sections: readonly SeasonSection[];
  /** What is usual, and how it is counted: small, below. */
  readonly basis: string;
  readonly paper: PaperName;
  readonly made: string;
}

/** A heading, the sentence that matters, and a table with bars. */
export interface SeasonSection {
  readonly heading: string;
  readonly says: readonly string[];
  /** What stands in the first column. */
  readonly of: string;
  /** `share` leaves out guesses, shots and times; all columns when left out. */
  readonly columns?: 'share';
  readonly rows: readonly SeasonRow[];
}

/** One line of a table: counts, and the share with its interval as words and as a bar. */
export interface SeasonRow {
  readonly name: string;
  /** "5 of 9". */
  readonly count: string;
  /** What was counted, and the best guess. */
  readonly raw: string;
  readonly guess: string;
  readonly shots: string;
  readonly firstShot: string;
  /** From 0 to 1; undefined for a line without a bar. */
  readonly bar:
    | { readonly mean: number; readonly low: number; readonly high: number; readonly mark: number }
    | undefined;
}

const title: TextLook = { size: 22, weight: 'bold', tone: 'ink', leading: 1.15 };
const heading: TextLook = { size: 13, weight: 'bold', tone: 'ink', leading: 1.3 };
const body: TextLook = { size: 10.5, weight: 'regular', tone: 'ink', leading: 1.3 };
const cells: TextLook = { size: 9.5, weight: 'regular', tone: 'ink', leading: 1.25 };
const quiet: TextLook = { size: 9, weight: 'regular', tone: 'quiet', leading: 1.3 };

const lead: TextLook = { size: 15, weight: 'bold', tone: 'ink', leading: 1.25 };

const blockGap = 2;
const sectionGap = 10;
const barHeight = 11;

/** A season on paper: what is sure and what is not, then the tables with a bar for each interval. As many pages as it takes; a table's heading stays with its first line. */
export function seasonSheet(sheet: SeasonSheet): readonly Page[] {
  const { width, height } = papers[sheet.paper];
  const inside = width - 2 * pageMargin;
  const foot = (page: number): Block =>
    pageFoot(
      `Box: where the truth lies 95 times in 100. Stroke: as counted. Dashed: usual, or expected. ${sheet.made}.`,
      quiet,
      inside,
      page,
    );
  const room = height - 2 * pageMargin - foot(1).height - blockGap;
  const head = stack(
    [
      paragraph(sheet.title, title, inside),
      paragraph(sheet.about, body, inside),
      rule(inside),
      gap(4),
      ...sheet.leads.map((words) => paragraph(words, lead, inside)),
    ],
    2,
  );
  const blocks = [
    head,
    ...sheet.sections.flatMap((section) => sectionBlocks(section, inside)),
    stack([gap(sectionGap), paragraph(sheet.basis, quiet, inside)]),
  ];
  return flowPages(blocks, room, blockGap).map((page, at): Page => {
    const below = foot(at + 1);
    return {
      title: at === 0 ? sheet.title : `${sheet.title}, page ${at + 1}`,
      description: describe(sheet),
      width,
      height,
      marks: [
        ...stack(page, blockGap).draw(pageMargin, pageMargin),
        ...below.draw(pageMargin, height - pageMargin - below.height),
      ],
    };
  });
}

function sectionBlocks(section: SeasonSection, width: number): readonly Block[] {
  const { heading: words, says, rows } = section;
  const top = [
    gap(sectionGap),
    paragraph(words, heading, width),
    ...says.map((sentence) => paragraph(sentence, body, width)),
  ];
  if (rows.length === 0) return [stack(top, 2)];
  const columns = columnsOf(section, width);
  const head = tableHead(
    columns.map(({ column }) => column),
    cells,
  );
  const lines = rows.map((row) => lineOf(row, columns, width));
  return [stack([...top, head, lines[0]!], 2), ...lines.slice(1)];
}

/** A column of the table, and what of a row stands in it. */
interface SeasonColumn {
  readonly column: TableColumn;
  readonly read: (row: SeasonRow) => string;
}

/** Widths in shares of the page; the bar takes the last column. */
function columnsOf({ of, columns }: SeasonSection, width: number): readonly SeasonColumn[] {
  const column = (title: string, share: number, read: SeasonColumn['read']): SeasonColumn => ({
    column: { title, width: share * width, align: 'left' },
    read,
  });
  const [name, count, raw, bar] = [
    column(of, 0.2, (row) => row.name),
    column('Goals', 0.1, (row) => row.count),
    column('Share, 95 %', 0.15, (row) => row.raw),
    column('0 to 100 %', 0.175, () => ''),
  ];
  if (columns === 'share') return [name, count, raw, bar];
  return [
    ...[name, count, raw],
    column('Best guess', 0.15, (row) => row.guess),
    column('Shots', 0.07, (row) => row.shots),
    column('First shot', 0.155, (row) => row.firstShot),
    bar,
  ];
}

function lineOf(row: SeasonRow, columns: readonly SeasonColumn[], width: number): Block {
  const line = tableRow(
    columns.map(({ column }) => column),
    columns.map(({ read }) => read(row)),
    cells,
  );
  if (row.bar === undefined) return line;
  const wide = columns.at(-1)!.column.width;
  const before = columns.slice(0, -1).reduce((sum, { column }) => sum + column.width, 0);
  return beside([
    { left: 0, block: line },
    { left: Math.min(before, width - wide), block: intervalBar(row.bar, wide, barHeight) },
  ]);
}

function describe({ about, sections }: SeasonSheet): string {
  const told = sections.map(({ heading: words, says, rows }) =>
    [words, ...says, ...rows.map(({ name, count, raw }) => `${name}: ${count}, ${raw}`)].join('. '),
  );
  return [about, ...told].join(' ');
}

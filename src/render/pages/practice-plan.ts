import type { Level } from '../../engine/index.ts';
import type { SceneLayer } from '../scene.ts';
import { type Block, badge, beside, gap, marked, paragraph, picture, rule, stack, type TextLook } from './block.ts';
import { flowPages } from './flow-pages.ts';
import { type Page, type PaperName, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';
import { cautionsBlock } from './practice-cautions.ts';

/** Everything that stands on the page of a practice plan. */
export interface PracticeSheet {
  readonly name: string;
  /** The plays that are practised, where the name does not say them; else empty. */
  readonly plays: string;
  readonly team: string;
  readonly level: Level;
  /** "Tuesday 10 March 2026"; empty when no day is set. */
  readonly day: string;
  /** "20 minutes, 14 players and a goalkeeper". */
  readonly turnout: string;
  /** Who stands where first: "First six: TR 4, TL 7"; empty when nobody knows. */
  readonly six: string;
  /** What the practice is about, in a line. */
  readonly focus: string;
  readonly equipment: string;
  readonly rows: readonly PracticeRow[];
  /** What there was no time for, and what is not worth doing. */
  readonly leftOut: readonly string[];
  readonly paper: PaperName;
  /** The day that the page is made. */
  readonly made: string;
}

/** One block of it. */
export interface PracticeRow {
  /** "0:00", "0:02": minutes and seconds of the practice. */
  readonly from: string;
  readonly to: string;
  /** "Walk-through", "3 v 2: X skips to TR". */
  readonly title: string;
  /** "2½ min, 4 reps". */
  readonly measure: string;
  /** Who does what where, in short sentences. */
  readonly setUp: string;
  /** How the reps are shared out. */
  readonly runs: readonly string[];
  /** What the coach says. */
  readonly points: readonly string[];
  readonly why: string;
  readonly note: string;
  readonly scene: SceneLayer | null;
}

interface Looks {
  readonly title: TextLook;
  readonly clock: number;
  readonly strong: TextLook;
  readonly body: TextLook;
  readonly quiet: TextLook;
}

/** From what reads best in the rain to the least that a page may have: the largest that fits on one page is taken. */
const sizes: readonly Looks[] = [11.5, 11, 10.5, 10, 9.5, 9].map((size) => ({
  title: { size: 20, weight: 'bold', tone: 'ink', leading: 1.15 },
  clock: size + 2,
  strong: { size: size + 0.5, weight: 'bold', tone: 'ink', leading: 1.2 },
  body: { size, weight: 'regular', tone: 'ink', leading: 1.2 },
  quiet: { size: 9, weight: 'regular', tone: 'quiet', leading: 1.2 },
}));

const clockWidth = 46;
const pictureWidth = 106;
const pointsWidth = 168;
const columnGap = 8;
const rowGap = 3;

/**
 * A practice on one page: the clock down the left side, each block with who does what, a small picture, the reps, what the coach says and why it is there; equipment and
 * cautions below. In the largest letters that fit; a plan of more blocks than one page holds goes on overleaf, cautions on each.
 */
export function practicePlan(sheet: PracticeSheet, page?: number): readonly Page[] {
  const { width, height } = papers[sheet.paper];
  const inside = width - 2 * pageMargin;
  const room = height - 2 * pageMargin;
  // The reasons stand on the screen too, and the parts have pages of their own: where all of it fits in no other way, these are left out.
  const bare = { ...sheet, rows: sheet.rows.map((row) => ({ ...row, why: '' })) };
  const plain = { ...bare, rows: bare.rows.map((row) => ({ ...row, scene: null })) };
  const laid = [sheet, bare, plain].flatMap((one) => sizes.map((looks) => layOut(one, looks, inside, page)));
  const fitting = laid.find(({ whole }) => whole.height <= room) ?? laid[sizes.length - 1]!;
  const { head, rows, tail } = fitting;
  const pages =
    fitting.whole.height <= room ? [[head, ...rows]] : flowPages([head, ...rows], room - tail.height - rowGap, rowGap);
  return pages.map((blocks, at): Page => {
    const foot = tailOf(sheet, inside, page === undefined ? undefined : page + at);
    return {
      title: `${sheet.name}: practice plan${at === 0 ? '' : `, page ${at + 1}`}`,
      description: describe(sheet),
      width,
      height,
      marks: [
        ...stack(blocks, rowGap).draw(pageMargin, pageMargin),
        ...foot.draw(pageMargin, height - pageMargin - foot.height),
      ],
    };
  });
}

interface LaidOut {
  readonly head: Block;
  readonly rows: readonly Block[];
  readonly tail: Block;
  readonly whole: Block;
}

function layOut(sheet: PracticeSheet, looks: Looks, width: number, page: number | undefined): LaidOut {
  const head = headOf(sheet, looks, width);
  const rows = sheet.rows.map((row) => rowOf(row, looks, width));
  const tail = tailOf(sheet, width, page);
  return { head, rows, tail, whole: stack([head, ...rows, tail], rowGap) };
}

function headOf(
  { name, plays, team, day, turnout, six, focus, equipment }: PracticeSheet,
  looks: Looks,
  width: number,
): Block {
  const about = [plays, team, day, turnout, six].filter((part) => part !== '').join('. ');
  return stack(
    [
      paragraph(name, looks.title, width),
      paragraph(`${about}.`, looks.body, width),
      ...(focus === '' ? [] : [paragraph(`Today: ${focus}`, looks.strong, width)]),
      paragraph(`Bring: ${equipment}`, looks.body, width),
      rule(width),
    ],
    1,
  );
}

function rowOf(row: PracticeRow, looks: Looks, width: number): Block {
  const middle = width - clockWidth - pointsWidth - columnGap;
  const clock = stack([
    badge(row.from, looks.clock, clockWidth - 6, looks.clock + 7),
    gap(1),
    paragraph(`to ${row.to}`, looks.quiet, clockWidth - 6),
  ]);
  const beneath = width - clockWidth;
  const why = row.why === '' ? [] : [{ left: clockWidth, block: paragraph(`Why: ${row.why}`, looks.quiet, beneath) }];
  return stack([
    beside([
      { left: 0, block: clock },
      { left: clockWidth, block: doingOf(row, looks, middle) },
      { left: width - pointsWidth, block: pointsOf(row, looks, pointsWidth) },
    ]),
    ...why.map((one) => stack([gap(1), beside([one])])),
    gap(rowGap),
    rule(width),
  ]);
}

/** What is done, with its picture on the right where it has one. */
function doingOf(row: PracticeRow, looks: Looks, width: number): Block {
  const beneath = row.scene === null ? width : width - pictureWidth - columnGap;
  const runs = row.runs.join('; ');
  const words = stack(
    [
      paragraph(`${row.title}. ${row.measure}`, looks.strong, beneath),
      ...[row.setUp, row.note].filter((part) => part !== '').map((part) => paragraph(part, looks.body, beneath)),
      ...(runs === '' ? [] : [paragraph(runs, { ...looks.body, weight: 'bold' }, beneath)]),
    ],
    1,
  );
  if (row.scene === null) return words;
  const { view } = row.scene;
  const high = pictureWidth * Math.min(mostHigh, view.height / view.width);
  return beside([
    { left: 0, block: words },
    { left: width - pictureWidth, block: picture(row.scene, pictureWidth, high) },
  ]);
}

/** A small picture is no higher than this share of its width: rows stay low, and men as large as they can be. */
const mostHigh = 0.72;

function pointsOf(row: PracticeRow, looks: Looks, width: number): Block {
  return stack(
    row.points.map((point) => marked('•', point, looks.body, width, 9)),
    1,
  );
}

function tailOf({ leftOut, level, made, paper }: PracticeSheet, width: number, page: number | undefined): Block {
  const small: TextLook = { size: 9, weight: 'regular', tone: 'ink', leading: 1.2 };
  const left = leftOut.length === 0 ? [] : [paragraph(`Not today. ${leftOut.join(' ')}`, small, width), gap(2)];
  const foot = pageFoot(
    `Goals a man-up are simulated; in brackets where the truth lies 95 times in 100. ${made}, ${papers[paper].name}.`,
    { ...small, tone: 'quiet' },
    width,
    page,
  );
  return stack([...left, cautionsBlock(level, small, width), gap(3), foot]);
}

function describe({ rows }: PracticeSheet): string {
  return rows.map(({ from, title, measure, setUp }) => `${from} ${title}, ${measure}. ${setUp}`).join(' ');
}

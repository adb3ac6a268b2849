import type { DisciplineName, Interval, Point } from '../../engine/index.ts';
import { type FieldMarkings, viewAround } from '../field-scene.ts';
import { counted, perChance, percent } from '../number-text.ts';
import { defenderMark, keeperMark } from '../people-marks.ts';
import { viewpointNote } from '../play-scene.ts';
import { circle, type SceneLayer, text, type View } from '../scene.ts';
import { bareField } from './bare-field.ts';
import {
  type Block,
  beside,
  framed,
  gap,
  marked,
  paragraph,
  picture,
  rule,
  shortened,
  stack,
  type TableColumn,
  type TextLook,
  table,
} from './block.ts';
import { firstReadWords, shortScheme } from './call-words.ts';
import { type KeeperOnPage, keeperBlock } from './keeper-block.ts';
import { type Page, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';
import type { SheetContent } from './play-sheet.ts';

/** A scheme that the opponent plays, as the page of him shows it. */
export interface MetScheme {
  readonly name: string;
  /** In how many of their man-downs, 0 to 1. */
  readonly share: number;
  /** What there is to know of it, in a sentence or two: what it leaves open, or what the coach wrote of a scheme of his own; may be empty. */
  readonly open: string;
  /** Where each of them is at home, by the name that he has on the page's side of the field. */
  readonly men: readonly { readonly name: string; readonly home: Point; readonly discipline: DisciplineName }[];
}

/** What one of our plays makes against what they play. */
export interface MetPlay extends Pick<SheetContent, 'play' | 'set'> {
  /** Its number in the playbook, as on the other cards. */
  readonly number: number;
  /** Goals a chance over all their schemes by their shares. */
  readonly goals: Interval;
  /** The same against each of them, in the order of `schemes`. */
  readonly byScheme: readonly Interval[];
}

/** Everything that stands on the page of one opponent. */
export interface OpponentContent extends Pick<SheetContent, 'team' | 'side' | 'field' | 'date' | 'paper'> {
  readonly opponent: string;
  /** What they play most first; none when nothing is known. */
  readonly schemes: readonly MetScheme[];
  /** Best first; none when no play was simulated. */
  readonly plays: readonly MetPlay[];
  /** Man-ups against each scheme behind that. */
  readonly trials: number;
  /** What the coach wrote down of them. */
  readonly notes: string;
  /** Schemes that were seen of them, what was seen most first; left out when none was written down. */
  readonly seen?: readonly { readonly name: string; readonly times: number; readonly lastDay: string }[];
  /** Shots that their goalkeeper faced; left out when none was marked. */
  readonly keeper?: KeeperOnPage;
}

const looks = {
  title: { size: 24, weight: 'bold', tone: 'ink', leading: 1.15 },
  heading: { size: 14, weight: 'bold', tone: 'ink', leading: 1.35 },
  strong: { size: 11.5, weight: 'bold', tone: 'ink', leading: 1.3 },
  body: { size: 11.5, weight: 'regular', tone: 'ink', leading: 1.3 },
  quiet: { size: 10, weight: 'regular', tone: 'quiet', leading: 1.3 },
} as const satisfies Record<string, TextLook>;

/** Most that stands on the page, before it is shortened to fit. */
const most = { schemes: 3, plays: 6, noteLines: 5 } as const;

/**
 * One opponent on one page, to be read on the way to the game: what they play and where it is open, which of them is late, what to call and
 * what it makes, what was written down, and room to count what is seen. RangeError when not even the shortest form fits.
 */
export function opponentPage(content: OpponentContent, page?: number): Page {
  const { opponent, paper, schemes, plays } = content;
  const { width, height } = papers[paper];
  const inside = width - 2 * pageMargin;
  const foot = footOf(content, inside, page);
  const room = height - 2 * pageMargin - foot.height - 6;
  const body = fitting(content, inside, room);
  const described = [
    ...schemes.map(({ name, share }) => `${name}: ${percent(share)}.`),
    ...plays.map(({ play, goals }) => `${play.name}: ${perChance(goals.mean)} goals a chance.`),
  ];
  return {
    title: `Against ${opponent}`,
    description: described.join(' '),
    width,
    height,
    marks: [...body.draw(pageMargin, pageMargin), ...foot.draw(pageMargin, height - pageMargin - foot.height)],
  };
}

// What matters least gives way first: plays that would not be called, then pictures of what is seldom met.
function fitting(content: OpponentContent, width: number, room: number): Block {
  const lines = most.noteLines;
  for (const [schemes, plays, noteLines, keeper] of [
    [most.schemes, most.plays, lines, true],
    [most.schemes, 4, 3, true],
    [2, 4, 3, true],
    [2, 3, 2, true],
    [1, 2, 1, true],
    [1, 2, 1, false],
  ] as const) {
    const body = bodyOf(content, width, { schemes, plays, noteLines, keeper });
    if (body.height <= room) return body;
  }
  throw new RangeError(`invalid opponent for one page: ${content.opponent}`);
}

interface Kept {
  readonly schemes: number;
  readonly plays: number;
  readonly noteLines: number;
  readonly keeper: boolean;
}

function bodyOf(content: OpponentContent, width: number, kept: Kept): Block {
  return stack(
    [
      headOf(content, width),
      schemesOf(content, width, kept),
      callsOf(content, width, kept.plays),
      ...(hasFreeColumn(content, kept) ? [] : keeperOf(content, width, kept)),
      notesOf(content, width, kept.noteLines),
      seenOf(content, width),
    ],
    9,
  );
}

function headOf({ opponent, team, side }: OpponentContent, width: number): Block {
  return stack([
    shortened(`Against ${opponent}`, looks.title, width, 2),
    paragraph(`${team}, man-up. Drawn for the ${side} side.`, looks.body, width),
    gap(3),
    rule(width),
  ]);
}

const columnGap = 12;
const inRow = 3;
const closeView: View = { left: -9.5, top: -3.5, width: 19, height: 17 };

/** What they play, and who of them is late: beside it where a column is free, else under it. */
function schemesOf(content: OpponentContent, width: number, kept: Kept): Block {
  const { schemes: count } = kept;
  const { schemes, field } = content;
  const heading = paragraph('What they play', looks.heading, width);
  if (schemes.length === 0) {
    const words = paragraph('Not known yet: count it below.', looks.body, width);
    return stack([heading, words, ...seenBefore(content, width)], 2);
  }
  const shown = schemes.slice(0, count);
  const across = (width - (inRow - 1) * columnGap) / inRow;
  // One view for all, so that they are as high and of one scale.
  const view = viewAround(
    shown.flatMap(({ men }) => men.flatMap(({ home }) => [home, lettersOf(home)])),
    closeView,
  );
  const columns = shown.map((scheme) => schemeBlock(scheme, field, view, across));
  const isFree = hasFreeColumn(content, kept);
  const free = width - shown.length * (across + columnGap);
  const beneath = stack([gap(14), lateOf(content, free), ...keeperOf(content, free, kept)], 6);
  const placed = [...columns, ...(isFree ? [beneath] : [])].map((block, at) => ({
    left: at * (across + columnGap),
    block,
  }));
  const others = schemes.slice(count).map(({ name, share }) => `${shortScheme(name)} ${percent(share)}`);
  const also = [
    ...(others.length === 0 ? [] : [paragraph(`Also ${others.join(', ')}.`, looks.body, width)]),
    ...seenBefore(content, width),
  ];
  return stack([heading, beside(placed), ...also, ...(isFree ? [] : [gap(4), lateOf(content, width)])], 3);
}

/** Whether there is room beside the schemes. */
function hasFreeColumn({ schemes }: OpponentContent, kept: Kept): boolean {
  return schemes.length > 0 && Math.min(schemes.length, kept.schemes) < inRow;
}

function keeperOf({ keeper }: OpponentContent, width: number, kept: Kept): readonly Block[] {
  return kept.keeper && keeper !== undefined ? [keeperBlock(keeper, width)] : [];
}

/** What was seen so far, in a line. */
function seenBefore({ seen = [] }: OpponentContent, width: number): readonly Block[] {
  if (seen.length === 0) return [];
  const parts = seen.map(
    ({ name, times, lastDay }) =>
      `${shortScheme(name)} ${counted(times, 'time')}${lastDay === '' ? '' : `, last on ${lastDay}`}`,
  );
  return [shortened(`Seen so far: ${parts.join('; ')}.`, looks.body, width, 2)];
}

function schemeBlock({ name, share, open, men }: MetScheme, field: FieldMarkings, view: View, width: number): Block {
  const high = (width * view.height) / view.width;
  return stack(
    [
      shortened(`${shortScheme(name)}, ${percent(share)}`, looks.strong, width, 2),
      picture(standing(men, field, view), width, high),
      ...(open === '' ? [] : [shortened(open, looks.body, width, 5)]),
    ],
    3,
  );
}

/** Where they stand with the ball on top, the one who is late in a ring. */
function standing(men: MetScheme['men'], field: FieldMarkings, view: View): SceneLayer {
  const latest = lateMen(men);
  return {
    view,
    items: [
      ...bareField(field, view),
      ...keeperMark({ x: 0, y: 1 }),
      ...men.flatMap(({ name, home }) => [
        ...(latest.includes(name) ? [circle('readRing', home, ringRadius)] : []),
        ...defenderMark(home),
        text('defenderText', lettersOf(home), name.toUpperCase()),
      ]),
    ],
  };
}

const ringRadius = 1.25;
/** Clear of the ring. */
const nameBelow = 1.95;

/** The middle of the letters of a man. */
function lettersOf({ x, y }: Point): Point {
  return { x, y: y + nameBelow };
}

/** How late each grade of discipline is beside the others. */
const lateness: Readonly<Record<DisciplineName, number>> = { faultless: 0, sharp: 1, ordinary: 2, loose: 3 };

/** Who is later than the others of his scheme; nobody when all are alike. */
function lateMen(men: MetScheme['men']): readonly string[] {
  const grades = men.map(({ discipline }) => lateness[discipline]);
  const worst = Math.max(...grades);
  if (worst === Math.min(...grades)) return [];
  return men.filter(({ discipline }) => lateness[discipline] === worst).map(({ name }) => name);
}

function lateOf({ schemes }: OpponentContent, width: number): Block {
  const [first] = schemes;
  if (first === undefined) return gap(0);
  const late = lateMen(first.men);
  const grade = first.men.find(({ name }) => late.includes(name))?.discipline ?? first.men[0]?.discipline;
  if (grade === undefined) return gap(0);
  const words =
    late.length === 0
      ? `All of them alike: ${disciplineWords[grade]}.`
      : `${late.map((name) => name.toUpperCase()).join(' and ')}, in the ring: ${disciplineWords[grade]}. Make him choose.`;
  return stack([paragraph('Who is late', looks.heading, width), paragraph(words, looks.body, width)], 1);
}

const disciplineWords: Readonly<Record<DisciplineName, string>> = {
  faultless: 'always on time and with the right man',
  sharp: 'hardly ever late, hardly ever with the wrong man',
  ordinary: 'a step late now and then, and sometimes with the wrong man',
  loose: 'late, drawn to the ball, and often with the wrong man',
};

function callsOf(content: OpponentContent, width: number, count: number): Block {
  const { plays, schemes } = content;
  const heading = paragraph('What to call', looks.heading, width);
  if (plays.length === 0)
    return stack([heading, paragraph('No play was tried against them yet.', looks.body, width)], 2);
  const columns = callColumns(width);
  const rows = plays
    .slice(0, count)
    .map(({ number, play, set, goals, byScheme }, at) => [
      `${at + 1}.`,
      `${number} ${play.name}, ${set}`,
      `${perChance(goals.mean)} (${perChance(goals.low)} to ${perChance(goals.high)})`,
      bestThere(schemes, byScheme),
      firstReadWords(play),
    ]);
  return stack(
    [heading, paragraph(choiceWords(plays), looks.body, width), gap(2), table(columns, rows, looks.body)],
    1,
  );
}

function callColumns(width: number): readonly TableColumn[] {
  const shares = [
    ['', 0.04],
    ['Call', 0.22],
    ['Goals a chance', 0.23],
    ['Most against', 0.23],
    ['First read', 0.28],
  ] as const;
  return shares.map(([title, share]) => ({ title, width: share * width, align: 'left' }));
}

/** In fewer of their man-downs than this a scheme is no reason to call a play. */
const playsIt = 0.1;

/** Against which of the schemes that they really play a play makes most. */
function bestThere(schemes: readonly MetScheme[], byScheme: readonly Interval[]): string {
  if (byScheme.length < 2) return 'the only one tried';
  const often = [...schemes.entries()].filter(([at, { share }]) => share >= playsIt && byScheme[at] !== undefined);
  // Of one who plays a little of everything it is the one that he plays most.
  const tried = often.length > 0 ? often : [...schemes.entries()].slice(0, 1);
  const [at, scheme] = tried.reduce((top, one) => (byScheme[one[0]]!.mean > byScheme[top[0]]!.mean ? one : top));
  return `${shortScheme(scheme.name)} ${perChance(byScheme[at]!.mean)}`;
}

/** Whether the first is surely the best to call, so far as can be told. */
function choiceWords([first, second]: readonly MetPlay[]): string {
  if (first === undefined) return '';
  if (second === undefined) return `${first.play.name} is the only play that was tried.`;
  return second.goals.high < first.goals.low
    ? `${first.play.name} first: the others make less for sure.`
    : `${first.play.name} first; ${second.play.name} may be as good, so mix them.`;
}

function notesOf({ notes }: OpponentContent, width: number, lines: number): Block {
  if (notes.trim() === '') return gap(0);
  return stack(
    [paragraph('What we know of them', looks.heading, width), shortened(notes.trim(), looks.body, width, lines)],
    1,
  );
}

/** Boxes to be ticked in the game: a scheme a line, a man-up a box. */
function seenOf({ schemes }: OpponentContent, width: number): Block {
  const names = [...schemes.slice(0, most.schemes).map(({ name }) => shortScheme(name)), 'Something else'];
  const lines = names.map((name) => beside([{ left: 0, block: tickLine(name, width) }]));
  return framed(
    stack(
      [marked('', 'Seen today: tick one box a man-up.', looks.strong, width - 2 * framePadding, 0), gap(2), ...lines],
      3,
    ),
    width,
    framePadding,
  );
}

const framePadding = 7;
const tickBox = 13;
const ticks = 10;
const nameRoom = 190;

function tickLine(name: string, width: number): Block {
  const step = (width - 2 * framePadding - nameRoom) / ticks;
  return beside([
    { left: 0, block: shortened(name, looks.body, nameRoom - 8, 1) },
    ...Array.from({ length: ticks }, (_, at) => ({
      left: nameRoom + at * step,
      block: emptyBox(tickBox),
    })),
  ]);
}

function emptyBox(side: number): Block {
  return {
    height: side + 2,
    draw: (left, top) => [{ kind: 'box', left, top: top + 1, width: side, height: side, fill: 'none', edge: 0.75 }],
  };
}

function footOf({ trials, plays, date }: OpponentContent, width: number, page: number | undefined): Block {
  const basis =
    plays.length === 0
      ? ''
      : `Goals a chance, simulated, ${trials} against each scheme; in brackets where the truth lies 95 times in 100. `;
  return pageFoot(`${basis}${viewpointNote} ${date}.`, looks.quiet, width, page);
}

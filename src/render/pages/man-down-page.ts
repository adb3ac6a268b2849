import type { Interval, LookReport, Point } from '../../engine/index.ts';
import { viewAround } from '../field-scene.ts';
import { placeLabels, placesRound } from '../label-places.ts';
import { lookLeftWords } from '../left-words.ts';
import { perChance, withInterval } from '../number-text.ts';
import { attackerDisc, attackerLetters, ballInHands, defenderMark, keeperMark, usualSizes } from '../people-marks.ts';
import { viewpointNote } from '../play-scene.ts';
import type { Primitive, SceneLayer, View } from '../scene.ts';
import { pxPerYard } from '../svg-styles.ts';
import { bareField } from './bare-field.ts';
import {
  type Block,
  beside,
  gap,
  looks,
  marked,
  paragraph,
  picture,
  rule,
  shortened,
  stack,
  type TableColumn,
  table,
} from './block.ts';
import { shortScheme } from './call-words.ts';
import { type Page, pageMargin, papers } from './page.ts';
import { pageFoot } from './page-foot.ts';
import type { SheetContent } from './play-sheet.ts';

/** One place of the ball, and what each of us does then. */
export interface ManDownRow {
  /** Spot of the man with the ball. */
  readonly ball: string;
  /** Words for each of us, in the order of `men`. */
  readonly duties: readonly string[];
  /** Whom nobody has. */
  readonly open: readonly string[];
  /** Where we stand then. */
  readonly places: readonly Point[];
}

/** What one scheme of ours concedes. */
export interface ManDownAnswer {
  readonly scheme: string;
  readonly goals: Interval;
  /** Where it breaks, what costs most first. */
  readonly breaks: readonly ConcededBreak[];
}

/** One kind of shot that a scheme gives up. */
export interface ConcededBreak extends Pick<LookReport, 'to' | 'leftBy'> {
  /** Who passes to him; `null` when nobody does. */
  readonly from: string | null;
  /** Shots a man-up, and goals by their odds. */
  readonly shots: number;
  readonly goals: number;
}

/** Everything that stands on the sheet of our man-down unit. */
export interface ManDownContent extends Pick<SheetContent, 'team' | 'side' | 'field' | 'date' | 'paper'> {
  readonly opponent: string;
  /** Their set, as it is said. */
  readonly set: string;
  /** What they run in it, in a few words: a play's name, or that they take what opens. */
  readonly runs: string;
  /** The scheme of the sheet; its name stands in `answers` too when it was tried. */
  readonly scheme: string;
  /** What it leaves open on purpose, and what it does. */
  readonly summary: string;
  readonly leaves: string;
  /** Our men by the names that they have on the sheet's side. */
  readonly men: readonly string[];
  readonly spots: readonly { readonly id: string; readonly at: Point }[];
  readonly rows: readonly ManDownRow[];
  /** Least conceded first; none when nothing was simulated. */
  readonly answers: readonly ManDownAnswer[];
  /** Man-ups against each scheme. */
  readonly trials: number;
}

const inRow = 3;
const columnGap = 10;
const closeView: View = { left: -12.5, top: -7.5, width: 25, height: 24.5 };

/** Most that stands on the page before it is shortened to fit. */
const most = { pictures: 6, answers: 5, breaks: 4 } as const;

/** Our man-down unit against one set on one page: where each stands for each place of the ball, his duty in words, what every scheme concedes, and where this one breaks. RangeError when it does not fit. */
export function manDownPage(content: ManDownContent, page?: number): Page {
  const { paper, scheme, opponent, set } = content;
  const { width, height } = papers[paper];
  const inside = width - 2 * pageMargin;
  const foot = footOf(content, inside, page);
  const room = height - 2 * pageMargin - foot.height - 6;
  const body = fitting(content, inside, room);
  return {
    title: `Man-down: ${scheme} against ${opponent}`,
    description: `Against the ${set}. ${content.rows.map(({ ball, duties }) => `Ball with ${ball}: ${content.men.map((man, at) => `${man} ${duties[at]}`).join(', ')}.`).join(' ')}`,
    width,
    height,
    marks: [...body.draw(pageMargin, pageMargin), ...foot.draw(pageMargin, height - pageMargin - foot.height)],
  };
}

// Pictures become lower before anything is left out: words and numbers are what cannot be seen elsewhere.
function fitting(content: ManDownContent, width: number, room: number): Block {
  for (const [high, answers, breaks] of [
    [0.98, most.answers, most.breaks],
    [0.9, most.answers, 3],
    [0.82, 4, 3],
    [0.74, 4, 2],
    [0.66, 3, 2],
    [0.56, 3, 1],
    [0.46, 2, 1],
  ] as const) {
    const body = bodyOf(content, width, high, answers, breaks);
    if (body.height <= room) return body;
  }
  throw new RangeError(`invalid man-down sheet for one page: ${content.scheme}`);
}

function bodyOf(content: ManDownContent, width: number, high: number, answers: number, breaks: number): Block {
  return stack(
    [
      headOf(content, width),
      picturesOf(content, width, high),
      dutiesOf(content, width),
      beside([
        { left: 0, block: concededOf(content, 0.47 * width, answers) },
        { left: 0.51 * width, block: breaksOf(content, 0.49 * width, breaks) },
      ]),
    ],
    7,
  );
}

function headOf({ scheme, opponent, team, set, runs, side, summary, leaves }: ManDownContent, width: number): Block {
  return stack([
    shortened(`Man-down: ${scheme}`, looks.title, width, 1),
    paragraph(`${team} against ${opponent}: ${set}, ${runs}. Their ${side} side.`, looks.body, width),
    ...(summary === '' ? [] : [shortened(summary, looks.body, width, 2)]),
    ...(leaves === '' ? [] : [marked('Open', leaves, looks.body, width, 32)]),
    gap(2),
    rule(width),
  ]);
}

/** A picture for each place of the ball: their circles, our names. */
function picturesOf(content: ManDownContent, width: number, high: number): Block {
  const rows = content.rows.slice(0, most.pictures);
  const across = (width - (inRow - 1) * columnGap) / inRow;
  const places = rows.flatMap((row) => row.places);
  const view = viewAround([...content.spots.map(({ at }) => at), ...places], closeView);
  const height = Math.min((across * view.height) / view.width, high * across);
  const cells = rows.map((row, at) => ({
    row: Math.floor(at / inRow),
    left: (at % inRow) * (across + columnGap),
    block: stack([
      paragraph(`Ball with ${row.ball}`, looks.strong, across),
      picture(standing(content, row, view), across, height),
    ]),
  }));
  const lines = Array.from({ length: Math.ceil(rows.length / inRow) }, (_, line) =>
    beside(cells.filter((cell) => cell.row === line)),
  );
  return stack(lines, 4);
}

/** How far a name stands from the middle of its cross, to the side and up or down. Yards. */
const nameSide = 1.75;
const nameHeight = 1.45;

function standing({ spots, men, field }: ManDownContent, { ball, places }: ManDownRow, view: View): SceneLayer {
  const carrier = spots.find(({ id }) => id === ball);
  const drawn: readonly Primitive[] = [
    ...bareField(field, view),
    ...keeperMark({ x: 0, y: 1 }),
    ...spots.map(({ id, at }) => attackerDisc(at, id === ball)),
    ...places.flatMap((at) => defenderMark(at)),
    ...spots.map(({ id, at }) => attackerLetters(at, id, id === ball)),
  ];
  const names = placeLabels(
    places.map((at, man) => ({
      style: 'defenderText' as const,
      text: (men[man] ?? '').toUpperCase(),
      places: placesRound(at, nameSide, nameHeight),
    })),
    {
      view,
      fixed: drawn.flatMap((item) => (item.kind === 'text' ? [item] : [])),
      obstacles: [
        ...spots.map(({ at }) => ({ at, radius: usualSizes.attacker })),
        ...places.map((at) => ({ at, radius: usualSizes.cross })),
      ],
      pxPerYard,
    },
  );
  return { view, items: [...drawn, ...names, ...(carrier === undefined ? [] : [ballInHands(carrier.at)])] };
}

function dutiesOf({ men, rows }: ManDownContent, width: number): Block {
  const first = 0.07 * width;
  const last = 0.13 * width;
  const each = (width - first - last) / men.length;
  const columns: readonly TableColumn[] = [
    { title: 'Ball', width: first, align: 'left' },
    ...men.map((man): TableColumn => ({ title: man.toUpperCase(), width: each, align: 'left' })),
    { title: 'Open', width: last, align: 'left' },
  ];
  const lines = rows.map(({ ball, duties, open }) => [ball, ...duties, open.length === 0 ? 'nobody' : open.join(', ')]);
  return table(columns, lines, looks.quiet.size < 9 ? looks.body : { ...looks.quiet, tone: 'ink' });
}

function concededOf({ answers, scheme, trials }: ManDownContent, width: number, count: number): Block {
  const heading = paragraph('What each scheme concedes', looks.heading, width);
  if (answers.length === 0) return stack([heading, paragraph('Nothing was simulated.', looks.body, width)]);
  const shown = answers.slice(0, count);
  const own = answers.find((one) => one.scheme === scheme);
  const kept = own === undefined || shown.includes(own) ? shown : [...shown.slice(0, -1), own];
  const columns: readonly TableColumn[] = [
    { title: `Goals a man-up, of ${trials}`, width: 0.62 * width, align: 'left' },
    { title: '', width: 0.38 * width, align: 'right' },
  ];
  return stack([
    heading,
    table(
      columns,
      kept.map((one) => [
        one.scheme === scheme ? `This: ${shortScheme(one.scheme)}` : shortScheme(one.scheme),
        withInterval(one.goals),
      ]),
      { ...looks.quiet, tone: 'ink' },
    ),
    gap(2),
    paragraph(concedesWords(answers), looks.body, width),
  ]);
}

/** Whether the first surely concedes least, so far as can be told. */
export function concedesWords(answers: readonly ManDownAnswer[]): string {
  const [first, second] = answers;
  if (first === undefined) return '';
  if (second === undefined) return 'Only one scheme was tried.';
  const alike = answers.filter((one) => one.goals.low <= first.goals.high).length - 1;
  if (alike === 0) return `${shortScheme(first.scheme)} concedes least for sure.`;
  return `${shortScheme(first.scheme)} concedes least, but ${alike === 1 ? 'one other' : `${alike} others`} may be as good: play what you know best of these.`;
}

function breaksOf({ answers, scheme }: ManDownContent, width: number, count: number): Block {
  const heading = paragraph('Where it breaks', looks.heading, width);
  const own = answers.find((one) => one.scheme === scheme)?.breaks.slice(0, count) ?? [];
  if (own.length === 0) return stack([heading, paragraph('Hardly a shot was taken.', looks.body, width)]);
  return stack([heading, ...own.map((one, at) => marked(`${at + 1}`, breakWords(one), looks.body, width, 12))], 2);
}

function footOf({ answers, trials, date }: ManDownContent, width: number, page: number | undefined): Block {
  const basis =
    answers.length === 0
      ? ''
      : `Simulated, ${trials} man-ups against each scheme; in brackets where the truth of this model lies 95 times in 100. `;
  return pageFoot(`${basis}${viewpointNote} ${date}.`, looks.quiet, width, page);
}

/** "Shot by TR off WL's pass, 0.05 goals a man-up. TR was left: ll split him and another and came 0.4 s late." */
export function breakWords(one: ConcededBreak): string {
  const shot = one.from === null ? `Shot by ${one.to}` : `Shot by ${one.to} off ${one.from}'s pass`;
  return `${shot}, ${perChance(one.goals)} goals a man-up. ${lookLeftWords(one)}`;
}

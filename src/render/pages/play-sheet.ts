import type { Interval, Play, SpotId } from '../../engine/index.ts';
import { type FieldMarkings, viewAround } from '../field-scene.ts';
import { perChance } from '../number-text.ts';
import { stepMarks, viewpointNote } from '../play-scene.ts';
import { playSteps } from '../play-steps.ts';
import { actionWords, readWords, triggerWords } from '../play-words.ts';
import type { SceneLayer, View } from '../scene.ts';
import { bareField } from './bare-field.ts';
import { type Block, beside, gap, looks, marked, paragraph, picture, rule, stack, table } from './block.ts';
import { groundShare, placesOf } from './ground-share.ts';
import { type Page, type PageMark, type PaperName, pageMargin, papers } from './page.ts';
import { lineLegend, pageFoot } from './page-foot.ts';
import { scaledField, scaledPlay } from './scaled-play.ts';

/** Everything that stands on a play's sheet. */
export interface SheetContent {
  readonly play: Play;
  /** As the coach calls it: "2-3-1". */
  readonly set: string;
  readonly team: string;
  readonly side: 'left' | 'right';
  readonly field: FieldMarkings;
  /** Jersey number at each spot; players stand on a sheet by their numbers, not by their names, unless the coach wants names. */
  readonly men: readonly { readonly spot: SpotId; readonly number: number; readonly name?: string }[];
  /** What the play makes against each scheme; none when it was not played yet. */
  readonly worths: readonly { readonly scheme: string; readonly goals: Interval }[];
  /** Man-ups against each scheme behind that. */
  readonly trials: number;
  /** The play's own version, short, and the day that the page is made, as the reader writes it. */
  readonly version: string;
  readonly date: string;
  readonly paper: PaperName;
}

/** The part of the field that a small picture shows at least, yards: as little as a unit needs, so that its men are large. */
const closeView: View = { left: -12.5, top: -6.5, width: 25, height: 23 };

/** Letters in a picture are to be this large, points, as far as there is room. */
const lettersWanted = 9;

function scaledView({ left, top, width, height }: View, share: number): View {
  return { left: left * share, top: top * share, width: width * share, height: height * share };
}

/** Pictures in a row, by how many there are in all. */
const inRow = (pictures: number): number => (pictures <= 4 ? 2 : pictures <= 9 ? 3 : 4);
const pictureGap = 10;

/**
 * A play on one page: what it is called and what starts it, a picture for each step with what each man does, each man's job from home to the way
 * back, the reads in their order, what it beats and where not to run it. RangeError when it does not fit, which no play that passes its check
 * should bring about. `page` is its number, where pages are counted.
 */
export function playSheet(content: SheetContent, page?: number): Page {
  const { play, paper } = content;
  const { width, height } = papers[paper];
  const inside = width - 2 * pageMargin;
  const foot = footOf(content, inside, page);
  const room = height - 2 * pageMargin - foot.height - 6;
  const body = fitting(content, inside, room);
  const marks: readonly PageMark[] = [
    ...body.draw(pageMargin, pageMargin),
    ...foot.draw(pageMargin, height - pageMargin - foot.height),
  ];
  return { title: `${play.name}: play sheet`, description: describe(content), width, height, marks };
}

/** The page as large as it can be: pictures and letters give way step by step until all of it fits. */
function fitting(content: SheetContent, width: number, room: number): Block {
  for (const share of [1, 0.92, 0.84, 0.76, 0.68, 0.6, 0.52]) {
    const body = bodyOf(content, width, share);
    if (body.height <= room) return body;
  }
  throw new RangeError(`invalid play for one page: ${content.play.name} has ${content.play.beats.length} steps`);
}

function bodyOf(content: SheetContent, width: number, share: number): Block {
  return stack(
    [headOf(content, width), picturesOf(content, width, share), jobsOf(content, width), lowerOf(content, width)],
    8,
  );
}

function headOf({ play, set, team, side }: SheetContent, width: number): Block {
  const [first] = playSteps(play);
  const start = first === undefined ? '' : ` It starts ${triggerWords(first.beat.when)}.`;
  return stack([
    paragraph(play.name, looks.title, width),
    paragraph(
      `${team}. From a ${set}, on the ${side}. ${play.start.ball} restarts outside the box.${start}`,
      looks.body,
      width,
    ),
    gap(3),
    rule(width),
  ]);
}

function picturesOf({ play: written, field }: SheetContent, width: number, share: number): Block {
  const columns = inRow(playSteps(written).length);
  const across = (width - (columns - 1) * pictureGap) / columns;
  const ground = groundShare(written, across, lettersWanted);
  const play = scaledPlay(written, ground);
  const turf = scaledField(field, ground);
  const steps = playSteps(play);
  const view = viewAround(placesOf(play), scaledView(closeView, ground));
  const high = share * across * (view.height / view.width);
  const cells = steps.map((step, at) => {
    const scene: SceneLayer = { view, items: [...bareField(turf, view), ...stepMarks(play, at + 1, step)] };
    return stack([picture(scene, across, high), gap(2), stepWords(written, at, across)]);
  });
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) =>
    beside(
      cells
        .slice(row * columns, (row + 1) * columns)
        .map((block, column) => ({ left: column * (across + pictureGap), block })),
    ),
  );
  return stack(rows, 6);
}

function stepWords(play: Play, at: number, width: number): Block {
  const { beat } = playSteps(play)[at]!;
  const doing = beat.actions.map((action) => actionWords(action)).join('; ');
  const words = `${capital(triggerWords(beat.when, stepName(play)))}: ${doing === '' ? 'nobody moves' : doing}.`;
  return marked(String(at + 1), words, looks.body, width, 12);
}

/** On the page a step has a number and no name. */
function stepName(play: Play): (beat: string) => string {
  const ids = playSteps(play).map(({ beat }) => beat.id);
  return (beat) => `step ${ids.indexOf(beat) + 1}`;
}

/** A line for each man: who, what he does at which step, and what he does when it goes wrong. */
function jobsOf({ play, men }: SheetContent, width: number): Block {
  const rows = play.spots.map(({ id, hand, safety }) => {
    const man = men.find(({ spot }) => spot === id);
    const who = man === undefined ? '' : `${man.number}${man.name === undefined ? '' : ` ${man.name}`}`;
    return [id, who, hand === 'either' ? 'either' : hand, jobWords(play, id), safetyWords[safety]];
  });
  const fixed = { spot: 32, who: men.some(({ name }) => name !== undefined) ? 96 : 30, hand: 40, safety: 100 };
  return table(
    [
      { title: 'Spot', width: fixed.spot, align: 'left' },
      { title: 'No.', width: fixed.who, align: 'left' },
      { title: 'Hand', width: fixed.hand, align: 'left' },
      { title: 'Job', width: width - fixed.spot - fixed.who - fixed.hand - fixed.safety, align: 'left' },
      { title: 'Ball lost or wide', width: fixed.safety, align: 'left' },
    ],
    rows,
    looks.body,
  );
}

const safetyWords = { backUp: 'backs up the shot', getBack: 'gets back', none: 'rides his man' } as const;

function jobWords(play: Play, spot: SpotId): string {
  const jobs = playSteps(play).flatMap(({ beat }, at) => {
    const own = beat.actions.filter(({ by }) => by === spot).map((action) => withoutMan(actionWords(action), spot));
    return own.length === 0 ? [] : [`${at + 1}: ${own.join(', ')}`];
  });
  return jobs.length === 0 ? 'holds his place, ready for the ball' : jobs.join('; ');
}

function withoutMan(words: string, spot: SpotId): string {
  return words.startsWith(`${spot} `) ? words.slice(spot.length + 1) : words;
}

/** Reads on the left; what it beats and where not to run it on the right. */
function lowerOf(content: SheetContent, width: number): Block {
  const half = (width - 16) / 2;
  return beside([
    { left: 0, block: readsOf(content, half) },
    { left: half + 16, block: worthOf(content, half) },
  ]);
}

function readsOf({ play }: SheetContent, width: number): Block {
  const reads = play.reads.map((read, at) =>
    marked(`${at + 1}`, `${capital(readWords(read))}.`, looks.body, width, 14),
  );
  const none = paragraph('No read is taught: run it as it is drawn.', looks.body, width);
  return stack([paragraph('Reads, in this order', looks.heading, width), ...(reads.length === 0 ? [none] : reads)], 2);
}

function worthOf({ worths, trials }: SheetContent, width: number): Block {
  const heading = paragraph('What it beats, and where not to run it', looks.heading, width);
  if (worths.length === 0)
    return stack([heading, paragraph('Not played against any scheme yet.', looks.body, width)], 2);
  const ranked = [...worths].sort((one, other) => other.goals.mean - one.goals.mean);
  const shown = Math.min(3, Math.floor(ranked.length / 2));
  const line = ({ scheme, goals }: (typeof ranked)[number]): string =>
    `${scheme}: ${perChance(goals.mean)} (${perChance(goals.low)} to ${perChance(goals.high)})`;
  const best = ranked.slice(0, Math.max(1, shown)).map((one) => marked('+', line(one), looks.body, width, 14));
  const worst = ranked.slice(ranked.length - shown).map((one) => marked('−', line(one), looks.body, width, 14));
  const basis = `Goals a man-up, simulated, ${trials} against each scheme; in brackets where the truth lies 95 times in 100.`;
  return stack([heading, ...best, ...worst, paragraph(basis, looks.quiet, width)], 2);
}

function footOf({ version, date, paper }: SheetContent, width: number, page: number | undefined): Block {
  const words = `${lineLegend} ${viewpointNote} ${date}, version ${version}, ${papers[paper].name}.`;
  return pageFoot(words, looks.quiet, width, page);
}

function describe({ play }: SheetContent): string {
  return playSteps(play)
    .map(
      ({ beat }, at) =>
        `Step ${at + 1}, ${triggerWords(beat.when, stepName(play))}: ${beat.actions.map((action) => actionWords(action)).join('; ')}.`,
    )
    .join(' ');
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

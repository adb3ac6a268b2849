import type { Play, SpotId } from '../../engine/index.ts';
import { viewpointNote } from '../play-scene.ts';
import { playSteps } from '../play-steps.ts';
import {
  type Block,
  badge,
  beside,
  gap,
  marked,
  paragraph,
  picture,
  rule,
  shortened,
  stack,
  type TextLook,
} from './block.ts';
import { flowPages } from './flow-pages.ts';
import { type Page, pageMargin, papers } from './page.ts';
import { lineLegend, pageFoot } from './page-foot.ts';
import type { SheetContent } from './play-sheet.ts';
import {
  dutyToYou,
  maybeReadForYou,
  moveToYou,
  orderToYou,
  placeToYou,
  readToYou,
  triggerToYou,
} from './player-words.ts';
import { type SpotMove, spotMoves } from './spot-moves.ts';
import { type SpotPicture, spotPictures } from './spot-picture.ts';

/** Letters of a player's page: none smaller than eleven points, so that it can be read from a wall (common practice, no source). */
const large = {
  play: { size: 24, weight: 'bold', tone: 'ink', leading: 1.2 },
  heading: { size: 14, weight: 'bold', tone: 'ink', leading: 1.3 },
  read: { size: 15, weight: 'regular', tone: 'ink', leading: 1.3 },
  body: { size: 12, weight: 'regular', tone: 'ink', leading: 1.3 },
  foot: { size: 11, weight: 'regular', tone: 'quiet', leading: 1.3 },
} as const satisfies Record<string, TextLook>;

const between = 10;

/**
 * A page for each man of a play, in large letters and short sentences: where he stands, what he does in which step, his reads, what he does when the
 * ball is lost and when the penalty ends. A man with very much to do has a second page. `page` is the first page's number, where pages are counted.
 */
export function spotPages(content: SheetContent, page?: number): readonly Page[] {
  const pages: Page[] = [];
  for (const { id } of content.play.spots) {
    pages.push(...pagesOf(content, id, page === undefined ? undefined : page + pages.length));
  }
  return pages;
}

function pagesOf(content: SheetContent, spot: SpotId, page: number | undefined): readonly Page[] {
  const { play, paper } = content;
  const { width, height } = papers[paper];
  const inside = width - 2 * pageMargin;
  const foot = footOf(content, inside, page);
  const room = height - 2 * pageMargin - foot.height - 6;
  return partsOf(content, spot, inside, room).map((blocks, at) => {
    const count = page === undefined ? undefined : page + at;
    return {
      title: `${play.name}: ${spot}${at === 0 ? '' : `, page ${at + 1}`}`,
      description: describe(play, spot),
      width,
      height,
      marks: [
        ...stack(blocks, between).draw(pageMargin, pageMargin),
        ...footOf(content, inside, count).draw(pageMargin, height - pageMargin - foot.height),
      ],
    };
  });
}

/** All on one page with pictures as large as there is room for; where even small ones leave too little, on as many pages as it takes. */
function partsOf(content: SheetContent, spot: SpotId, width: number, room: number): readonly (readonly Block[])[] {
  const { play } = content;
  const head = headOf(content, spot, width);
  const lower = lowerOf(play, spot, width);
  for (const share of [1, 0.9, 0.8, 0.7]) {
    const blocks = [head, ...movesOf(content, spot, width, share), lower];
    if (stack(blocks, between).height <= room) return [blocks];
  }
  const again = againOf(content, spot, width);
  const left = room - again.height - between;
  const loose = lower.height <= left ? [lower] : [...readsOf(play, spot, width), ...dutiesOf(play, spot, width)];
  return flowPages([head, ...movesOf(content, spot, width, 0.95), ...loose], room, between, again);
}

/** Who he is, at the top of a page that is not his first. */
function againOf({ play }: SheetContent, spot: SpotId, width: number): Block {
  return beside([
    { left: 0, block: badge(spot, 22, 60, 32) },
    { left: 72, block: shortened(play.name, large.play, width - 72, 1) },
  ]);
}

/** Who he is in letters that can be seen across a room, and where he stands. */
function headOf(content: SheetContent, spot: SpotId, width: number): Block {
  const { play, field } = content;
  const across = 186;
  const words = width - across - 14;
  const pictures = spotPictures(play, field, across);
  return stack([
    beside([
      {
        left: 0,
        block: stack([
          beside([
            { left: 0, block: badge(spot, 46, 110, 66) },
            { left: 124, block: nameOf(content, spot, words - 124) },
          ]),
          gap(8),
          paragraph('Your place', large.heading, words),
          paragraph(homeWords(play, spot), large.body, words),
        ]),
      },
      { left: words + 14, block: pictureOf(pictures.home(spot), across, across / pictures.shape) },
    ]),
    gap(4),
    rule(width),
  ]);
}

function nameOf({ play, men, team }: SheetContent, spot: SpotId, width: number): Block {
  const man = men.find((one) => one.spot === spot);
  const who = man === undefined ? '' : `Number ${man.number}${man.name === undefined ? '' : `, ${man.name}`}`;
  return stack([
    shortened(play.name, large.play, width, 2),
    shortened(who, large.heading, width, 2),
    shortened(team, large.body, width, 2),
  ]);
}

function homeWords(play: Play, spot: SpotId): string {
  const { at, hand } = play.spots.find(({ id }) => id === spot)!;
  const start = play.start.ball === spot ? ' You restart with the ball outside the box, then go to your place.' : '';
  const stick = hand === 'either' ? '' : ` Best with the stick in your ${hand} hand.`;
  return `Stand ${placeToYou(at)}.${stick}${start}`;
}

const ordinals = ['First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth'];

/** Rows of moves, each with its picture and its words: few with the words beside them, more with the words below. */
function movesOf({ play, field }: SheetContent, spot: SpotId, width: number, share: number): readonly Block[] {
  const moves = spotMoves(play, spot);
  if (moves.length === 0) {
    return [paragraph('No step asks anything of you: hold your place, ready for the ball.', large.read, width)];
  }
  const { columns, pictured } = arranged(moves.length);
  const across = (width - (columns - 1) * between) / columns;
  const drawn = pictured * share * across;
  const pictures = spotPictures(play, field, drawn);
  const cells = moves.map((move, at) => {
    const scene = pictureOf(pictures.move(spot, move.number), drawn, drawn / pictures.shape);
    return pictured < 1
      ? besideWords(scene, drawn, moveWords(move, at, play, spot, across - drawn - 8, columns === 1))
      : stack([scene, gap(3), moveWords(move, at, play, spot, across, false)]);
  });
  return inRows(cells, columns, across);
}

/** How many moves stand side by side, and which share of its cell a picture takes where the words stand beside it; 1 where they stand below. */
function arranged(moves: number): { readonly columns: number; readonly pictured: number } {
  if (moves === 1) return { columns: 1, pictured: 0.52 };
  if (moves === 4) return { columns: 2, pictured: 0.58 };
  return { columns: moves === 2 ? 2 : 3, pictured: 1 };
}

function inRows(cells: readonly Block[], columns: number, across: number): readonly Block[] {
  return Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) =>
    beside(
      cells
        .slice(row * columns, (row + 1) * columns)
        .map((block, column) => ({ left: column * (across + between), block })),
    ),
  );
}

function besideWords(scene: Block, across: number, words: Block): Block {
  return beside([
    { left: 0, block: scene },
    { left: across + 8, block: words },
  ]);
}

function moveWords(move: SpotMove, at: number, play: Play, spot: SpotId, width: number, roomy: boolean): Block {
  const look = roomy ? large.read : large.body;
  const count = ordinals[at] ?? `${at + 1}th`;
  return stack([
    paragraph(`${count} move (step ${move.number})`, { ...look, weight: 'bold' }, width),
    paragraph(moveToYou(move, play, spot), look, width),
  ]);
}

/** His reads on the left, in the largest letters; what he does when the play is over on the right. */
function lowerOf(play: Play, spot: SpotId, width: number): Block {
  const half = (width - 16) / 2;
  return stack([
    rule(width),
    gap(3),
    beside([
      { left: 0, block: stack(readsOf(play, spot, half), 2) },
      { left: half + 16, block: stack(dutiesOf(play, spot, half), 2) },
    ]),
  ]);
}

function readsOf(play: Play, spot: SpotId, width: number): readonly Block[] {
  const own = play.reads.filter(({ carrier }) => carrier === spot).map((read) => readToYou(read, play));
  const forYou = play.reads.flatMap((read) => maybeReadForYou(read, spot) ?? []);
  const goOn = own.length === 0 ? 'No read of your own: do your moves.' : 'Nothing there? Go on with the play.';
  return [
    paragraph('Your reads, in this order', large.heading, width),
    ...own.map((words, at) => marked(`${at + 1}`, words, large.read, width, 20)),
    paragraph(goOn, large.body, width),
    ...(forYou.length === 0 ? [] : [paragraph('Be ready, the ball may come', large.heading, width)]),
    ...forYou.map((words) => paragraph(words, large.read, width)),
  ];
}

const penaltyEnds =
  'A sixth defender runs in. Play even: keep the ball, find the open man. Stay onside, and change only through the substitution area.';

function dutiesOf(play: Play, spot: SpotId, width: number): readonly Block[] {
  const { safety } = play.spots.find(({ id }) => id === spot)!;
  const last = lastTenWords(play, spot);
  const parts: readonly (readonly [string, string])[] = [
    ['Ball lost or shot wide', dutyToYou[safety]],
    ['The play breaks down', resetWords(play, spot)],
    ['The penalty ends', penaltyEnds],
    ...(last === undefined ? [] : [['Last ten seconds', last] as const]),
  ];
  return parts.map(([heading, words]) =>
    stack([paragraph(heading, large.heading, width), paragraph(words, large.body, width)]),
  );
}

function resetWords({ reset }: Play, spot: SpotId): string {
  const ball = reset.ball === spot ? 'You get the ball' : `${reset.ball} gets the ball`;
  const then = reset.then === 'again' ? 'run the play again' : 'play what comes open';
  return `Back to your place. ${ball}, then ${then}.`;
}

/** What changes for him with ten seconds of the penalty left, his reads included; `undefined` where the play has nothing for it. */
function lastTenWords(play: Play, spot: SpotId): string | undefined {
  if (play.lastTen === undefined) return undefined;
  const late: Play = { ...play, beats: play.lastTen.beats, reads: play.lastTen.reads };
  const moves = spotMoves(late, spot).map((move) => {
    const { when } = move.step.beat;
    return when.kind === 'start'
      ? `${move.own.map((one) => orderToYou(one, spot)).join('. ')}.`
      : moveToYou(move, late, spot);
  });
  const reads = late.reads.filter(({ carrier }) => carrier === spot).map((read) => `${readToYou(read, late)}`);
  const told = [...moves, ...reads, ...late.reads.flatMap((read) => maybeReadForYou(read, spot) ?? [])];
  return told.length === 0 ? 'Hold your place, ready for the ball.' : told.join(' ');
}

function footOf({ date, version }: SheetContent, width: number, page: number | undefined): Block {
  return pageFoot(`${lineLegend} ${viewpointNote} ${date}, version ${version}.`, large.foot, width, page);
}

function pictureOf({ scene, faded }: SpotPicture, width: number, height: number): Block {
  return picture(scene, width, height, faded);
}

function describe(play: Play, spot: SpotId): string {
  const moves = spotMoves(play, spot).map((move) => `Step ${move.number}. ${moveToYou(move, play, spot)}`);
  const starts = playSteps(play)[0];
  const begin = starts === undefined ? '' : ` The play starts: ${triggerToYou(starts.beat.when, play, spot)}.`;
  return `${homeWords(play, spot)}${begin} ${moves.join(' ')}`;
}

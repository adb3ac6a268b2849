import type { Level } from '../../engine/index.ts';
import type { SceneLayer } from '../scene.ts';
import { type Block, beside, gap, looks, marked, paragraph, picture, rule, stack, type TextLook } from './block.ts';
import { type Page, type PaperName, pageMargin, papers } from './page.ts';
import { lineLegend, pageFoot } from './page-foot.ts';
import { cautionsBlock } from './practice-cautions.ts';

/** Everything that stands on the page of a part of a play for fewer men. */
export interface PartSheet {
  /** "3 v 2: X skips to TR". */
  readonly title: string;
  /** "From Lantern, against Jump. 6 reps in 2½ minutes." */
  readonly about: string;
  /** A picture for each step, with what is done in it. */
  readonly steps: readonly { readonly scene: SceneLayer; readonly words: string }[];
  /** What stands under a heading each: set-up, the defenders, how a rep ends, what the coach says, why. */
  readonly sections: readonly { readonly heading: string; readonly lines: readonly string[] }[];
  readonly level: Level;
  readonly paper: PaperName;
  readonly made: string;
}

const body: TextLook = { size: 11.5, weight: 'regular', tone: 'ink', leading: 1.25 };
const heading: TextLook = { size: 12.5, weight: 'bold', tone: 'ink', leading: 1.25 };
const pictureGap = 12;

/** A part of a play on one page, with large pictures; letters of 9 points and more. RangeError when it does not fit, which no part of five steps or fewer brings about. */
export function practicePart(sheet: PartSheet, page?: number): Page {
  const { width, height } = papers[sheet.paper];
  const inside = width - 2 * pageMargin;
  const foot = footOf(sheet, inside, page);
  const room = height - 2 * pageMargin - foot.height - 6;
  const whole = [1, 0.9, 0.8, 0.7, 0.6, 0.5]
    .map((share) => bodyOf(sheet, inside, share))
    .find((one) => one.height <= room);
  if (whole === undefined)
    throw new RangeError(`invalid part for one page: ${sheet.title} has ${sheet.steps.length} steps`);
  return {
    title: sheet.title,
    description: [sheet.about, ...sheet.steps.map(({ words }, at) => `Step ${at + 1}. ${words}`)].join(' '),
    width,
    height,
    marks: [...whole.draw(pageMargin, pageMargin), ...foot.draw(pageMargin, height - pageMargin - foot.height)],
  };
}

function bodyOf(sheet: PartSheet, width: number, share: number): Block {
  return stack(
    [
      stack([paragraph(sheet.title, looks.title, width), paragraph(sheet.about, body, width), gap(3), rule(width)]),
      picturesOf(sheet, width, share),
      sectionsOf(sheet, width),
    ],
    8,
  );
}

function picturesOf({ steps }: PartSheet, width: number, share: number): Block {
  const columns = steps.length === 1 ? 1 : steps.length <= 4 ? 2 : 3;
  const across = (width - (columns - 1) * pictureGap) / columns;
  const cells = steps.map(({ scene, words }, at) => {
    const high = across * Math.min(mostHigh, scene.view.height / scene.view.width) * share;
    return stack([picture(scene, across, high), gap(2), marked(String(at + 1), words, body, across, 14)]);
  });
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) =>
    beside(
      cells
        .slice(row * columns, (row + 1) * columns)
        .map((block, column) => ({ left: column * (across + pictureGap), block })),
    ),
  );
  return stack(rows, 8);
}

/** A picture is no higher than this share of its width. */
const mostHigh = 0.8;

/** In two columns, the longer one left. */
function sectionsOf({ sections }: PartSheet, width: number): Block {
  const half = (width - 18) / 2;
  const blocks = sections.map((section) =>
    stack([paragraph(section.heading, heading, half), ...section.lines.map((line) => paragraph(line, body, half))], 1),
  );
  const all = blocks.reduce((sum, { height }) => sum + height, 0);
  const left: Block[] = [];
  let high = 0;
  for (const block of blocks) {
    if (left.length > 0 && high + block.height / 2 > all / 2) break;
    left.push(block);
    high += block.height;
  }
  return beside([
    { left: 0, block: stack(left, 6) },
    { left: half + 18, block: stack(blocks.slice(left.length), 6) },
  ]);
}

function footOf({ level, made, paper }: PartSheet, width: number, page?: number): Block {
  const small: TextLook = { size: 9.5, weight: 'regular', tone: 'ink', leading: 1.2 };
  return stack([
    cautionsBlock(level, small, width),
    gap(4),
    pageFoot(`${lineLegend} ${made}, ${papers[paper].name}.`, looks.quiet, width, page),
  ]);
}

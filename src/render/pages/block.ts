import type { Primitive, SceneLayer } from '../scene.ts';
import { textWidth, wrapLines } from './measure-text.ts';
import type { PageMark, Tone, Weight } from './page.ts';

/** A part of a page that knows how high it is for the width that it was made for, and draws itself from its left top corner. Points. */
export interface Block {
  readonly height: number;
  draw(left: number, top: number): readonly PageMark[];
}

/** How letters are set. `leading` is from one baseline to the next, in sizes. */
export interface TextLook {
  readonly size: number;
  readonly weight: Weight;
  readonly tone: Tone;
  readonly leading: number;
}

/** The letters of our pages. The smallest can be read at arm's length: 9 points and more (common practice, no source). */
export const looks = {
  title: { size: 22, weight: 'bold', tone: 'ink', leading: 1.15 },
  heading: { size: 12, weight: 'bold', tone: 'ink', leading: 1.3 },
  strong: { size: 10, weight: 'bold', tone: 'ink', leading: 1.3 },
  body: { size: 10, weight: 'regular', tone: 'ink', leading: 1.3 },
  quiet: { size: 9, weight: 'regular', tone: 'quiet', leading: 1.3 },
} as const satisfies Record<string, TextLook>;

/** Share of the letter size from the top of a line to its baseline when lines are set solid. */
const ascent = 0.95;

/** Words in lines of at most `width`. */
export function paragraph(text: string, look: TextLook, width: number): Block {
  const lines = wrapLines(text, look.size, look.weight, width);
  const step = look.size * look.leading;
  return {
    height: lines.length * step,
    draw: (left, top) =>
      lines.map((line, at) => ({
        kind: 'text',
        at: { x: left, y: top + at * step + (step - look.size) / 2 + ascent * look.size },
        text: line,
        size: look.size,
        weight: look.weight,
        tone: look.tone,
        anchor: 'start',
      })),
  };
}

/** A paragraph with a mark before it, such as a number or a spot, in a column of its own; `indent` is the column's width. */
export function marked(mark: string, text: string, look: TextLook, width: number, indent: number): Block {
  const words = paragraph(text, look, width - indent);
  const label = paragraph(mark, { ...look, weight: 'bold' }, indent);
  return {
    height: Math.max(words.height, label.height),
    draw: (left, top) => [...label.draw(left, top), ...words.draw(left + indent, top)],
  };
}

/** One line with words at both ends of it; whoever writes them sees to it that they do not meet. */
export function lineAcross(left: string, right: string, look: TextLook, width: number): Block {
  const shift = Math.max(0, width - textWidth(right, look.size, look.weight));
  return beside([
    { left: 0, block: paragraph(left, look, width) },
    { left: shift, block: paragraph(right, look, width) },
  ]);
}

/** As many lines of words as there is room for; words that are left out show as dots. `lines` is 1 or more. */
export function shortened(text: string, look: TextLook, width: number, lines: number): Block {
  const all = wrapLines(text, look.size, look.weight, width);
  if (all.length <= lines) return paragraph(text, look, width);
  const kept = [...all.slice(0, lines - 1), dotted(all[lines - 1]!, look, width)];
  return stack(kept.map((line) => paragraph(line, look, width)));
}

function dotted(line: string, { size, weight }: TextLook, width: number): string {
  let kept = line;
  while (kept !== '' && textWidth(`${kept}…`, size, weight) > width) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
}

/** White letters on black, in the middle of a box: what is found first on a page. */
export function badge(text: string, size: number, width: number, height: number): Block {
  return {
    height,
    draw: (left, top) => [
      { kind: 'box', left, top, width, height, fill: 'ink', edge: 0 },
      {
        kind: 'text',
        // A capital is 0.73 of the letter size high.
        at: { x: left + width / 2, y: top + height / 2 + 0.365 * size },
        text,
        size,
        weight: 'bold',
        tone: 'paper',
        anchor: 'middle',
      },
    ],
  };
}

/** Nothing, so high. */
export function gap(height: number): Block {
  return { height, draw: () => [] };
}

/** A scene of the field, with what lies pale under it. */
export function picture(scene: SceneLayer, width: number, height: number, faded: readonly Primitive[] = []): Block {
  return { height, draw: (left, top) => [{ kind: 'picture', scene, faded, left, top, width, height }] };
}

/** One block under the other, `between` apart. */
export function stack(blocks: readonly Block[], between = 0): Block {
  const height = blocks.reduce((sum, block, at) => sum + block.height + (at > 0 ? between : 0), 0);
  return {
    height,
    draw: (left, top) => {
      let y = top;
      return blocks.flatMap((block) => {
        const marks = block.draw(left, y);
        y += block.height + between;
        return marks;
      });
    },
  };
}

/** Blocks side by side, each with the x at which it begins. */
export function beside(columns: readonly { readonly left: number; readonly block: Block }[]): Block {
  return {
    height: columns.reduce((most, { block }) => Math.max(most, block.height), 0),
    draw: (left, top) => columns.flatMap((column) => column.block.draw(left + column.left, top)),
  };
}

/** A block in a frame with white round it; `padding` on all sides. */
export function framed(block: Block, width: number, padding: number, fill: 'none' | 'tint' = 'none'): Block {
  const height = block.height + 2 * padding;
  return {
    height,
    draw: (left, top) => [
      { kind: 'box', left, top, width, height, fill, edge: fill === 'none' ? 0.75 : 0 },
      ...block.draw(left + padding, top + padding),
    ],
  };
}

/** A line across. */
export function rule(width: number): Block {
  return {
    height: 1,
    draw: (left, top) => [{ kind: 'rule', from: { x: left, y: top }, to: { x: left + width, y: top }, width: 0.75 }],
  };
}

/** One column of a table: its title, how wide it is, and on which side its words stand. */
export interface TableColumn {
  readonly title: string;
  readonly width: number;
  readonly align: 'left' | 'right';
}

/** Rows of words under their titles, a thin line between rows; words that are too long for their column go on below. */
export function table(columns: readonly TableColumn[], rows: readonly (readonly string[])[], look: TextLook): Block {
  return stack([tableHead(columns, look), ...rows.map((cells) => tableRow(columns, cells, look))], tableGap);
}

/** Between the rows of a table. */
export const tableGap = 1.5;

/** The titles of a table's columns, for who deals its rows out to several pages. */
export function tableHead(columns: readonly TableColumn[], look: TextLook): Block {
  const titles = columns.map(({ title }) => title);
  return tableRow(columns, titles, { ...look, weight: 'bold' });
}

/** One row of a table with the line under it. */
export function tableRow(columns: readonly TableColumn[], cells: readonly string[], look: TextLook): Block {
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  return stack([row(columns, cells, look), rule(width)], tableGap);
}

const cellGap = 6;

function row(columns: readonly TableColumn[], cells: readonly string[], look: TextLook): Block {
  let left = 0;
  const placed = columns.map(({ width, align }, at) => {
    const column = { left, block: cell(cells[at] ?? '', look, width - cellGap, align) };
    left += width;
    return column;
  });
  return beside(placed);
}

function cell(text: string, look: TextLook, width: number, align: 'left' | 'right'): Block {
  if (align === 'left') return paragraph(text, look, width);
  const lines = wrapLines(text, look.size, look.weight, width);
  return stack(
    lines.map((line) => {
      const one = paragraph(line, look, width + 1);
      const shift = Math.max(0, width - textWidth(line, look.size, look.weight));
      return { height: one.height, draw: (left: number, top: number) => one.draw(left + shift, top) };
    }),
  );
}

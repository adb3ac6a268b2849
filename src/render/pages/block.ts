import type { SceneLayer } from '../scene.ts';
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

/** Nothing, so high. */
export function gap(height: number): Block {
  return { height, draw: () => [] };
}

/** A scene with its words under it. */
export function picture(scene: SceneLayer, width: number, height: number): Block {
  return { height, draw: (left, top) => [{ kind: 'picture', scene, left, top, width, height }] };
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
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  const head = row(
    columns,
    columns.map(({ title }) => title),
    { ...look, weight: 'bold' },
  );
  const lines = rows.map((cells) => row(columns, cells, look));
  return stack(
    [head, ...lines].flatMap((line) => [line, rule(width)]),
    1.5,
  );
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

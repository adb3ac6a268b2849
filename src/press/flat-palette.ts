import type { FilmColours } from '../render/index.ts';

/** Few flat colours for pictures that are drawn in few: a picture's colours are numbers of these. */
export interface FlatPalette {
  /** Red, green and blue of each, 0 to 255; the last stands for what has not changed since the picture before. */
  readonly colours: readonly (readonly [number, number, number])[];
  readonly unchanged: number;
  /** Bits that a number takes. */
  readonly depth: number;
  /** The nearest colour of each cell of the cube of colours (`cellOf`). */
  readonly nearest_byCell: Uint8Array;
}

const depth = 6;
/** Bits of each of red, green and blue that are looked at: at six, no two of our own colours are one. */
const cellBits = 6;
const dropped = 8 - cellBits;

/**
 * A palette for a film: its own colours as they are, and what smoothing makes of an edge between a colour and a ground, in thirds. Built once and looked up
 * for each pixel, where a palette fitted to each picture costs more than all the rest and flickers.
 */
export function flatPalette({ drawn, grounds }: FilmColours): FlatPalette {
  const own = unique([...grounds, ...drawn].map(channels));
  const mixed = [1 / 3, 2 / 3].flatMap((share) =>
    drawn.flatMap((colour) => grounds.map((ground) => mix(channels(ground), channels(colour), share))),
  );
  const colours = spread(own, unique(mixed), 2 ** depth - 1);
  const nearest_byCell = new Uint8Array(2 ** (3 * cellBits));
  for (let cell = 0; cell < nearest_byCell.length; cell += 1) nearest_byCell[cell] = nearestTo(colourOf(cell), colours);
  for (const [index, colour] of own.entries()) nearest_byCell[cellOf(...colour)] = index;
  return { colours: [...colours, [0, 0, 0]], unchanged: colours.length, depth, nearest_byCell };
}

/** Numbers of the palette for pixels of four bytes each, written into `out`. */
export function palettedInto(pixels: Uint8ClampedArray | Uint8Array, palette: FlatPalette, out: Uint8Array): void {
  const { nearest_byCell } = palette;
  for (let pixel = 0, at = 0; pixel < out.length; pixel += 1, at += 4) {
    const cell =
      ((pixels[at]! >> dropped) << (2 * cellBits)) |
      ((pixels[at + 1]! >> dropped) << cellBits) |
      (pixels[at + 2]! >> dropped);
    out[pixel] = nearest_byCell[cell]!;
  }
}

type Colour = readonly [number, number, number];

/** First `own`, then of `others` always the one that is farthest from all that are there, until there are `count`. */
function spread(own: readonly Colour[], others: readonly Colour[], count: number): readonly Colour[] {
  if (own.length > count) throw new RangeError(`invalid colours: ${own.length} of a film (expected at most ${count})`);
  const kept = [...own];
  const left = [...others];
  while (kept.length < count && left.length > 0) {
    const gaps = left.map((colour) => distance(colour, kept[nearestTo(colour, kept)]!));
    const farthest = gaps.indexOf(Math.max(...gaps));
    kept.push(...left.splice(farthest, 1));
  }
  return kept;
}

function nearestTo(colour: Colour, colours: readonly Colour[]): number {
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < colours.length; index += 1) {
    const far = distance(colour, colours[index]!);
    if (far >= least) continue;
    least = far;
    nearest = index;
  }
  return nearest;
}

// Weighed as the eye does, roughly: green most, blue least (ITU-R BT.601 has .299, .587 and .114).
function distance([r, g, b]: Colour, [x, y, z]: Colour): number {
  return 3 * (r - x) ** 2 + 6 * (g - y) ** 2 + (b - z) ** 2;
}

function cellOf(red: number, green: number, blue: number): number {
  return ((red >> dropped) << (2 * cellBits)) | ((green >> dropped) << cellBits) | (blue >> dropped);
}

/** The middle of a cell. */
function colourOf(cell: number): Colour {
  const part = (shift: number): number => (((cell >> shift) & (2 ** cellBits - 1)) << dropped) + 2 ** (dropped - 1);
  return [part(2 * cellBits), part(cellBits), part(0)];
}

function channels(hex: string): Colour {
  const value = Number.parseInt(hex.slice(1), 16);
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new SyntaxError(`invalid colour: ${hex} (expected #rrggbb)`);
  return [value >> 16, (value >> 8) & 255, value & 255];
}

function mix(ground: Colour, colour: Colour, share: number): Colour {
  const part = (index: 0 | 1 | 2): number => Math.round(ground[index] + (colour[index] - ground[index]) * share);
  return [part(0), part(1), part(2)];
}

function unique(colours: readonly Colour[]): readonly Colour[] {
  return [...new Map(colours.map((colour) => [colour.join(), colour])).values()];
}

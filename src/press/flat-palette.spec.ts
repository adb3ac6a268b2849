import { expect, it } from 'vitest';
import { filmColours } from '../render/index.ts';
import { flatPalette, palettedInto } from './flat-palette.ts';

const { drawn, grounds } = filmColours();
const palette = flatPalette({ drawn, grounds });

function shown([red, green, blue]: readonly number[]): readonly number[] {
  const out = new Uint8Array(1);
  palettedInto(new Uint8ClampedArray([red!, green!, blue!, 255]), palette, out);
  return palette.colours[out[0]!]!;
}

const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

it('a palette has room for what a GIF with few bits can say, and a number for what is unchanged', () => {
  expect(palette.colours).toHaveLength(2 ** palette.depth);
  expect(palette.unchanged).toBe(palette.colours.length - 1);
  expect(palette.nearest_byCell.every((colour) => colour < palette.unchanged)).toBe(true);
});

it.each([...new Set([...drawn, ...grounds])])('keeps %s, a colour of a film, as it is', (colour) => {
  expect(shown(channels(colour))).toEqual(channels(colour));
});

it('shows what smoothing mixes of a colour and a ground by one near to it', () => {
  for (const colour of drawn.map(channels)) {
    for (const ground of grounds.map(channels)) {
      for (const share of [0.2, 0.4, 0.6, 0.8]) {
        const mixed = colour.map((value, at) => Math.round(ground[at]! + (value - ground[at]!) * share));
        const off = Math.max(...shown(mixed).map((value, at) => Math.abs(value - mixed[at]!)));
        // A sixth of the way from black to white: at the edge of a line, half a pixel wide.
        expect(off).toBeLessThan(43);
      }
    }
  }
});

it('needs colours that it can read, and no more than it has room for', () => {
  expect(() => flatPalette({ drawn: ['red'], grounds: [] })).toThrow(SyntaxError);
  const many = Array.from({ length: 70 }, (_, at) => `#0000${(at * 3).toString(16).padStart(2, '0')}`);
  expect(() => flatPalette({ drawn: many, grounds: [] })).toThrow(RangeError);
});

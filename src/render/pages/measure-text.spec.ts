import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth, wrapLines } from './measure-text.ts';

describe('how wide letters are', () => {
  it('is what the font file says', () => {
    // Inter 4.001, Regular: the advance width of "H" in units of 2048 an em, read from the file's own table (hmtx).
    expect(textWidth('H', 2048, 'regular')).toBeCloseTo(1522, 0);
    expect(textWidth('i', 10, 'bold')).toBeLessThan(textWidth('W', 10, 'bold'));
  });

  it('is the sum of its letters, and grows with the size', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.double({ min: 1, max: 40, noNaN: true }), (one, other, size) => {
        const sum = textWidth(one, size, 'regular') + textWidth(other, size, 'regular');
        expect(textWidth(one + other, size, 'regular')).toBeCloseTo(sum, 6);
        expect(textWidth(one, 2 * size, 'bold')).toBeCloseTo(2 * textWidth(one, size, 'bold'), 6);
      }),
    );
  });
});

describe('lines', () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom('a', 'W', 'i', 'é', '7'), minLength: 1, maxLength: 14 }));

  it('fit their width, and lose no letter', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 20, max: 300 }), (list, width) => {
        const lines = wrapLines(list.join(' '), 10, 'regular', width);
        for (const line of lines) expect(textWidth(line, 10, 'regular')).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(list.join(''));
      }),
    );
  });

  it('are none for nothing', () => {
    expect(wrapLines('  ', 10, 'regular', 100)).toEqual([]);
  });
});

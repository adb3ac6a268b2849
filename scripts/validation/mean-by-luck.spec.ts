import { describe, expect, it } from 'vitest';
import { meanByLuck } from './mean-by-luck.ts';

const numbers = [3, 1, 4, 1, 5, 9, 2, 6].map((value, luck) => ({ luck, value }));

describe('the mean by luck', () => {
  it('is no surer when the same man-ups are told three times', () => {
    const once = meanByLuck(numbers);
    const thrice = meanByLuck([...numbers, ...numbers, ...numbers]);
    for (const part of ['mean', 'low', 'high'] as const) expect(thrice[part]).toBeCloseTo(once[part], 12);
    expect(once.high).toBeGreaterThan(once.mean);
  });

  it('is surer of three times as many man-ups with luck of their own', () => {
    const more = [0, 1, 2].flatMap((round) => numbers.map(({ luck, value }) => ({ luck: luck + 8 * round, value })));
    const [once, thrice] = [meanByLuck(numbers), meanByLuck(more)];
    // Beside the square root of three: Student's t at .975 of 23 and of 7 degrees of freedom (any table of it), and n - 1 for n.
    const few = (2.068658 / 2.364624) * Math.sqrt(24 / 23 / (8 / 7));
    expect(((thrice.high - thrice.low) * Math.sqrt(3)) / (once.high - once.low)).toBeCloseTo(few, 5);
  });
});

import { describe, expect, it } from 'vitest';
import { type Knob, patternSearch } from './pattern-search.ts';

const knob = (start: number, step: number, low = -10, high = 10): Knob => ({ name: '', start, step, low, high });

/** A bowl with its bottom at the given place, tilted so that the knobs depend on each other. */
const bowl = (bottom: readonly number[]) => (at: readonly number[]) => {
  const [x, y] = at.map((value, index) => value - bottom[index]!) as [number, number];
  return x * x + y * y + x * y;
};

describe('patternSearch', () => {
  it.each([[[3, -2]], [[0, 0]], [[-7.5, 7.5]]])(
    'finds the bottom of a bowl at %j to within its finest step',
    (bottom) => {
      const { best } = patternSearch([knob(0, 1), knob(0, 1)], bowl(bottom), 1000);
      best.forEach((value, index) => {
        expect(Math.abs(value - bottom[index]!)).toBeLessThanOrEqual(1 / 8);
      });
    },
  );

  it('stops at a bound when the bottom lies beyond it', () => {
    const { best } = patternSearch([knob(0, 1, -1, 2)], ([x]) => (x! - 5) ** 2, 200);
    expect(best).toEqual([2]);
  });

  it.each([1, 2, 7])('looks at most %s times, and reports the best it saw', (most) => {
    const seen: number[] = [];
    const search = patternSearch(
      [knob(0, 1), knob(0, 1)],
      (at) => {
        const loss = bowl([3, 3])(at);
        seen.push(loss);
        return loss;
      },
      most,
    );
    expect(seen.length).toBeLessThanOrEqual(most);
    expect(search.evaluations).toBe(seen.length);
    expect(search.loss).toBe(Math.min(...seen));
    expect(bowl([3, 3])(search.best)).toBe(search.loss);
  });
});

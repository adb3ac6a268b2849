import { describe, expect, it } from 'vitest';
import { type MarkSpread, oddsOfMarks } from './mark-odds.ts';

const spread: MarkSpread = { error: 1, model: 0.5, astray: 0.1, astrayTimes: 3, missing: 0.05, extra: 0.3 };
const five = Float64Array.of(5, 10, -5, 10, 5, 3, -5, 3, 0, 5);
const odds = (marks: readonly number[], leftOut = -1) =>
  oddsOfMarks(Float64Array.from(marks), leftOut, five, 0, 5, spread);

/** The same sum written out: every way to give the marks to different men or to nobody. */
function byHand(marks: readonly number[]): number {
  const narrow = spread.error ** 2 + spread.model ** 2;
  const wide = narrow * spread.astrayTimes ** 2;
  const density = (square: number, variance: number) => Math.exp(-square / (2 * variance)) / (2 * Math.PI * variance);
  const of = (mark: number, man: number) => {
    const square = (marks[2 * mark]! - five[2 * man]!) ** 2 + (marks[2 * mark + 1]! - five[2 * man + 1]!) ** 2;
    return (
      (1 - spread.missing) * ((1 - spread.astray) * density(square, narrow) + spread.astray * density(square, wide))
    );
  };
  const count = marks.length / 2;
  const ways = (mark: number, free: readonly number[]): number =>
    mark === count
      ? spread.missing ** free.length
      : (spread.extra / 600) * ways(mark + 1, free) +
        free.reduce(
          (sum, man) =>
            sum +
            of(mark, man) *
              ways(
                mark + 1,
                free.filter((one) => one !== man),
              ),
          0,
        );
  return ways(0, [0, 1, 2, 3, 4]);
}

describe('odds of marks', () => {
  it.each([
    ['all five', [5, 9, -4, 10, 6, 3, -5, 4, 1, 5]],
    ['three of them', [5, 9, -4, 10, 1, 5]],
    ['one too many', [5, 9, -4, 10, 6, 3, -5, 4, 1, 5, 15, 15]],
    ['nobody', []],
  ])('are the sum over every way to give marks to men: %s', (_, marks) => {
    expect(odds(marks) / byHand(marks)).toBeCloseTo(1, 12);
  });

  it('do not depend on the order of the marks', () => {
    expect(odds([0, 5, 5, 10, -5, 3]) / odds([-5, 3, 0, 5, 5, 10])).toBeCloseTo(1, 12);
  });

  it('leave a mark out as if it had not been set', () => {
    expect(odds([5, 9, 20, 20, 0, 4], 1)).toBe(odds([5, 9, 0, 4]));
  });
});

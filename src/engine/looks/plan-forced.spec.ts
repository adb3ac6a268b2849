import { describe, expect, it } from 'vitest';
import { planForced, valueLooks } from './plan-forced.ts';
import { type LookSummary, summarizeLooks } from './summarize.ts';

function looksOf(...counts: readonly number[]): LookSummary[] {
  const windows = counts.flatMap((count, to) =>
    Array.from({ length: count }, (_, trial) => ({
      trial,
      from: 0,
      to: to + 1,
      opens: 1,
      closes: 2,
      kind: 'pass' as const,
      seenAt: 8 + trial / 100,
      completion: 0.9,
      shotOdds: 0.3,
      leftBy: -1,
      duty: 0,
      lateBy: 0,
    })),
  );
  return summarizeLooks(windows, Math.max(...counts));
}

describe('the trials that force looks', () => {
  it('are all of a look that came seldom, at the moment that it can be seen', () => {
    expect(planForced(looksOf(3), 5)).toEqual([
      { trial: 0, time: 8, from: 0, to: 1 },
      { trial: 1, time: 8.01, from: 0, to: 1 },
      { trial: 2, time: 8.02, from: 0, to: 1 },
    ]);
  });

  it('are spread evenly over a look that came often', () => {
    expect(planForced(looksOf(100), 4).map(({ trial }) => trial)).toEqual([12, 37, 62, 87]);
    const trials = planForced(looksOf(97), 40).map(({ trial }) => trial);
    expect(new Set(trials).size).toBe(40);
    const gaps = trials.slice(1).map((trial, at) => trial - trials[at]!);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBe(1);
  });

  it('follow the order of the looks and stop after the likeliest', () => {
    expect(planForced(looksOf(4, 3, 2), 2, 2).map(({ to }) => to)).toEqual([1, 1, 2, 2]);
  });

  it('go on to those that the play throws itself', () => {
    const own = [
      { from: 0, to: 3 },
      { from: 3, to: 0 },
    ];
    expect(planForced(looksOf(4, 3, 2, 2), 2, 1, own).map(({ to }) => to)).toEqual([1, 1, 3, 3]);
  });
});

describe('what a look is worth', () => {
  const plan = planForced(looksOf(4, 2), 4);

  it('is the mean of the goals of its trials, with an interval', () => {
    const [first, second] = valueLooks(plan, [1, 0, 1, 0, 0, 0]);
    expect(first).toMatchObject({ from: 0, to: 1, trials: 4, value: 0.5 });
    expect(second).toMatchObject({ from: 0, to: 2, trials: 2, value: 0, valueLow: 0 });
    // Wilson for 2 of 4 (worked by hand: middle .5, half .35) and for 0 of 2 (3.8415 / 5.8415).
    expect(first!.valueLow).toBeCloseTo(0.15, 2);
    expect(first!.valueHigh).toBeCloseTo(0.85, 2);
    expect(second!.valueHigh).toBeCloseTo(0.6576, 4);
  });

  it('needs a count for each trial', () => expect(() => valueLooks(plan, [1])).toThrow(RangeError));
});

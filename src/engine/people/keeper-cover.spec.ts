import { describe, expect, it } from 'vitest';
import {
  coveredOdds,
  guessCover,
  type KeeperCover,
  keeperQuarterIds,
  mirrorCover,
  type QuarterCounts,
} from './keeper-cover.ts';

/** Saves and goals by quarters, in the order of `keeperQuarterIds`. */
function counted(...pairs: readonly (readonly [number, number])[]): QuarterCounts {
  return Object.fromEntries(
    keeperQuarterIds.map((id, at) => [id, { saves: pairs[at]![0], goals: pairs[at]![1] }]),
  ) as QuarterCounts;
}

const ratios = (cover: KeeperCover) => keeperQuarterIds.map((id) => cover[id]);
const weakLow = counted([18, 6], [18, 6], [8, 16], [8, 16]);

describe('what a goalkeeper covers, by shots', () => {
  it.each([
    ['no shots', counted([0, 0], [0, 0], [0, 0], [0, 0])],
    ['quarters that are alike', counted([9, 11], [9, 11], [9, 11], [9, 11])],
    ['quarters of which every ball went in', counted([0, 7], [0, 7], [0, 7], [0, 7])],
  ])('is nothing of its own after %s', (_, counts) => {
    expect(guessCover(counts)).toBeUndefined();
  });

  it('is less where he is beaten more, and alike on sides that are alike', () => {
    const [highLeft, highRight, lowLeft, lowRight] = ratios(guessCover(weakLow)!);
    expect(highLeft).toBeCloseTo(highRight!, 12);
    expect(lowLeft).toBeCloseTo(lowRight!, 12);
    expect(highLeft).toBeGreaterThan(1.5);
    expect(lowLeft).toBeCloseTo(1 / highLeft!, 12);
  });

  it('says little after a few shots, and comes to the counted odds after very many', () => {
    const times = (n: number) => counted([18 * n, 6 * n], [18 * n, 6 * n], [8 * n, 16 * n], [8 * n, 16 * n]);
    const few = guessCover(counted([3, 1], [3, 1], [1, 3], [1, 3]))!;
    // Counted odds are 3 to 1 and 1 to 3; less than a third of the way there, in log-odds.
    expect(Math.log(few.highLeft)).toBeLessThan(Math.log(3) / 3);
    const grown = [1, 4, 1000].map((n) => guessCover(times(n))!.highLeft);
    expect(grown).toEqual([...grown].sort((a, b) => a - b));
    // Odds of 3 high and 1/2 low: each is a factor of the root of 6 from their geometric mean.
    expect(grown[2]).toBeCloseTo(Math.sqrt(6), 2);
  });

  it('is mirrored with the shots', () => {
    const sided = counted([5, 9], [12, 3], [6, 6], [11, 4]);
    const mirrored = counted([12, 3], [5, 9], [11, 4], [6, 6]);
    const here = ratios(guessCover(sided)!);
    const there = ratios(mirrorCover(guessCover(mirrored)!));
    expect(there.map((ratio) => ratio.toFixed(10))).toEqual(here.map((ratio) => ratio.toFixed(10)));
  });

  it('is the most likely one: no small step away from it is likelier, and the habits stand in height, side and both', () => {
    const counts = counted([5, 9], [12, 3], [6, 6], [11, 4]);
    const logs = ratios(guessCover(counts)!).map(Math.log);
    const habits = [
      (logs[0]! + logs[1]! - logs[2]! - logs[3]!) / 4,
      (-logs[0]! + logs[1]! - logs[2]! + logs[3]!) / 4,
      (-logs[0]! + logs[1]! + logs[2]! - logs[3]!) / 4,
    ] as const;
    const likely = (mean: number, [height, side, both]: readonly number[]): number => {
      const signs = [
        [1, -1, -1],
        [1, 1, 1],
        [-1, -1, 1],
        [-1, 1, -1],
      ];
      const fit = keeperQuarterIds.reduce((sum, id, at) => {
        const log = mean + signs[at]![0]! * height! + signs[at]![1]! * side! + signs[at]![2]! * both!;
        const stops = 1 / (1 + Math.exp(-log));
        return sum + counts[id].saves * Math.log(stops) + counts[id].goals * Math.log(1 - stops);
      }, 0);
      return fit - (mean ** 2 + height! ** 2 / 0.09 + side! ** 2 / 0.09 + both! ** 2 / 0.04) / 2;
    };
    const best = Math.max(...Array.from({ length: 4001 }, (_, at) => likely(-2 + at / 1000, habits)));
    for (const [at, step] of [0, 1, 2].flatMap((one) => [-0.01, 0.01].map((by) => [one, by] as const))) {
      const moved = habits.map((habit, one) => habit + (one === at ? step : 0));
      const there = Math.max(...Array.from({ length: 4001 }, (_, one) => likely(-2 + one / 1000, moved)));
      expect(there).toBeLessThan(best);
    }
  });
});

describe('the odds of a save under a cover', () => {
  it('stay odds, are the usual ones at 1, and grow with it', () => {
    for (const stops of [0, 0.1, 0.645, 0.9, 1]) {
      expect(coveredOdds(stops, 1)).toBeCloseTo(stops, 15);
      const odds = [0.2, 0.7, 1.4, 5].map((ratio) => coveredOdds(stops, ratio));
      expect(odds).toEqual([...odds].sort((a, b) => a - b));
      expect(Math.max(...odds)).toBeLessThanOrEqual(1);
    }
    // A tenth against two tenths: odds of 1 to 9 and of 2 to 8 are a ratio of 2.25 apart.
    expect(coveredOdds(0.1, 2.25)).toBeCloseTo(0.2, 12);
  });
});

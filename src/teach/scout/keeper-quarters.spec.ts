import { describe, expect, it } from 'vitest';
import type { KeeperShot } from '../../playbook/index.ts';
import { keeperQuarters } from './keeper-quarters.ts';

const shots = (at: KeeperShot['at'], goals: number, saved: number): readonly KeeperShot[] => [
  ...Array.from({ length: goals }, () => ({ at, result: 'goal' }) as const),
  ...Array.from({ length: saved }, () => ({ at, result: 'saved' }) as const),
];
const told = (list: readonly KeeperShot[]) =>
  keeperQuarters(list).map(({ id, goals, shots: tries, verdict }) => `${id} ${goals} of ${tries} ${verdict}`);

describe('shots on a goalkeeper by quarters', () => {
  it('are counted as the shooter sees them, and say nothing while there are few', () => {
    expect(
      told([...shots([-2, 5], 2, 1), ...shots([2, 1], 0, 3), ...shots([0, 3], 1, 0), ...shots([4, 1], 5, 5)]),
    ).toEqual([
      'highLeft 2 of 3 cannotTell',
      'highRight 1 of 1 cannotTell',
      'lowLeft 0 of 0 cannotTell',
      'lowRight 0 of 3 cannotTell',
    ]);
  });

  it('tell a weak quarter when there are enough, and a strong one', () => {
    const many = [...shots([-2, 1], 18, 4), ...shots([2, 1], 6, 14), ...shots([-2, 5], 6, 14), ...shots([2, 5], 1, 21)];
    expect(told(many)).toEqual([
      'highLeft 6 of 20 cannotTell',
      'highRight 1 of 22 less',
      'lowLeft 18 of 22 more',
      'lowRight 6 of 20 cannotTell',
    ]);
  });

  it("have Wilson's interval: 81 of 263 is .308, .2553 to .3662 (Newcombe 1998, method 3)", () => {
    const { beaten } = keeperQuarters(shots([1, 1], 81, 182))[3]!;
    expect([beaten.mean, beaten.low, beaten.high].map((one) => one.toFixed(4))).toEqual(['0.3080', '0.2553', '0.3662']);
  });

  it('hold their peace about a keeper who is alike everywhere, 95 times in 100 by their own measure', () => {
    // A deterministic walk through ways to share 40 shots out: he lets in every third shot, wherever it comes.
    let loud = 0;
    for (let run = 0; run < 200; run++) {
      const list = Array.from({ length: 40 }, (_, at): KeeperShot => {
        const turn = Math.sin(12.9898 * (run * 40 + at + 1)) * 43_758.5453;
        const lot = turn - Math.floor(turn);
        const other = Math.sin(78.233 * (run * 40 + at + 1)) * 12_543.1234;
        const save = other - Math.floor(other);
        return { at: [lot < 0.5 ? -1 : 1, (2 * lot) % 1 < 0.5 ? 1 : 5], result: save < 1 / 3 ? 'goal' : 'saved' };
      });
      if (keeperQuarters(list).some(({ verdict }) => verdict !== 'cannotTell')) loud++;
    }
    // 200 runs at .05 with three standard errors: .05 + 3 sqrt(.05 * .95 / 200) = .096.
    expect(loud / 200).toBeLessThan(0.096);
  });
});

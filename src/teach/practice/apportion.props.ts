import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apportion, type Claim } from './apportion.ts';

const claim: fc.Arbitrary<Claim> = fc.record({
  worth: fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 1, noNaN: true })),
  least: fc.nat({ max: 4 }),
});
const claims = fc.array(claim, { minLength: 1, maxLength: 8 });
const total = fc.nat({ max: 60 });

const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);

describe('apportion', () => {
  test('gives out all that there is, in whole things', () => {
    fc.assert(
      fc.property(total, claims, (all, list) => {
        const got = apportion(all, list);
        expect(sum(got)).toBe(all);
        expect(got.every((one) => Number.isInteger(one) && one >= 0)).toBe(true);
      }),
    );
  });

  test('gives everybody his least as soon as there is enough', () => {
    fc.assert(
      fc.property(total, claims, (more, list) => {
        const all = more + sum(list.map(({ least }) => least));
        for (const [at, got] of apportion(all, list).entries()) expect(got).toBeGreaterThanOrEqual(list[at]!.least);
      }),
    );
  });

  test('never gives anybody less when there is more', () => {
    fc.assert(
      fc.property(total, claims, (all, list) => {
        const [less, more] = [apportion(all, list), apportion(all + 1, list)];
        for (const [at, got] of more.entries()) expect(got).toBeGreaterThanOrEqual(less[at]!);
      }),
    );
  });

  test('gives the worthier no less, where both have the same least', () => {
    fc.assert(
      fc.property(total, claims, fc.nat({ max: 4 }), (all, list, least) => {
        const same = list.map(({ worth }) => ({ worth, least }));
        const got = apportion(all, same);
        for (const [a, one] of same.entries())
          for (const [b, other] of same.entries())
            if (one.worth > other.worth) expect(got[a]).toBeGreaterThanOrEqual(got[b]!);
      }),
    );
  });

  test('keeps within the most', () => {
    fc.assert(
      fc.property(total, fc.array(fc.tuple(claim, fc.nat({ max: 6 })), { minLength: 1, maxLength: 6 }), (all, list) => {
        const limited = list.map(([one, most]) => ({ ...one, most }));
        const got = apportion(all, limited);
        for (const [at, { most }] of limited.entries()) expect(got[at]).toBeLessThanOrEqual(most);
        expect(sum(got)).toBe(Math.min(all, sum(limited.map(({ most }) => most))));
      }),
    );
  });
});

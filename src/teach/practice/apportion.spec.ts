import { expect, test } from 'vitest';
import { apportion } from './apportion.ts';

const of = (...worths: readonly number[]) => worths.map((worth) => ({ worth, least: 0 }));

// Webster's column of the five states that tell the five divisor methods apart: M. L. Balinski, H. P. Young, The Webster method of apportionment,
// Proc. Natl. Acad. Sci. USA 77 (1980), 1-4. Largest remainders would give [9, 7, 5, 4, 1].
test('gives the five states what Webster gives them', () => {
  expect(apportion(26, of(9061, 7179, 5259, 3319, 1182))).toEqual([9, 8, 5, 3, 1]);
});

test.each<[string, number, readonly number[], readonly number[]]>([
  ['in proportion where that is whole', 10, [0.5, 0.3, 0.2], [5, 3, 2]],
  ['alike where nothing is worth anything', 5, [0, 0], [3, 2]],
  ['nothing of nothing', 0, [1, 2], [0, 0]],
])('%s', (_, total, worths, expected) => {
  expect(apportion(total, of(...worths))).toEqual(expected);
});

test('refuses what is no whole number', () => {
  expect(() => apportion(-1, [])).toThrow(RangeError);
  expect(() => apportion(1.5, [])).toThrow(RangeError);
});

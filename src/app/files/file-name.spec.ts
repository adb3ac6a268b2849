import { expect, test } from 'vitest';
import { playbookFileName } from './file-name.ts';

const day = { getFullYear: () => 2026, getMonth: () => 2, getDate: () => 5 };

test.each([
  ['Tamarack Harriers', true, 'tamarack-harriers-2026-03-05.json'],
  ['Tamarack Harriers', false, 'tamarack-harriers-2026-03-05-numbers-only.json'],
  ['  St. Élan / U14 "A"  ', true, 'st-elan-u14-a-2026-03-05.json'],
  ['', true, 'playbook-2026-03-05.json'],
  ['../../etc', true, 'etc-2026-03-05.json'],
  ['山猫', true, '山猫-2026-03-05.json'],
  ['x'.repeat(80), true, `${'x'.repeat(60)}-2026-03-05.json`],
])('the file of %j, with names: %s', (team, names, expected) => {
  expect(playbookFileName(team, day, { names })).toBe(expected);
});

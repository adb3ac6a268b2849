import { expect, it } from 'vitest';
import { schemeList } from '../../engine/index.ts';
import { defenderWords } from './defender-words.ts';

it.each([
  [[5, 10], 'high right'],
  [[-5, 3], 'low left'],
  [[0, 5], 'middle'],
  [[0, 11], 'high middle'],
  [[6, 6], 'right'],
  [[0, 3], 'low middle'],
] as const)('who is at home at %o is called %s', (home, words) => {
  expect(defenderWords(home)).toBe(words);
});

it.each(schemeList)('no two men of $id are called alike, but for a man on a man', ({ home, names }) => {
  const words = names.map((_, i) => defenderWords([home[2 * i]!, home[2 * i + 1]!]));
  expect(new Set(words).size).toBeGreaterThanOrEqual(words.length - 1);
});

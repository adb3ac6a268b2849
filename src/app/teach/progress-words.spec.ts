import { expect, test } from 'vitest';
import { progressWords } from './progress-words.ts';

test.each([
  [0, 0, 'about 0 %'],
  [1, 3, 'about 33 %'],
  [7, 7, 'about 100 %'],
])('%i of %i is %s', (answered, planned, words) => {
  expect(progressWords({ kind: 'finding', answered, planned })).toBe(words);
});

test('there is no number where nothing is being found', () => {
  expect(progressWords({ kind: 'idle' })).toBeUndefined();
});

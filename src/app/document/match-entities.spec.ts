import { expect, test } from 'vitest';
import { matchEntities } from './match-entities.ts';

// Items are written "id" or "id!" for one of the same id that was edited.
const pool = new Map<string, { readonly id: string }>();
function item(word: string) {
  const known = pool.get(word) ?? { id: word.replace('!', '') };
  pool.set(word, known);
  return known;
}
const list = (words: string) => words.split(' ').filter(Boolean).map(item);

test.each<[string, string, string, readonly number[]]>([
  ['nothing changed', 'a b c', 'a b c', [0, 1, 2]],
  ['one was edited', 'a b c', 'a b! c', [0, 1, 2]],
  ['one was edited and moved', 'a b c', 'b! a c', [1, 0, 2]],
  ['one was added in front', 'a b', 'n a b', [-1, 0, 1]],
  ['one was removed', 'a b c', 'a c', [0, 2]],
  ['one got another id', 'a b c', 'a x c', [0, 1, 2]],
  ['one was removed and one added', 'a b', 'b n', [1, -1]],
  ['the same twice', 'a b', 'a a b', [0, -1, 1]],
  ['one of two of the same id was edited', 'a a!', 'a! a', [1, 0]],
  ['all were taken', 'a b', '', []],
  ['all are new', '', 'a b', [-1, -1]],
])('%s', (_, before, after, expected) => {
  expect(matchEntities(list(before), list(after), ({ id }) => id)).toEqual(expected);
});

import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { searchPlays } from './search-plays.ts';

const [lantern, quarry, ferry] = demoPlaybook.plays as [
  (typeof demoPlaybook.plays)[number],
  (typeof demoPlaybook.plays)[number],
  (typeof demoPlaybook.plays)[number],
];
const plays = [
  { ...lantern, tags: ['skips'] },
  { ...quarry, tags: ['pick', 'inside'] },
  { ...ferry, name: 'Élan ferry' },
];

describe('plays are found', () => {
  test.each([
    ['by the start of a name before the middle of one', 'lan', ['lantern', 'ferry']],
    ['without accents', 'elan', ['ferry']],
    ['by a word in the name', 'ferry', ['ferry']],
    ['by tag', 'skip', ['lantern']],
    ['by set', '2-2-2', ['quarry']],
    ['by another name of the set', 'circle', ['ferry']],
    ['by notes', 'short', ['ferry']],
    ['by all words of the query', 'pick quarry', ['quarry']],
    ['not by the middle of a note', 'horter', []],
    ['all for nothing', ' ', ['lantern', 'quarry', 'ferry']],
    ['none', 'zzz', []],
    ['a tag before a note', 'inside', ['quarry']],
    ['a name before a note', 'l', ['lantern', 'quarry', 'ferry']],
  ])('%s: %s', (_, query, ids) => {
    expect(searchPlays(plays, [], query).map(({ play }) => play.id)).toEqual(ids);
  });
});

import { describe, expect, it } from 'vitest';
import type { Chance } from '../../playbook/index.ts';
import { everything, filterChances, newestFirst, writtenIn } from './filter-chances.ts';

const chance = (id: string, more: Partial<Chance> = {}): Chance => ({ id, side: 'ours', result: 'goal', ...more });
const list: readonly Chance[] = [
  chance('a', { date: '2026-03-01', period: 1, clock: 100, opponent: 'copper-falls', call: 'lantern' }),
  chance('b', { date: '2026-03-01', period: 1, clock: 90, side: 'theirs', opponent: 'copper-falls' }),
  chance('c', { date: '2026-04-01', belief: { jump: 0.9 }, result: 'saved' }),
  chance('d'),
  chance('e', { date: '2026-03-01', period: 2, clock: 700, call: 'gone', scheme: 'jump' }),
];
const ids = (chances: readonly Chance[]) => chances.map(({ id }) => id).join('');

describe('which chances are looked at', () => {
  it.each([
    [{}, 'abcde'],
    [{ side: 'theirs' as const }, 'b'],
    [{ opponent: 'copper-falls' }, 'ab'],
    [{ opponent: 'copper-falls', side: 'ours' as const }, 'a'],
    // What was only expected is not what they played.
    [{ scheme: 'jump' }, 'e'],
    [{ call: 'gone' }, 'e'],
    [{ result: 'saved' }, 'c'],
    [{ call: 'nothing' }, ''],
  ])('%j: %s', (part, expected) => {
    expect(ids(filterChances(list, { ...everything, ...part }))).toBe(expected);
  });

  it('all of them are the same list, so that nothing is counted anew', () => {
    expect(filterChances(list, everything)).toBe(list);
  });

  it('without the man-ups of other teams, which have a choice of their own', () => {
    const filmed = [...list, chance('f', { side: 'others', opponent: 'copper-falls' })];
    expect(ids(filterChances(filmed, everything))).toBe('abcde');
    expect(ids(filterChances(filmed, { ...everything, opponent: 'copper-falls' }))).toBe('ab');
    expect(ids(filterChances(filmed, { ...everything, side: 'others' }))).toBe('f');
  });

  it('can be chosen by what was written, each once', () => {
    expect(writtenIn(list, 'scheme')).toEqual(['jump']);
    expect(writtenIn(list, 'call')).toEqual(['gone', 'lantern']);
  });

  it('stand newest first: the clock runs down, and those without a day come last', () => {
    expect(ids(newestFirst(list))).toBe('cebad');
    expect(ids(newestFirst([chance('x'), chance('y')]))).toBe('yx');
  });
});

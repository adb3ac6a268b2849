import { describe, expect, it } from 'vitest';
import { mixEntry, unreadEntryWords } from './mix-entry.ts';

describe('how often a scheme is expected', () => {
  it.each([
    [0, 0, ''],
    [2.5, 2.5, ''],
    [10, 10, ''],
    [11, 10, '0 to 10; 11 was read as 10.'],
    [-1, 0, '0 to 10; −1 was read as 0.'],
  ])('as %j is kept as %j and told: %j', (typed, kept, said) => {
    expect(mixEntry(typed)).toEqual({ kept, said });
  });

  it('stays as it is when no number was written, and that is told', () => {
    expect(unreadEntryWords(' abc ', 3)).toBe('0 to 10; “abc” is no number, so it stays at 3.');
    expect(unreadEntryWords(' ', 3)).toBe('0 to 10; nothing was written, so it stays at 3.');
  });
});

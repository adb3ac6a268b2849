import { describe, expect, it } from 'vitest';
import { cardWorthWords, effortWords, eitherOf, progressWords, taughtWords } from './reads-words.ts';

describe('the words of the place', () => {
  it('say what a card is worth, and when that may be nothing', () => {
    expect(cardWorthWords({ mean: 0.04, low: 0.02, high: 0.06 })).toBe(
      '+.04 (.02 to .06) goals a chance against leaving it to the play',
    );
    expect(cardWorthWords({ mean: 0.01, low: -0.02, high: 0.04 })).toMatch(/, no sure difference$/);
  });

  it('never say that a round is over while it is not', () => {
    expect(progressWords({ kind: 'finding', trials: 20, answered: 0, planned: 40 })).toMatch(/: 0 %$/);
    expect(progressWords({ kind: 'finding', trials: 20, answered: 40, planned: 40 })).toMatch(/: 99 %$/);
    expect(progressWords({ kind: 'stopped' })).toBeUndefined();
  });

  it('call the first answer rough', () => {
    expect(effortWords(20, true)).toMatch(/rough/);
    expect(effortWords(200, false)).not.toMatch(/rough/);
  });

  it.each([
    [[], ''],
    [['P'], 'P'],
    [['P', 'TR'], 'P or TR'],
    [['P', 'TR', 'X'], 'P, TR or X'],
  ])('list %j', (names, words) => {
    expect(eitherOf(names)).toBe(words);
  });

  it('count the reads that are taught, and not what is done otherwise', () => {
    const read = { cues: [{ kind: 'iAmFree' }] } as const;
    expect(taughtWords([read])).toBe('1 read');
    expect(taughtWords([read, read, { cues: [] }])).toBe('2 reads and what he does otherwise');
    expect(taughtWords([{ cues: [] }])).toBe('what he does in any case');
  });
});

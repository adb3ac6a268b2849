import { describe, expect, it } from 'vitest';
import type { Interval, Read } from '../engine/index.ts';
import { cardName, keptWords, readCardWords, wholeWords } from './read-card-words.ts';

const feed: Read = {
  carrier: 'TR',
  cues: [{ kind: 'left', who: 'C' }],
  then: { kind: 'pass', by: 'TR', to: 'C', style: 'feed' },
};

describe('the words of a card', () => {
  it('are a sentence for each read, and what is done otherwise', () => {
    expect(readCardWords({ reads: [feed], lastResort: null }, 'TR')).toEqual({
      reads: ["If C's man has left him, TR feeds C."],
      otherwise: 'Otherwise TR goes on with the play.',
    });
  });

  it('say the one thing to do when there is no read', () => {
    expect(readCardWords({ reads: [], lastResort: { kind: 'shot', by: 'TR' } }, 'TR')).toEqual({
      reads: [],
      otherwise: 'TR shoots.',
    });
  });
});

const around = (mean: number, half: number): Interval => ({ mean, low: mean - half, high: mean + half });

describe('a card in whole man-ups', () => {
  const text = (goals: number): string => goals.toFixed(2);
  it.each([
    [0.03, 0.01, 'the play makes 0.03 (0.02 to 0.04) more with this card than as it teaches now, 0.30.'],
    [
      -0.03,
      0.01,
      'the play makes 0.03 (0.02 to 0.04) less with this card than as it teaches now, 0.30: do not teach it as it stands.',
    ],
    [0.01, 0.02, 'this card makes no sure difference to the play as it teaches now: -0.01 to 0.03 beside 0.30.'],
  ])('is told as it is: %d', (mean, half, said) => {
    expect(wholeWords(around(0.3, 0.01), around(mean, half), text)).toContain(said);
  });
});

describe('a row of the table', () => {
  it.each([
    [0, 0, 'one thing in any case'],
    [1, 1, 'a card of 1 read'],
    [3, 3, 'a card of 3 reads'],
    [4, 3, 'a card of 4 reads is no better'],
  ])('for %i reads of which %i are used is "%s"', (reads, rules, name) => {
    expect(cardName(reads, rules)).toBe(name);
  });
});

describe('what a card keeps', () => {
  const gain = (mean: number, low: number): Interval => ({ mean, low, high: 2 * mean - low });

  it.each<[string, Interval, Interval, RegExp]>([
    ['a share of a sure gain', gain(0.1, 0.06), gain(0.09, 0.05), /^This card keeps 90 % of what/],
    ['all of it, and no more than all', gain(0.1, 0.06), gain(0.12, 0.05), /as well as the best/],
    ['nothing, and no less', gain(0.1, 0.06), gain(-0.02, -0.05), /keeps nothing/],
    ['no share of a gain that may be none', gain(0.02, -0.01), gain(0.02, 0), /little for him to decide/],
  ])('is %s', (_, best, card, words) => {
    expect(keptWords(best, card)).toMatch(words);
  });
});

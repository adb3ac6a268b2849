import { describe, expect, it } from 'vitest';
import type { ShownTrialChoice } from '../answers/answers-snapshot.ts';
import { shownSentence, shownShort } from './shown-words.ts';

const look: ShownTrialChoice = { kind: 'look', look: { kind: 'feed', from: 'X', to: 'C' }, among: 34, watched: 90 };
const last: ShownTrialChoice = { kind: 'throw', from: 'TL', to: 'TR', isLast: true, among: 12, watched: 90 };

describe('what the field shows', () => {
  it.each<[ShownTrialChoice, string]>([
    [look, 'The field shows one of the 34 in 90 trials in which the feed X to C opens.'],
    [last, 'The field shows one of the 12 in 90 trials that come to the last pass, TL to TR.'],
    [
      { ...last, isLast: false, among: 1 },
      'The field shows the one in 90 trials that comes as far as the pass TL to TR; none comes farther.',
    ],
    [
      { kind: 'first', watched: 90 },
      'The field shows the first of 90 trials: the play comes to none of its passes in any.',
    ],
  ])('is told in a sentence: %j', (shown, sentence) => {
    expect(shownSentence(shown)).toBe(sentence);
  });

  it('is told shortly beside its look, and with its name beside another', () => {
    expect(shownShort(look, { kind: 'feed', from: 'X', to: 'C' })).toBe('shown: one where it opens, as in 34 of 90');
    expect(shownShort(look, { kind: 'shot', from: 'TR', to: 'TR' })).toBe(
      'shown: one where the feed X to C opens, as in 34 of 90',
    );
  });
});

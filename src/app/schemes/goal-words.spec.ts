import { describe, expect, it } from 'vitest';
import { differenceText, goalsText, setAloneText, sureness } from './goal-words.ts';

describe('goals per chance', () => {
  it.each([
    [0.314, '.31'],
    [0, '.00'],
    [1.04, '1.04'],
    [0.999, '1.00'],
  ])('%d is written %s', (value, text) => {
    expect(goalsText(value)).toBe(text);
  });

  it('never go below none', () => {
    expect(sureness({ mean: 0.01, low: -0.01, high: 0.03 })).toBe('.00 to .03');
  });

  it.each([
    [0.04, 0.02, 0.06, '+.04 (.02 to .06)'],
    [-0.04, -0.06, -0.02, '−.04 (−.06 to −.02)'],
    [0.01, -0.02, 0.04, '+.01 (−.02 to +.04)'],
    [0, 0, 0, '.00 (.00 to .00)'],
    [-0.001, -0.02, 0.02, '.00 (−.02 to +.02)'],
  ])('a change of %d (%d to %d) is written %s', (mean, low, high, text) => {
    expect(differenceText({ mean, low, high })).toBe(text);
  });

  it.each([
    [0.03, 0.01, 0.05, 'the set alone .24; the play adds +.03 (.01 to .05)'],
    [-0.04, -0.06, -0.02, 'the set alone .31; the play costs .04 (.02 to .06)'],
    [0.01, -0.02, 0.04, 'the set alone .26; the play changes it by +.01 (−.02 to +.04), no sure difference'],
  ])('of a play at .27 that makes %d (%d to %d) more than its set are told as %s', (mean, low, high, text) => {
    expect(setAloneText({ mean: 0.27, low: 0.25, high: 0.29 }, { mean, low, high })).toBe(text);
  });
});

import { describe, expect, it } from 'vitest';
import type { Cue } from '../../engine/index.ts';
import { againstWords, inHundred, type ReasonedChoice, reasonWords, supportOf, taughtWords } from './reason-words.ts';

const pass = (mate: string, worth: number, right = false): ReasonedChoice => ({
  words: `Pass to ${mate}`,
  kind: 'pass',
  mate,
  worth,
  right,
});
const own = (words: string, kind: ReasonedChoice['kind'], worth: number, right = false): ReasonedChoice => ({
  words,
  kind,
  mate: undefined,
  worth,
  right,
});
const seen = (...cues: readonly Cue[]) => ({ carrier: 'X', cues });

describe('the reason of a choice', () => {
  it('begins with what shows it, then what it makes and what the next best makes', () => {
    const choices = [pass('C', 0.41, true), own('Shoot', 'shoot', 0.284), pass('P', 0.1)];
    expect(
      reasonWords(choices, seen({ kind: 'open', who: 'C' }, { kind: 'left', who: 'C' }, { kind: 'open', who: 'P' })),
    ).toBe("C's man has left him and C is open. Pass to C makes 41 goals in 100 tries; the next best, shoot, 28.");
  });

  it('names two that are as good as each other', () => {
    const choices = [own('Shoot', 'shoot', 0.35, true), pass('P', 0.34, true), pass('C', 0.2)];
    expect(reasonWords(choices, seen({ kind: 'iAmFree' }))).toBe(
      'X is free. Two are right: shoot or pass to P. Each makes about 35 goals in 100 tries; the next best, pass to C, 20.',
    );
  });

  it('says when nothing on the field shows it', () => {
    const go = own('Go on with the play', 'goOn', 0.3, true);
    expect(reasonWords([pass('C', 0.3, true)], seen())).toMatch(/^No single sign shows it/);
    expect(reasonWords([go], seen())).toMatch(/^Nobody is open yet, and X is not free to shoot\./);
    expect(reasonWords([go], seen({ kind: 'iAmFree' }))).toMatch(
      /^What is there now is worth less than what comes next\./,
    );
    expect(() => reasonWords([], seen())).toThrow(RangeError);
  });

  it('looks at two cues at most, and at those of the choice alone', () => {
    const cues: readonly Cue[] = [
      { kind: 'iAmPressed' },
      { kind: 'nextSteps' },
      { kind: 'open', who: 'P' },
      { kind: 'laneTaken', who: 'C' },
    ];
    expect(supportOf({ kind: 'pass', mate: 'P' }, seen(...cues)).map(({ kind }) => kind)).toEqual([
      'open',
      'nextSteps',
    ]);
    expect(supportOf({ kind: 'shoot', mate: undefined }, seen(...cues))).toEqual([]);
  });
});

describe('what speaks against a choice', () => {
  const best = pass('C', 0.4, true);
  it.each<[string, ReasonedChoice, readonly Cue[]]>([
    ['A defender stands in the lane to P.', pass('P', 0.3), [{ kind: 'laneTaken', who: 'P' }]],
    ['P is not open.', pass('P', 0.3), []],
    ['X is pressed.', own('Shoot', 'shoot', 0.3), [{ kind: 'iAmPressed' }]],
    ['X is not free to shoot.', own('Shoot', 'shoot', 0.3), []],
    ['C is open now.', own('Go on', 'goOn', 0.3), [{ kind: 'open', who: 'C' }]],
    ["C's man has left him.", own('Hold it', 'hold', 0.3), [{ kind: 'left', who: 'C' }]],
    ['10 fewer goals in 100 than pass to C.', pass('P', 0.3), [{ kind: 'open', who: 'P' }]],
  ])('%s', (words, choice, cues) => {
    expect(againstWords(choice, best, seen(...cues))).toBe(
      words.startsWith('10') ? words : `${words} 10 fewer goals in 100 than pass to C.`,
    );
  });

  it('never calls a man not free whose shot is the best', () => {
    const shoot = own('Shoot', 'shoot', 0.4, true);
    expect(againstWords(own('Step in', 'stepIn', 0.3), shoot, seen())).toBe('10 fewer goals in 100 than shoot.');
  });
});

describe('what is taught', () => {
  it('is told where it is right, where it is not, and where it is not asked', () => {
    const read = 'if C is open, X feeds C';
    expect(taughtWords(read, { kind: 'right' })).toBe('Your read here: if C is open, X feeds C. It is right here.');
    expect(taughtWords(read, { kind: 'behind', goals: 0.12 })).toContain(
      '12 fewer goals in 100: the field says otherwise',
    );
    expect(taughtWords(read, { kind: 'fake' })).toContain('no choice of this quiz');
  });

  it('counts goals in a hundred', () => {
    expect([0.414, 0, -0.001].map(inHundred)).toEqual([41, 0, 0]);
  });
});

import { describe, expect, it } from 'vitest';
import { bestFirst, nextToSharpen, type PlayWorth } from './worth-rounds.ts';

function worth(mean: number, half: number, more: Partial<PlayWorth> = {}): PlayWorth {
  return { goals: { mean, low: mean - half, high: mean + half }, coarse: false, ended: false, reason: '', ...more };
}

const plays = ['a', 'b', 'c'];

describe('the play to work on next', () => {
  it('is one without an answer before any that has one', () => {
    expect(nextToSharpen(plays, new Map(), 9)).toBe('a');
    expect(nextToSharpen(plays, new Map([['a', worth(0.3, 0.2)]]), 9)).toBe('b');
    expect(nextToSharpen(plays, new Map([['a', worth(0.3, 0.2, { coarse: true })]]), 9)).toBe('a');
  });

  it('is the one that is known least well, round after round', () => {
    const known = new Map([
      ['a', worth(0.3, 0.05)],
      ['b', worth(0.3, 0.2)],
      ['c', worth(0.3, 0.035)],
    ]);
    expect(nextToSharpen(plays, known, 9)).toBe('b');
    known.set('b', worth(0.3, 0.03));
    expect(nextToSharpen(plays, known, 9)).toBe('a');
    known.set('a', worth(0.3, 0.01));
    expect(nextToSharpen(plays, known, 9)).toBe('c');
    known.set('c', worth(0.3, 0.03));
    expect(nextToSharpen(plays, known, 9)).toBeUndefined();
  });

  it('is none that cannot be the best any more, when there are many', () => {
    const known = new Map([
      ['a', worth(0.1, 0.1)],
      ['b', worth(0.4, 0.02)],
      ['c', worth(0.3, 0.02)],
    ]);
    expect(nextToSharpen(plays, known, 2)).toBeUndefined();
    expect(nextToSharpen(plays, known, 3)).toBe('a');
  });

  it('is none that has ended, answer or not', () => {
    const none: PlayWorth = { goals: null, coarse: false, ended: true, reason: 'short of players' };
    expect(nextToSharpen(['a'], new Map([['a', none]]), 9)).toBeUndefined();
    expect(nextToSharpen(['a'], new Map([['a', worth(0.3, 0.2, { ended: true })]]), 9)).toBeUndefined();
    expect(nextToSharpen([], new Map(), 9)).toBeUndefined();
  });
});

it('the best play stands first, alike ones in their order, unknown ones last', () => {
  const known = new Map([
    ['b', worth(0.301, 0.1)],
    ['c', worth(0.304, 0.1)],
    ['d', worth(0.5, 0.1)],
  ]);
  expect(bestFirst(['a', 'b', 'c', 'd'], known)).toEqual(['d', 'b', 'c', 'a']);
});

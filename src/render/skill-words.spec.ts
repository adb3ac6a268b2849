import { describe, expect, it } from 'vitest';
import {
  alreadyBestWords,
  bestPracticeWords,
  gainOfPractice,
  type PracticeWorth,
  perHundred,
  practisingWords,
} from './skill-words.ts';

const men = ['TR', 'TL', 'WR', 'WL', 'C', 'X'].map((spot, at) => ({ spot, number: 10 + at }));

function worth(man: number | 'all', skill: PracticeWorth['skill'], low: number, high: number, grades = 1) {
  return { man, skill, grades, gain: { mean: (low + high) / 2, low, high } };
}

describe('goals in 100 man-ups', () => {
  it.each([
    [0.008, '.8'],
    [0.123, '12.3'],
    [-0.004, '−.4'],
    [0.0004, '0'],
    [-0.0004, '0'],
    [0.01, '1.0'],
  ])('of %s a chance are %s', (goals, text) => {
    expect(perHundred(goals)).toBe(text);
  });

  it('have a sign and an interval when they are a gain', () => {
    expect(gainOfPractice({ mean: 0.008, low: 0.003, high: 0.013 })).toBe('+.8 (.3 to 1.3)');
    expect(gainOfPractice({ mean: -0.008, low: -0.02, high: 0.004 })).toBe('−.8 (−2.0 to .4)');
    expect(gainOfPractice({ mean: 0, low: 0, high: 0 })).toBe('0 (no man-up differed)');
  });
});

describe('the best thing to practise', () => {
  it('is named with its worth when it is surely the best', () => {
    expect(bestPracticeWords([worth(3, 'shoot', 0.003, 0.013)], 'each', men)).toBe(
      'The best thing for one man to practise: shooting, 13 at WL. One grade better is worth .8 goals in 100 man-ups (.3 to 1.3).',
    );
    expect(bestPracticeWords([worth('all', 'shoot', 0.04, 0.06)], 'unit', men)).toBe(
      'The best thing for all six to practise: shooting. One grade better is worth 5.0 goals in 100 man-ups (4.0 to 6.0).',
    );
  });

  it('does not promise a whole grade to a man who has only part of one to gain', () => {
    expect(bestPracticeWords([worth(0, 'catch', 0.003, 0.013, 0.5)], 'each', men)).toContain(
      'As good at it as anybody of the level is worth .8 goals',
    );
  });

  it('is not named when it cannot be told', () => {
    const two = [worth(3, 'shoot', 0.003, 0.013), worth(4, 'catch', 0.001, 0.013)];
    expect(bestPracticeWords(two, 'each', men)).toBe(
      'No one thing is surely the best for one man to practise. These lead and cannot be told apart, in goals in 100 man-ups: ' +
        'shooting, 13 at WL, +.8 (.3 to 1.3); catching, 14 at C, +.7 (.1 to 1.3).',
    );
    expect(bestPracticeWords(null, 'unit', men)).toMatch(/^Known roughly so far/);
    expect(bestPracticeWords([], 'unit', men)).toBe(
      'Nothing that all six together could practise surely brings this play more goals.',
    );
  });
});

it('who practises has a number and a spot, and must be one of the six', () => {
  expect(practisingWords(5, men)).toBe('15 at X');
  expect(practisingWords('all', men)).toBe('all six');
  expect(() => practisingWords(6, men)).toThrow(RangeError);
});

it('who has nothing to gain is told, and in what', () => {
  const all = men.map((man) => ({ ...man, best: [] as PracticeWorth['skill'][] }));
  expect(alreadyBestWords(all)).toBe('');
  all[5] = { ...all[5]!, best: ['pass', 'feed', 'sense'] };
  all[0] = { ...all[0]!, best: ['shoot'] };
  expect(alreadyBestWords(all)).toMatch(/: 10 at TR in shooting; 15 at X in passing, feeding and game sense\.$/);
});

import { describe, expect, it } from 'vitest';
import { defaultSeed, type RawConditions, readConditions } from './conditions.ts';
import { Failure } from './failure.ts';

describe('readConditions', () => {
  it('has a default for everything', () => {
    expect(readConditions({})).toEqual({
      side: 'right',
      penalty: null,
      trials: null,
      seed: defaultSeed,
      level: null,
      threads: null,
    });
  });

  it('takes what is typed', () => {
    const typed = { side: 'left', penalty: '60', trials: '250', seed: '0', level: 'HIGHSCHOOL', threads: '2' };
    expect(readConditions(typed)).toEqual({
      side: 'left',
      penalty: 60,
      trials: 250,
      seed: 0,
      level: 'highSchool',
      threads: 2,
    });
  });

  const wrong: readonly (readonly [RawConditions, string])[] = [
    [{ trials: '0' }, 'invalid --trials: 0 (expected a whole number from 1 to 1000000).'],
    [{ trials: '1e3' }, 'invalid --trials: 1e3 (expected a whole number from 1 to 1000000).'],
    [{ trials: '' }, 'invalid --trials: (nothing) (expected a whole number from 1 to 1000000).'],
    [{ seed: '-1' }, 'invalid --seed: -1 (expected a whole number from 0 to 4294967295).'],
    [{ seed: '4294967296' }, 'invalid --seed: 4294967296 (expected a whole number from 0 to 4294967295).'],
    [{ penalty: '4' }, 'invalid --penalty: 4 (expected a whole number of seconds from 5 to 300).'],
    [{ side: 'up' }, 'invalid --side: up (expected left or right, as the offense sees it looking in).'],
    [{ level: 'varsity' }, 'invalid --level: varsity (expected 8U, 10U, 12U, 14U, highSchool, college, pro).'],
    [{ threads: '0' }, 'invalid --threads: 0 (expected a whole number from 1 to 256).'],
  ];
  it.each(wrong)('refuses %j', (raw, sentence) => {
    expect(() => readConditions(raw)).toThrow(new Failure(sentence, 2));
  });
});

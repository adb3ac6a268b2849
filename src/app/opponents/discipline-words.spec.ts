import { describe, expect, it } from 'vitest';
import { disciplineNames } from '../../engine/index.ts';
import { disciplineMeaning, disciplineTitles, usualDiscipline } from './discipline-words.ts';

describe('a grade of discipline', () => {
  it('is told in the figures that it is played by', () => {
    expect(disciplineMeaning('loose').figures).toBe(
      'Takes a new duty .35 s late on average; of two men, goes to the wrong one 18 times in 100; misses a change altogether 10 times in 100; leans to the ball 35 % of the way that one who watches nothing else would.',
    );
    expect(disciplineMeaning('sharp').figures).toContain('misses a change altogether 1 time in 100');
  });

  it('has a title and a sentence of its own', () => {
    expect(new Set(disciplineNames.map((name) => disciplineTitles[name])).size).toBe(disciplineNames.length);
    expect(new Set(disciplineNames.map((name) => disciplineMeaning(name).short)).size).toBe(disciplineNames.length);
  });

  it.each([
    ['highSchool', undefined, 'ordinary'],
    ['10U', undefined, 'loose'],
    ['10U', 'sharp', 'sharp'],
  ] as const)('of whom nothing is said, at %s with %s for all, is %s', (level, all, name) => {
    expect(usualDiscipline(level, all)).toBe(name);
  });
});

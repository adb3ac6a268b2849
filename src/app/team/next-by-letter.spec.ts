import { describe, expect, it } from 'vitest';
import { nextByLetter } from './next-by-letter.ts';

const options = ['–', '10U', '12U', '14U', 'High school'].map((text) => ({ value: text, text }));

describe('a letter in a list', () => {
  it.each([
    ['–', '1', '10U'],
    ['10U', '1', '12U'],
    ['14U', '1', '10U'],
    ['10U', 'h', 'High school'],
    ['High school', 'H', 'High school'],
    ['10U', 'x', undefined],
    ['10U', ' ', undefined],
    ['10U', 'Enter', undefined],
    ['not there', '1', '10U'],
  ])('from %s, %s goes to %s', (chosen, key, next) => expect(nextByLetter(options, chosen, key)).toBe(next));
});

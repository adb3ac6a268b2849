import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJson } from './read-json.ts';

/** Plain JSON values within the reader's caps and without the names that it refuses. */
const plainJson = fc
  .jsonValue({ maxDepth: 6 })
  .filter((value) => !JSON.stringify(value).match(/__proto__|constructor|prototype/));

/** What we refuse and JSON.parse reads: a lost name, a name that tricks, a number that it makes infinite. */
const stricter = new Set(['json-name-twice', 'json-forbidden-name', 'json-number']);

describe('readJson', () => {
  test('reads what JSON.parse reads, however it is laid out', () => {
    fc.assert(
      fc.property(plainJson, fc.constantFrom(undefined, 1, 2, '\t'), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        const reading = readJson(text);
        expect(reading.problems).toEqual([]);
        // JSON.parse keeps -0, which is the same place as 0 and is read as 0.
        expect(JSON.stringify(reading.value)).toBe(JSON.stringify(JSON.parse(text)));
      }),
    );
  });

  test('never throws, and calls right only what JSON.parse reads to the same value', () => {
    const fragment = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      '"a"',
      '"b": ',
      '1',
      '-',
      '.5',
      'true',
      'nul',
      ' ',
      '\n',
      '//',
      '\\',
      '\u201c',
      '#',
      'x',
      '1e999',
      '"\\u00e9"',
    );
    fc.assert(
      fc.property(fc.array(fragment, { maxLength: 14 }), (parts) => {
        const text = parts.join('');
        const { value, problems } = readJson(text);
        if (problems.length === 0) expect(value).toEqual(JSON.parse(text));
      }),
      { numRuns: 2000 },
    );
  });

  test('finds a problem in whatever JSON.parse refuses', () => {
    fc.assert(
      fc.property(plainJson, fc.nat(), fc.constantFrom('', ',', '}', '"', 'x', '\n'), (value, at, put) => {
        const whole = JSON.stringify(value);
        const cut = at % (whole.length + 1);
        const text = whole.slice(0, cut) + put + whole.slice(cut + 1);
        const { problems, value: ours } = readJson(text);
        const theirs = maybeParse(text);
        if (theirs === undefined) expect(problems.length).toBeGreaterThan(0);
        else if (problems.length === 0) expect(JSON.stringify(ours)).toBe(JSON.stringify(theirs.value));
        else expect(problems.filter((problem) => !stricter.has(problem.code))).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});

function maybeParse(text: string): { value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

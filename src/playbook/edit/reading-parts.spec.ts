import { describe, expect, test } from 'vitest';
import { type ReadingKind, readingParts } from './reading-parts.ts';
import { readCounts, readSpeeds, readTimes } from './roster-cells.ts';

describe('the readings of a cell', () => {
  test.each<[string, ReadingKind, readonly string[]]>([
    ['2,95', 'seconds', ['2.95']],
    ['2,9', 'seconds', ['2.9']],
    ['2,95 3,1', 'seconds', ['2.95', '3.1']],
    ['2,95; 3,1', 'seconds', ['2.95', '3.1']],
    ['2,95, 3,1', 'seconds', ['2.95', '3.1']],
    ['2,95/3,1', 'seconds', ['2.95', '3.1']],
    ['2.95,3.1', 'seconds', ['2.95', '3.1']],
    ['2.95, 3.1,', 'seconds', ['2.95', '3.1']],
    ['2,95s 3,1s', 'seconds', ['2.95s', '3.1s']],
    // Two times, or three: nobody can tell.
    ['2,95,3,1', 'seconds', ['2,95,3,1']],
    ['58,5', 'speed', ['58.5']],
    ['58,61', 'speed', ['58', '61']],
    ['58,61,60', 'speed', ['58', '61', '60']],
    ['58.5,61', 'speed', ['58.5', '61']],
    ['58mph,61mph', 'speed', ['58mph', '61mph']],
    ['31,3', 'count', ['31', '3']],
    ['31, 33 | 30', 'count', ['31', '33', '30']],
    ['', 'count', []],
  ])('%j as %s are %j', (text, kind, parts) => expect(readingParts(text, kind)).toEqual(parts));
});

describe('a cell of a pasted table', () => {
  test.each([
    ['2,95', [2.95]],
    ['2,95 3,05', [2.95, 3.05]],
    ['2,95 s', [2.95]],
    ['2.95,3.05', [2.95, 3.05]],
  ])('holds in %j the times %j', (text, value) => expect(readTimes(text)).toEqual({ kind: 'read', value }));

  test('whose times can be read in two ways is told, not guessed', () => {
    expect(readTimes('2,95,3,05')).toMatchObject({ kind: 'unread' });
  });

  test.each([
    ['95,5 km/h', 'mph', [59.34]],
    ['58,61', 'mph', [58, 61]],
    ['58/61', 'mph', [58, 61]],
  ])('holds in %j the speeds of a column in %s', (text, unit, value) =>
    expect(readSpeeds(text, unit)).toEqual({ kind: 'read', value }),
  );

  test('holds whole counts on both sides of a comma', () => {
    expect(readCounts('31,3')).toEqual({ kind: 'read', value: [31, 3] });
  });
});

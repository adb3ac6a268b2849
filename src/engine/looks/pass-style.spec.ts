import { describe, expect, test } from 'vitest';
import { sets } from '../offense/sets.ts';
import { passStyleOf } from './pass-style.ts';

const spots_bySet = (id: string) => sets[id]!.spots;

function styleIn(set: string, from: string, to: string): string {
  const spots = spots_bySet(set);
  const index = (id: string) => spots.findIndex((spot) => spot.id === id);
  return passStyleOf(
    spots.map((spot) => spot.at),
    index(from),
    index(to),
  );
}

// What each is called is common practice, no source.
describe('a pass is called what the trade calls it', () => {
  test.each([
    ['2-3-1', 'TR', 'TL', 'adjacent'],
    ['2-3-1', 'TR', 'WR', 'adjacent'],
    ['2-3-1', 'X', 'WL', 'adjacent'],
    ['2-3-1', 'TR', 'WL', 'skip'],
    ['2-3-1', 'X', 'TR', 'skip'],
    ['2-3-1', 'X', 'C', 'feed'],
    ['2-3-1', 'TL', 'C', 'feed'],
    ['2-3-1', 'C', 'TR', 'adjacent'],
    ['3-2-1', 'WR', 'WL', 'skip'],
    ['1-4-1', 'P', 'CR', 'feed'],
    ['4-2', 'BR', 'BL', 'adjacent'],
  ])('%s: %s to %s is %s', (set, from, to, style) => {
    expect(styleIn(set, from, to)).toBe(style);
  });

  test('men who are not there', () => {
    const places = spots_bySet('2-3-1').map((spot) => spot.at);
    expect(() => passStyleOf(places, 0, 6)).toThrow(RangeError);
    expect(() => passStyleOf(places.slice(1), 0, 1)).toThrow(RangeError);
  });
});

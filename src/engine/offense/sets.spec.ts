import { describe, expect, test } from 'vitest';
import { mirrorSpot } from './mirror.ts';
import { findSet, sets } from './sets.ts';

describe('sets', () => {
  test.each(Object.entries(sets))('%s is filed under its own id', (key, set) => {
    expect(set.id).toBe(key);
  });

  test.each(Object.values(sets))(
    '$id has six distinct spots at least 5 yd apart, in bounds and outside the crease',
    (set) => {
      expect(new Set(set.spots.map((spot) => spot.id)).size).toBe(6);
      for (const [i, a] of set.spots.entries()) {
        expect(Math.hypot(a.at.x, a.at.y)).toBeGreaterThan(3);
        expect(a.at.y).toBeGreaterThan(-15);
        expect(Math.abs(a.at.x)).toBeLessThan(20);
        for (const b of set.spots.slice(i + 1))
          expect(Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y)).toBeGreaterThanOrEqual(5);
      }
    },
  );

  test.each(Object.values(sets))('$id is its own mirror image, hands and jobs too', (set) => {
    expect(set.spots.map(mirrorSpot).sort(byId)).toEqual([...set.spots].sort(byId));
  });

  test.each(Object.values(sets))('$id has somebody for the end line and somebody to get back', (set) => {
    expect(set.spots.some((spot) => spot.safety === 'backUp')).toBe(true);
    expect(set.spots.filter((spot) => spot.safety === 'getBack').length).toBeGreaterThanOrEqual(2);
  });

  // The number of men on each line, top-down, as the name says. Lines: above 10 yd, 2.5 to 10 yd, below.
  test.each([
    ['2-3-1', [2, 3, 1]],
    ['1-3-2', [1, 3, 2]],
    ['1-4-1', [1, 4, 1]],
    ['2-2-2-low', [2, 2, 2]],
    ['2-2-2-behind', [2, 2, 2]],
    ['3-2-1', [3, 0, 3]],
  ])('%s counts its lines top-down', (id, lines) => {
    const ys = sets[id]!.spots.map((spot) => spot.at.y);
    expect([
      ys.filter((y) => y > 10).length,
      ys.filter((y) => y > 2.5 && y <= 10).length,
      ys.filter((y) => y <= 2.5).length,
    ]).toEqual(lines);
  });

  // Adjacent-pass lengths, yd: derived beside each set in common coaching descriptions; rounded to whole yards.
  test.each([
    ['3-3', 'P', 'TR', 9],
    ['3-3', 'TR', 'WR', 8],
    ['3-3', 'WL', 'WR', 16],
    ['3-3', 'TR', 'TL', 18],
    ['2-3-1', 'TR', 'TL', 14],
    ['2-3-1', 'TR', 'WR', 11],
    ['2-3-1', 'WR', 'X', 14],
    ['2-3-1', 'TR', 'WL', 21],
    ['1-4-1', 'P', 'WR', 14],
    ['1-4-1', 'WR', 'X', 18],
    ['1-4-1', 'CR', 'CL', 6],
    ['1-3-2', 'WR', 'BR', 13],
    ['1-3-2', 'BR', 'BL', 12],
    ['diamond', 'P', 'TR', 9],
    ['diamond', 'TR', 'WR', 11],
  ])('in %s from %s to %s is %i yd', (id, from, to, yards) => {
    const at = (spot: string) => sets[id]!.spots.find((each) => each.id === spot)!.at;
    expect(Math.round(Math.hypot(at(from).x - at(to).x, at(from).y - at(to).y))).toBe(yards);
  });
});

describe('findSet', () => {
  test.each([
    ['3-3', '3-3', undefined],
    ['3-1-2', '3-3', 'diamond'],
    ['1-3-2', '1-3-2', '2-3-1'],
    ['1-3-2 from behind', '2-3-1', undefined],
    [' 2-3-1  From Behind ', '1-3-2', undefined],
    ['2-3-1', '2-3-1', '1-3-2'],
    ['circle', '3-2-1', undefined],
    ['2-4', '2-2-2-low', undefined],
    ['Diamond top', 'diamond', undefined],
    ['horseshoe', '4-2', undefined],
  ])('%s is the %s', (name, id, otherwise) => {
    const found = findSet(name);
    expect(found.kind === 'found' && [found.set.id, found.otherwise?.id]).toEqual([id, otherwise]);
  });

  test('2-2-2 alone does not say which', () => {
    expect(findSet('2-2-2')).toMatchObject({ kind: 'ambiguous', sets: [{ id: '2-2-2-low' }, { id: '2-2-2-behind' }] });
  });

  test.each(['', '5-1', 'constructor', '__proto__'])('%j is unknown', (name) => {
    expect(findSet(name)).toEqual({ kind: 'unknown' });
  });

  test('no two sets share a name', () => {
    const names = Object.values(sets).flatMap((set) => [...new Set([set.id, set.name.toLowerCase(), ...set.aliases])]);
    expect(new Set(names).size).toBe(names.length);
  });
});

function byId(a: { id: string }, b: { id: string }): number {
  return a.id < b.id ? -1 : 1;
}

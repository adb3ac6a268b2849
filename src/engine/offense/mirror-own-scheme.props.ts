import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createDutySheet } from '../defense/duty-sheet.ts';
import { mirrorDefenderName } from '../defense/mirror-name.ts';
import { createOwnScheme, type OwnDuty, type OwnSchemeData } from '../defense/own-scheme.ts';
import { mirrorSpot, mirrorSpotId } from './mirror.ts';
import { mirrorOwnScheme } from './mirror-own-scheme.ts';
import { sets } from './sets.ts';

const men = ['tr', 'tl', 'lr', 'll', 'c'];
const place = fc.constantFrom(
  'P',
  'TR',
  'TL',
  'WR',
  'WL',
  'C',
  'X',
  'BR',
  'BL',
  'topRight',
  'wingLeft',
  'behind',
  'crease',
);
const yards = fc.integer({ min: -100, max: 100 }).map((eighths) => eighths / 8);
const at = fc.tuple(yards, yards);

const duty: fc.Arbitrary<OwnDuty> = fc.oneof(
  fc.constant({ duty: 'ball' } as const),
  fc.record({ duty: fc.constantFrom('man' as const, 'lock' as const, 'front' as const), who: place }),
  fc.record({ duty: fc.constant('split' as const), who: fc.tuple(place, place) }),
  fc.record({ duty: fc.constantFrom('lane' as const, 'pipe' as const), who: place, at }),
  fc.record({ duty: fc.constantFrom('lane' as const, 'pipe' as const), who: place }),
  fc.record({ duty: fc.constant('place' as const), at }),
);
const row = fc
  .tuple(duty, duty, duty, duty, duty)
  .map((all) => Object.fromEntries(men.map((man, i) => [man, all[i]!])));

const scheme: fc.Arbitrary<OwnSchemeData> = fc
  .record({
    id: fc.constant('own'),
    name: fc.constant('Own'),
    defenders: fc
      .tuple(at, at, at, at, at)
      .map((homes) => men.map((name, i) => ({ name, home: homes[i]!, stick: 'pole' as const }))),
    rows: fc.dictionary(place, row, { minKeys: 1, maxKeys: 6 }),
  })
  .map((data) => JSON.parse(JSON.stringify(data)) as OwnSchemeData);

describe('mirrorOwnScheme', () => {
  test('twice gives the scheme back, exactly', () => {
    fc.assert(
      fc.property(scheme, (data) => {
        expect(mirrorOwnScheme(mirrorOwnScheme(data))).toStrictEqual(data);
      }),
    );
  });

  test('leaves no home on its old side and keeps the order of the men', () => {
    fc.assert(
      fc.property(scheme, (data) => {
        const mirrored = mirrorOwnScheme(data);
        for (const [i, man] of data.defenders.entries()) {
          expect(mirrored.defenders[i]!.name).toBe(mirrorDefenderName(man.name));
          expect(mirrored.defenders[i]!.home[0] + man.home[0]).toBe(0);
          expect(mirrored.defenders[i]!.home[1]).toBe(man.home[1]);
        }
      }),
    );
  });
});

// A mirrored scheme against the mirrored set does what the scheme does against the set, man for man.
// The grid is one without ties, so that "nearest" means the same man on both sides.
test('a mirrored scheme plays the mirror image', () => {
  const data: OwnSchemeData = {
    id: 'own',
    name: 'Own',
    defenders: [
      { name: 'tr', home: [5, 10], stick: 'pole' },
      { name: 'tl', home: [-5, 10], stick: 'pole' },
      { name: 'lr', home: [5, 3], stick: 'pole' },
      { name: 'll', home: [-5, 3], stick: 'pole' },
      { name: 'c', home: [0, 5], stick: 'short' },
    ],
    rows: {
      TR: {
        tr: { duty: 'ball' },
        tl: { duty: 'man', who: 'TL' },
        lr: { duty: 'man', who: 'WR' },
        ll: { duty: 'split', who: ['WL', 'X'] },
        c: { duty: 'front', who: 'C' },
      },
      WL: {
        tr: { duty: 'split', who: ['TR', 'TL'] },
        tl: { duty: 'lane', who: 'TL' },
        lr: { duty: 'pipe', who: 'WR' },
        ll: { duty: 'ball' },
        c: { duty: 'front', who: 'C' },
      },
    },
  };
  const spots = sets['2-3-1']!.spots;
  const balls = ['TR', 'WL'];
  const plain = createDutySheet(createOwnScheme(data, spots).scheme!, spots, balls);
  const turned = spots.map(mirrorSpot);
  const other = createDutySheet(
    createOwnScheme(mirrorOwnScheme(data), turned).scheme!,
    turned,
    balls.map(mirrorSpotId),
  );
  for (const [i, row] of plain.rows.entries()) {
    const twin = other.rows[i]!;
    expect([...twin.board.kind]).toEqual([...row.board.kind]);
    expect([...twin.board.a]).toEqual([...row.board.a]);
    expect([...twin.board.b]).toEqual([...row.board.b]);
    for (const [man, at] of row.places.entries()) {
      expect(twin.places[man]!.x + at.x).toBeCloseTo(0, 9);
      expect(twin.places[man]!.y).toBeCloseTo(at.y, 9);
    }
  }
});

import { describe, expect, test } from 'vitest';
import { mirrorSpotId } from '../offense/mirror.ts';
import { sets } from '../offense/sets.ts';
import { createDutyBoard, duty } from './duty.ts';
import { createDutySheet } from './duty-sheet.ts';
import { createOwnScheme, type OwnDuty, type OwnSchemeData } from './own-scheme.ts';
import { createSchemeView, readOffense } from './view.ts';

/** A box zone as a coach would type it against a 3-3, right side and middle only (ours). */
const box: OwnSchemeData = {
  id: 'river-box',
  name: 'River box',
  defenders: [
    { name: 'tr', home: [5, 10], stick: 'pole' },
    { name: 'tl', home: [-5, 10], stick: 'pole' },
    { name: 'lr', home: [5, 3], stick: 'pole' },
    { name: 'll', home: [-5, 3], stick: 'pole' },
    { name: 'c', home: [0, 5], stick: 'short' },
  ],
  rows: {
    P: {
      tr: { duty: 'ball' },
      tl: { duty: 'man', who: 'TL' },
      lr: { duty: 'lane', who: 'WR' },
      ll: { duty: 'lane', who: 'WL' },
      c: { duty: 'front', who: 'crease' },
    },
    TR: {
      tr: { duty: 'ball' },
      tl: { duty: 'man', who: 'P' },
      lr: { duty: 'man', who: 'WR' },
      ll: { duty: 'split', who: ['WL', 'TL'] },
      c: { duty: 'front', who: 'C' },
    },
    wingRight: {
      tr: { duty: 'man', who: 'TR' },
      tl: { duty: 'place', at: [0, 8] },
      lr: { duty: 'ball' },
      ll: { duty: 'pipe', who: 'WL' },
      c: { duty: 'lock', who: 'C' },
    },
  },
};

const { spots } = sets['3-3'];

function sheet(data: OwnSchemeData, balls: readonly string[]) {
  const { scheme, problems } = createOwnScheme(data, spots);
  if (scheme === undefined) throw new Error(JSON.stringify(problems));
  return createDutySheet(scheme, spots, balls).rows;
}

describe('an own scheme', () => {
  test('has no problems when it is written well', () => {
    expect(createOwnScheme(box, spots).problems).toEqual([]);
  });

  test('is described as it was written', () => {
    const { scheme } = createOwnScheme(box, spots);
    expect(scheme).toMatchObject({
      id: 'river-box',
      defenders: 5,
      names: ['tr', 'tl', 'lr', 'll', 'c'],
      shortSticks: [4],
    });
    expect(scheme?.home).toEqual([5, 10, -5, 10, 5, 3, -5, 3, 0, 5]);
    expect(scheme?.notes.name).toBe('River box');
  });

  test.each([
    ['P', ['ball', 'TL', 'lane to WR', 'lane to WL', 'fronts C']],
    ['TR', ['ball', 'P', 'WR', 'splits WL + TL', 'fronts C']],
    ['WR', ['TR', 'holds (0, 8)', 'ball', 'pipe for WL', 'locks C']],
  ])('plays the row of the ball at %s', (ball, duties) => {
    expect(sheet(box, [ball])[0].duties).toEqual(duties);
  });

  test('plays the nearest row for a place that has none', () => {
    // The left top man at (-9, 12) is nearest the row of the point.
    expect(sheet(box, ['TL'])[0].duties[0]).toBe('ball');
    expect(sheet(box, ['TL'])[0].duties[2]).toBe('lane to WR');
  });

  test('calls by the name of a place whoever stands there now, and a locked man by who he was', () => {
    const { scheme } = createOwnScheme(box, spots);
    const view = createSchemeView(5);
    const board = createDutyBoard(5);
    const memory = new Int8Array(scheme!.memorySize);
    const look = (ball: number) => {
      view.ball = ball;
      readOffense(view);
      scheme!.assign(view, memory, board);
    };
    for (const [i, { at }] of spots.entries()) view.offense.set([at.x, at.y], 2 * i);
    const [point, topRight, wingRight, crease] = ['P', 'TR', 'WR', 'C'].map((id) =>
      spots.findIndex((spot) => spot.id === id),
    );
    look(wingRight);
    expect(board.a[4]).toBe(crease);
    // Point and top right change places, and crease and top right after them.
    const at = (man: number, x: number, y: number) => view.offense.set([x, y], 2 * man);
    at(point, 9, 12);
    at(topRight, 0, 14);
    look(wingRight);
    expect(board.a[0]).toBe(point);
    at(crease, 9, 12);
    at(point, 0, 6);
    look(wingRight);
    expect(board.a[0]).toBe(crease);
    expect([board.kind[4], board.a[4]]).toEqual([duty.lock, crease]);
  });

  test('mirrors exactly', () => {
    const { scheme } = createOwnScheme(box, spots);
    const balls = ['P', 'TR', 'WR', 'C', 'WL', 'TL'];
    const plain = createDutySheet(scheme!, spots, balls);
    const turned = createDutySheet(scheme!, spots, balls, { sense: -1 });
    for (const [i, row] of plain.rows.entries()) {
      expect([...turned.rows[i].board.a]).toEqual([...row.board.a]);
      expect(turned.rows[i].places.map(({ x, y }) => [0 - x, y])).toEqual(row.places.map(({ x, y }) => [x + 0, y]));
    }
  });

  test('knows its names for another set, and does without who is not there', () => {
    const { scheme, problems } = createOwnScheme(box, sets['2-3-1'].spots);
    expect(problems).toEqual([]);
    const [row] = createDutySheet(scheme!, sets['2-3-1'].spots, ['WR']).rows;
    expect(row.duties).toEqual(['TR', 'holds (0, 8)', 'ball', 'pipe for WL', 'locks C']);
  });
});

/** The box with one thing changed. */
function changed(place: string, defender: string, to: OwnDuty | undefined): OwnSchemeData {
  const { [defender]: _, ...others } = box.rows[place] ?? {};
  return { ...box, rows: { ...box.rows, [place]: to === undefined ? others : { ...others, [defender]: to } } };
}

describe('problems of an own scheme', () => {
  test.each([
    ['unknown-place', 'rows.P.tl.who', changed('P', 'tl', { duty: 'man', who: 'ZZ' })],
    ['unknown-place', 'rows.TR.ll.who.1', changed('TR', 'll', { duty: 'split', who: ['WL', 'Q'] })],
    ['unknown-place', 'rows.__proto__', JSON.parse(`{"__proto__":${JSON.stringify(box.rows.P)}}`)],
    ['missing-duty', 'rows.P.c', changed('P', 'c', undefined)],
    ['unknown-defender', 'rows.P.q', changed('P', 'q', { duty: 'ball' })],
    ['unknown-duty', 'rows.P.c', changed('P', 'c', { duty: 'nap' } as unknown as OwnDuty)],
    ['nobody-on-ball', 'rows.P', changed('P', 'tr', { duty: 'man', who: 'TR' })],
    ['invalid-point', 'rows.P.c', changed('P', 'c', { duty: 'place', at: [Number.NaN, 3] })],
    [
      'invalid-point',
      'defenders.0.home',
      { ...box, defenders: [{ ...box.defenders[0], home: [0, 1e9] }, ...box.defenders.slice(1)] },
    ],
    ['invalid-extends', 'extends', { ...box, extends: Number.POSITIVE_INFINITY }],
    [
      'repeated-defender',
      'defenders.1.name',
      { ...box, defenders: box.defenders.map((one, i) => (i === 1 ? box.defenders[0] : one)) },
    ],
    ['no-rows', 'rows', { ...box, rows: {} }],
    ['defender-count', 'defenders', { ...box, defenders: box.defenders.slice(0, 2) }],
    ['no-defenders', 'defenders', { ...box, defenders: [] }],
  ] as const)('%s at %s', (code, path, given) => {
    const data = 'rows' in given ? given : { ...box, rows: given };
    const { scheme, problems } = createOwnScheme(data as OwnSchemeData, spots);
    const found = problems.filter((problem) => problem.code === code && problem.path === path);
    expect(found, JSON.stringify(problems)).toHaveLength(1);
    expect(found[0].message).toMatch(/^[a-z].+/);
    // What is left is still played, with finite places and a man on the ball.
    if (scheme === undefined) return;
    for (const row of createDutySheet(scheme, spots, ['P', 'TR', 'WR']).rows) {
      expect(row.places.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
      expect([...row.board.kind]).toContain(duty.ball);
    }
  });

  test('names what was expected in place of an unknown one', () => {
    const { problems } = createOwnScheme(changed('P', 'tl', { duty: 'man', who: 'ZZ' }), spots);
    expect(problems[0].message).toBe('unknown place: ZZ (expected P, TR, TL, WR, WL, C, crease)');
  });

  test('a split with one man who does not exist becomes the other man', () => {
    expect(sheet(changed('TR', 'll', { duty: 'split', who: ['WL', 'Q'] }), ['TR'])[0].duties[3]).toBe('WL');
  });

  test('a scheme is only missing when there is nothing to play', () => {
    expect(createOwnScheme({ ...box, rows: {} }, spots).scheme).toBeUndefined();
    expect(createOwnScheme({ ...box, defenders: [] }, spots).scheme).toBeUndefined();
    expect(createOwnScheme(changed('P', 'c', undefined), spots).scheme).toBeDefined();
  });

  test('a mirrored grid is the mirror image of the scheme', () => {
    const mirrored: OwnSchemeData = {
      ...box,
      defenders: box.defenders.map((one) => ({ ...one, home: [-one.home[0], one.home[1]] })),
      rows: { TL: mirrorRow(box.rows.TR) },
    };
    const plain = sheet({ ...box, rows: { TR: box.rows.TR } }, ['TR'])[0];
    const other = sheet(mirrored, ['TL'])[0];
    expect(other.places.map(({ x, y }) => [0 - x, y])).toEqual(plain.places.map(({ x, y }) => [x + 0, y]));
  });
});

function mirrorRow(row: Readonly<Record<string, OwnDuty>>): Readonly<Record<string, OwnDuty>> {
  return Object.fromEntries(
    Object.entries(row).map(([defender, own]) => {
      if (own.duty === 'split')
        return [defender, { ...own, who: [mirrorSpotId(own.who[0]), mirrorSpotId(own.who[1])] }];
      if ('who' in own) return [defender, { ...own, who: mirrorSpotId(own.who) }];
      return [defender, own];
    }),
  );
}

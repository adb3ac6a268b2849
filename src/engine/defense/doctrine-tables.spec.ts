import { describe, expect, test } from 'vitest';
import { mirrorSpotId } from '../offense/mirror.ts';
import { sets } from '../offense/sets.ts';
import { duty, dutyNames } from './duty.ts';
import { createDutySheet, type DutyRow } from './duty-sheet.ts';
import type { Scheme } from './scheme.ts';
import { type SchemeId, schemes } from './schemes.ts';

/*
 * The tables from which man-down units are taught, row by row: the ball is passed along the rows in order.
 *
 * A cell in words: `ball` | `TR` (he has him, in whatever manner) | `TL+P` (splits the two) | `pipe WL`, `lane WR`, `front C`, `lock C`, `man C` |
 * `at 0,8` (holds that place within 1.5 yd) | `-` (the table is silent). `open` names those whom no duty names, where the table says so.
 *
 * Sources: S3 "Select Team Man-Down Defense: 55" (slideplayer.com/amp/2345932), S6 "Man-down defense against 2-1-3"
 * (coachesinsider.com/lacrosse/man-down-defense-against-2-1-3), S22 "Man Down Defense in Boys Lacrosse" (paperzz.com/doc/7108563),
 * S36 "Two Men Down vs. 1-3-2 Drill" (coachesinsider.com/lacrosse/two-men-down-vs-1-3-2-drill-article). Where the source is
 * "trade" it is common practice, no source; where it is "derived" the rows follow from the roles that the source gives.
 */
interface Table {
  readonly scheme: SchemeId;
  readonly set: string;
  readonly source: string;
  readonly star?: string;
  readonly rows: readonly Row[];
}

interface Row {
  readonly ball: string;
  readonly duties: Readonly<Record<string, string>>;
  readonly open?: string;
}

const tables: readonly Table[] = [
  {
    scheme: 'box-zone',
    set: '3-3',
    source: 'trade',
    rows: [
      { ball: 'TR', duties: { tr: 'ball', tl: 'P', lr: 'WR', ll: 'pipe WL', c: 'C' }, open: 'TL' },
      { ball: 'P', duties: { tr: 'ball', tl: 'TL', lr: 'lane WR', ll: 'lane WL', c: 'front C' }, open: 'TR' },
      { ball: 'TL', duties: { tl: 'ball', tr: 'P', ll: 'WL', lr: 'pipe WR', c: 'C' }, open: 'TR' },
      { ball: 'WL', duties: { ll: 'ball', tl: 'TL', tr: 'at 0,8', lr: 'pipe WR', c: 'front C' }, open: 'TR' },
      { ball: 'C', duties: { c: 'ball', tr: '-', tl: '-', lr: '-', ll: '-' } },
    ],
  },
  {
    scheme: 'box-zone',
    set: '3-3',
    source: 'trade',
    rows: [{ ball: 'WR', duties: { lr: 'ball', tr: 'TR', tl: 'at 0,8', ll: 'pipe WL', c: 'front C' }, open: 'TL' }],
  },
  {
    scheme: 'box-zone',
    set: '2-3-1',
    source: 'trade',
    rows: [
      { ball: 'TR', duties: { tr: 'ball', tl: 'TL', lr: 'WR', ll: 'pipe WL', c: 'C' }, open: 'X' },
      { ball: 'X', duties: { lr: 'pipe WR', ll: 'pipe WL', tr: 'at 3,7.5', tl: 'at -3,7.5', c: 'C' } },
    ],
  },
  {
    scheme: 'four-man-rotation',
    set: '3-3',
    source: 'derived from the roles of S22',
    rows: [
      { ball: 'WL', duties: { ll: 'ball', tl: 'TL', lr: 'pipe WR', tr: 'P+TR', c: 'lock C' } },
      { ball: 'TL', duties: { tl: 'ball', ll: 'WL', tr: 'P', lr: 'TR+WR', c: 'lock C' } },
      { ball: 'P', duties: { tr: 'ball', tl: 'TL', lr: 'TR', ll: 'WR+WL', c: 'lock C' } },
      { ball: 'TR', duties: { lr: 'ball', tr: 'P', ll: 'WR', tl: 'WL+TL', c: 'lock C' } },
      { ball: 'WR', duties: { ll: 'ball', lr: 'TR', tl: 'pipe WL', tr: 'TL+P', c: 'lock C' } },
      { ball: 'TR', duties: { lr: 'ball', ll: 'WR', tr: 'P', tl: 'TL+WL', c: 'lock C' } },
    ],
  },
  {
    scheme: 'four-man-rotation',
    set: '2-3-1',
    source: 'derived from the roles of S22',
    rows: [
      { ball: 'TL', duties: { tl: 'ball', tr: 'TR', ll: 'WL', lr: 'WR+X', c: 'lock C' } },
      { ball: 'TR', duties: { tr: 'ball', tl: 'TL', lr: 'WR', ll: 'WL+X', c: 'lock C' } },
      { ball: 'WR', duties: { lr: 'ball', tr: 'TR', ll: 'pipe X', tl: 'TL+WL', c: 'lock C' } },
      { ball: 'X', duties: { ll: 'ball', lr: 'WR', tl: 'WL', tr: 'TL+TR', c: 'lock C' } },
      { ball: 'WL', duties: { tl: 'ball', ll: 'pipe X', tr: 'TL', lr: 'TR+WR', c: 'lock C' } },
      { ball: 'TL', duties: { tr: 'ball', tl: 'WL', lr: 'TR', ll: 'X+WR', c: 'lock C' } },
    ],
  },
  {
    scheme: 'four-man-rotation',
    set: '3-3',
    source: 'derived from the roles of S22: on a skip the splitter takes the receiver, the others refill in ring order',
    rows: [
      { ball: 'TL', duties: { tl: 'ball', ll: 'WL', tr: 'P', lr: 'TR+WR', c: 'lock C' } },
      { ball: 'P', duties: { tr: 'ball', tl: 'TL', lr: 'TR', ll: 'WR+WL', c: 'lock C' } },
      { ball: 'WR', duties: { ll: 'ball', lr: 'TR', tl: 'pipe WL', tr: 'TL+P', c: 'lock C' } },
      { ball: 'TL', duties: { tr: 'ball', tl: 'WL', lr: 'P', ll: 'TR+WR', c: 'lock C' } },
    ],
  },
  {
    scheme: 'box-string',
    set: '1-3-2',
    source: 'S6',
    rows: [
      { ball: 'BR', duties: { lr: 'ball', ll: 'pipe BL', tr: 'WR', tl: 'P+WL', c: 'C' } },
      { ball: 'WR', duties: { tr: 'ball', c: 'P', ll: 'man C', lr: 'lane C', tl: '-' }, open: 'BR BL' },
      { ball: 'P', duties: { c: 'ball', tr: 'lane WR', tl: 'lane WL', ll: 'C', lr: 'C' }, open: 'BR BL' },
    ],
  },
  {
    scheme: 'box-string',
    set: '3-3',
    source: 'trade',
    rows: [
      { ball: 'TR', duties: { tr: 'ball', c: 'C', tl: 'lane P', lr: 'WR', ll: 'TL+WL' } },
      { ball: 'P', duties: { c: 'ball', tr: 'lane WR', tl: 'lane WL', ll: 'C', lr: 'lane WR' } },
      { ball: 'TR', duties: { tr: 'ball', c: 'C', tl: 'lane P', lr: 'WR', ll: 'TL+WL' } },
      { ball: 'WR', duties: { lr: 'ball', c: 'C', tr: 'TR', tl: 'P+TL', ll: 'pipe WL' } },
    ],
  },
  {
    scheme: 'box-string',
    set: '2-3-1',
    source: 'trade: with two tops there is no odd man, the string stays home',
    rows: [
      { ball: 'TL', duties: { tl: 'ball', tr: 'TR', ll: 'WL', lr: '-', c: 'C' }, open: 'X' },
      { ball: 'TR', duties: { tr: 'ball', tl: 'TL', lr: 'WR', ll: '-', c: 'C' }, open: 'X' },
    ],
  },
  {
    scheme: 'five-man-rotation',
    set: '3-3',
    source: 'row P is S3; trade, extended from its rules',
    rows: [
      { ball: 'P', duties: { pt: 'ball', tr: 'lane WR', tl: 'lane WL', lr: 'C', ll: 'pipe WL' } },
      { ball: 'TR', duties: { tr: 'ball', pt: 'P', lr: 'WR', ll: 'C', tl: 'TL+WL' } },
      { ball: 'WR', duties: { lr: 'ball', tr: 'TR', ll: 'front C', tl: 'pipe WL', pt: 'P+TL' } },
      { ball: 'TR', duties: { tr: 'ball', pt: 'P', lr: 'WR', ll: 'C', tl: 'TL+WL' } },
      // The skip: he who split jumps; ll holds his side and hands the crease to lr.
      { ball: 'WL', duties: { tl: 'ball', pt: 'TL', ll: 'pipe C', lr: 'man C', tr: 'P+TR' }, open: 'WR' },
    ],
  },
  {
    scheme: 'five-man-rotation',
    set: '2-3-1',
    source: 'trade; the fifth man, pt, is the low one on the crease where nobody is at the point',
    rows: [
      { ball: 'TR', duties: { tr: 'ball', tl: 'TL', lr: 'WR', pt: 'C', ll: 'X+WL' } },
      { ball: 'WR', duties: { lr: 'ball', tr: 'TR', pt: 'pipe X', ll: 'C', tl: 'TL+WL' } },
      { ball: 'X', duties: { pt: 'ball', lr: 'WR', ll: 'WL', tr: 'front C', tl: 'TL+TR' } },
    ],
  },
  {
    scheme: 'diamond-and-one',
    set: '1-4-1',
    source: 'trade',
    rows: [
      { ball: 'WR', duties: { wr: 'ball', pt: 'P', low: 'CR', c: 'CL', wl: 'pipe WL' }, open: 'X' },
      { ball: 'P', duties: { pt: 'ball', wr: 'lane WR', wl: 'lane WL', low: 'CR', c: 'CL' }, open: 'X' },
      { ball: 'X', duties: { low: 'ball', wr: 'at 5,5', wl: 'at -5,5', pt: 'pipe CL', c: 'front CR' } },
    ],
  },
  {
    scheme: 'diamond-and-one',
    set: '3-3',
    source: 'trade',
    rows: [
      { ball: 'P', duties: { pt: 'ball', wr: 'lane WR', wl: 'lane WL', low: 'at 0,2', c: 'C' } },
      { ball: 'TR', duties: { wr: 'ball', pt: 'P', low: 'WR', wl: 'TL+WL', c: 'C' } },
    ],
  },
  {
    scheme: 'house-3-2',
    set: '3-3',
    source: 'trade',
    rows: [
      { ball: 'P', duties: { pt: 'ball', sr: 'lane WR', sl: 'lane WL', lr: 'C', ll: 'pipe WL' } },
      { ball: 'TR', duties: { sr: 'ball', pt: 'P', lr: 'WR+C', ll: 'pipe C', sl: 'at -3,7' } },
      { ball: 'WR', duties: { lr: 'ball', sr: 'at 5,8', ll: 'WL+C', pt: 'front C', sl: 'at 0,9' } },
    ],
  },
  {
    scheme: 'house-3-2',
    set: '2-3-1',
    source: 'trade',
    rows: [{ ball: 'X', duties: { lr: 'pipe WR', ll: 'pipe WL', sr: 'at 5,5', sl: 'at -5,5', pt: 'front C' } }],
  },
  {
    scheme: 'shutoff',
    set: '3-3',
    star: 'TR',
    source: 'trade',
    rows: [
      { ball: 'P', duties: { lock: 'lock TR', top: 'ball', ll: 'TL+WL', lr: 'WR', c: 'C' } },
      { ball: 'TL', duties: { lock: 'lock TR', top: 'ball', ll: 'WL', lr: 'pipe WR', c: 'C' } },
      { ball: 'WL', duties: { lock: 'lock TR', ll: 'ball', top: 'TL', lr: 'pipe WR', c: 'C' }, open: 'P' },
      { ball: 'WR', duties: { lock: 'lock TR', lr: 'ball', top: 'P', ll: 'pipe WL', c: 'C' }, open: 'TL' },
    ],
  },
  {
    scheme: 'two-down',
    set: '3-3',
    source: 'S36',
    rows: [
      { ball: 'TR', duties: { tr: 'ball', tl: 'P', lr: 'WR', ll: 'C' }, open: 'TL WL' },
      { ball: 'WR', duties: { lr: 'ball', tr: 'lane P', ll: 'pipe C', tl: 'C' } },
    ],
  },
  {
    scheme: 'two-down',
    set: '1-4-1',
    source: 'S36',
    rows: [{ ball: 'WR', duties: { tr: 'ball', tl: 'lane CR', lr: 'lane CL', ll: 'CR+CL' }, open: 'P WL X' }],
  },
  {
    scheme: 'three-down',
    set: '3-3',
    source: 'trade',
    rows: [
      { ball: 'TR', duties: { top: 'ball', lr: 'C', ll: 'pipe WL' } },
      { ball: 'WR', duties: { lr: 'ball', top: 'C', ll: 'pipe WL' } },
    ],
  },
  {
    scheme: 'jump',
    set: '3-3',
    source:
      'trade: a long pass is jumped, the way back shut off, the far men home; across the middle everyone to the hole',
    rows: [
      { ball: 'P', duties: { tr: 'ball', tl: 'man TL', lr: 'man TR', ll: 'WR+WL', c: 'lock C' } },
      { ball: 'WR', duties: { ll: 'ball', lr: 'lock TR', tl: 'lane WL', tr: 'pipe TL', c: 'lock C' } },
      { ball: 'WL', duties: { tl: 'ball', ll: 'WR+C', tr: 'TL+C', lr: 'TR+P', c: 'lock C' } },
    ],
  },
];

describe.each(tables)('$scheme against $set ($source)', ({ scheme, set, star, rows }) => {
  const balls = rows.map((row) => row.ball);
  const { spots } = sets[set]!;
  const options = star === undefined ? {} : { star };

  test('gives the duties of the table', () => {
    const sheet = createDutySheet(schemes[scheme], spots, balls, options);
    for (const [i, row] of rows.entries()) checkRow(schemes[scheme], spotNames(set), row, sheet.rows[i]!);
  });

  test('gives the same duties when the whole chance is mirrored', () => {
    const plain = createDutySheet(schemes[scheme], spots, balls, options);
    const turned = createDutySheet(schemes[scheme], spots, balls, { ...options, sense: -1 });
    for (const [i, row] of plain.rows.entries()) {
      const other = turned.rows[i]!;
      expect([...other.board.kind]).toEqual([...row.board.kind]);
      expect([...other.board.a]).toEqual([...row.board.a]);
      expect([...other.board.b]).toEqual([...row.board.b]);
      expect(other.places.map(({ x, y }) => [0 - x, y])).toEqual(row.places.map(({ x, y }) => [x + 0, y]));
    }
  });
});

// At the point and behind, a tie at the very start goes to the right: only tables that start on a side have a mirror image.
describe.each(tables.filter(({ rows }) => startsSided(rows)))(
  '$scheme against $set ($source)',
  ({ scheme, set, star, rows }) => {
    const balls = rows.map((row) => row.ball);
    const { spots } = sets[set]!;

    test('gives the mirrored duties for the mirrored ball', () => {
      const mirrored = createDutySheet(
        schemes[scheme],
        spots,
        balls.map(mirrorSpotId),
        star === undefined ? {} : { star: mirrorSpotId(star) },
      );
      for (const [i, row] of rows.entries()) {
        checkRow(schemes[scheme], spotNames(set), mirrorRow(row), mirrored.rows[i]!);
      }
    });
  },
);

function startsSided(rows: readonly Row[]): boolean {
  return /[RL]/.test(rows[0]!.ball);
}

function spotNames(set: string): readonly string[] {
  return sets[set]!.spots.map((spot) => spot.id);
}

function checkRow(scheme: Scheme, names: readonly string[], row: Row, given: DutyRow): void {
  const at = `${scheme.id}, ball ${row.ball}`;
  expect(Object.keys(row.duties).sort(), at).toEqual([...scheme.names].sort());
  for (const [defender, cell] of Object.entries(row.duties)) {
    const i = scheme.names.indexOf(defender);
    expect(
      holds(cell, given, i, names, row.ball),
      `${at}: ${defender} should be "${cell}", is "${given.duties[i]}"`,
    ).toBe(true);
  }
  if (row.open !== undefined) expect([...given.open].sort(), at).toEqual(row.open.split(' ').sort());
}

function holds(cell: string, given: DutyRow, i: number, names: readonly string[], ball: string): boolean {
  const kind = given.board.kind[i]!;
  const a = names[given.board.a[i]!];
  const b = names[given.board.b[i]!];
  if (cell === '-') return true;
  if (cell === 'ball') return kind === duty.ball && a === ball;
  if (cell.startsWith('at ')) {
    const [x, y] = cell.slice(3).split(',').map(Number);
    return kind === duty.place && Math.hypot(given.places[i]!.x - x!, given.places[i]!.y - y!) < 1.5;
  }
  if (cell.includes('+'))
    return kind === duty.split && `${a}+${b}`.split('+').sort().join() === cell.split('+').sort().join();
  const [word, who] = cell.includes(' ') ? cell.split(' ') : ['', cell];
  if (word !== '') return dutyNames[kind] === word && a === who;
  return a === who && kind !== duty.place && kind !== duty.ball && kind !== duty.split;
}

function mirrorRow(row: Row): Row {
  return {
    ball: mirrorSpotId(row.ball),
    duties: Object.fromEntries(
      Object.entries(row.duties).map(([defender, cell]) => [mirrorDefender(defender), mirrorCell(cell)]),
    ),
    ...(row.open === undefined ? {} : { open: row.open.split(' ').map(mirrorSpotId).join(' ') }),
  };
}

/** tr to tl, lr to ll, wr to wl, sr to sl; the others have no side. */
function mirrorDefender(name: string): string {
  if (!/^[tlws][rl]$/.test(name)) return name;
  return name[0] + (name[1] === 'r' ? 'l' : 'r');
}

function mirrorCell(cell: string): string {
  if (cell.startsWith('at ')) {
    const [x, y] = cell.slice(3).split(',').map(Number);
    return `at ${-x!},${y}`;
  }
  if (cell === '-' || cell === 'ball') return cell;
  if (cell.includes('+')) return cell.split('+').map(mirrorSpotId).join('+');
  return cell.includes(' ') ? `${cell.split(' ')[0]} ${mirrorSpotId(cell.split(' ')[1]!)}` : mirrorSpotId(cell);
}

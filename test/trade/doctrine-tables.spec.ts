import { describe, expect, test } from 'vitest';
import {
  type DoctrineRow,
  type DoctrineTable,
  firstFault,
  readDoctrineTables,
} from '../../scripts/validation/doctrine-tables.ts';
import {
  createDutySheet,
  type DutySheet,
  mirrorDefenderName,
  mirrorSpotId,
  type SheetOptions,
  schemes,
  sets,
} from '../../src/engine/index.ts';

// Each table cites its source in data/doctrine-tables.json, where the words of a duty are explained too.
const tables = readDoctrineTables();

describe.each(tables)('$id ($source)', (table) => {
  test('gives the duties of the table', () => {
    expect(faultsOf(table, sheetOf(table))).toEqual([]);
  });

  test('gives the same duties when the whole chance is mirrored', () => {
    const plain = sheetOf(table);
    const turned = sheetOf(table, { sense: -1 });
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
describe.each(tables.filter(({ rows }) => /[RL]/.test(rows[0]!.ball)))('$id ($source)', (table) => {
  test('gives the mirrored duties for the mirrored ball', () => {
    const mirrored = mirrorTable(table);
    expect(faultsOf(mirrored, sheetOf(mirrored))).toEqual([]);
  });
});

describe('a table that is not kept', () => {
  const table = tables.find(({ id }) => id === 'box-zone-3-3')!;
  const [row] = table.rows;
  const faultWith = (changed: Partial<DoctrineRow>): readonly string[] =>
    faultsOf({ ...table, rows: [{ ...row!, ...changed }] }, sheetOf(table));

  // Row TR of the box zone: tr ball, tl P, lr WR, ll pipe WL, c C, open TL.
  test.each([
    ['another man', { tl: 'TL' }, 'tl is "P" (the table: "TL")'],
    ['another manner', { ll: 'lane WL' }, 'll is "pipe for WL" (the table: "lane WL")'],
    ['a split', { tl: 'P+TL' }, '(the table: "P+TL")'],
    ['a place', { tl: 'at 0,8' }, '(the table: "at 0,8")'],
    ['the ball', { lr: 'ball' }, '(the table: "ball")'],
    ['a defender whom the scheme does not have', { pt: 'P' }, 'the table names c ll lr pt tl tr'],
  ])('is found by %s', (_, duties, fault) => {
    const [found, ...others] = faultWith({ duties: { ...row!.duties, ...duties } });
    expect(found).toContain(fault);
    expect(others).toEqual([]);
  });

  test('is found by who is open', () => {
    expect(faultWith({ open: 'WL' })).toEqual(['ball TR: open are TL (the table: WL)']);
  });
});

test('every table has an id of its own', () => {
  expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length);
});

function sheetOf({ scheme, set, star, rows }: DoctrineTable, options: Partial<SheetOptions> = {}): DutySheet {
  return createDutySheet(
    schemes[scheme],
    sets[set]!.spots,
    rows.map((row) => row.ball),
    star === undefined ? options : { ...options, star },
  );
}

function faultsOf({ scheme, set, rows }: DoctrineTable, sheet: DutySheet): readonly string[] {
  const names = sets[set]!.spots.map((spot) => spot.id);
  return rows.flatMap((row, index) => firstFault(schemes[scheme], names, row, sheet.rows[index]!) ?? []);
}

function mirrorTable(table: DoctrineTable): DoctrineTable {
  const { star, rows, ...rest } = table;
  return { ...rest, ...(star !== undefined && { star: mirrorSpotId(star) }), rows: rows.map(mirrorRow) };
}

function mirrorRow({ ball, duties, open }: DoctrineRow): DoctrineRow {
  return {
    ball: mirrorSpotId(ball),
    duties: Object.fromEntries(
      Object.entries(duties).map(([defender, cell]) => [mirrorDefenderName(defender), mirrorCell(cell)]),
    ),
    ...(open !== undefined && { open: open.split(' ').map(mirrorSpotId).join(' ') }),
  };
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

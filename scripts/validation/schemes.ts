import { createDutySheet, type DutyRow, duty, dutyNames, schemes, sets } from '../../src/engine/index.ts';
import { factRow, type Group, type Row } from './row.ts';
import { type RingTable, ringTables } from './scheme-tables.ts';

export function schemesGroup(): Group {
  return {
    id: 'schemes',
    title: 'Schemes',
    about:
      'The ring tables of the four-man rotation, the string, the five-man rotation and two down, walked through with standing men: rows in which every defender has the duty of the table. The first duty that differs is named.',
    rows: ringTables.map(tableRow),
  };
}

function tableRow(table: RingTable): Row {
  const { scheme, set, source, columns, rows } = table;
  const { spots } = sets[set]!;
  const names = spots.map((spot) => spot.id);
  const sheet = createDutySheet(
    schemes[scheme],
    spots,
    rows.map((row) => row[0]!),
  );
  const faults = rows.map((row, index) => {
    const wrong = columns.find(
      (defender, column) =>
        !holds(row[column + 1]!, sheet.rows[index]!, schemes[scheme].names.indexOf(defender), names),
    );
    if (wrong === undefined) return undefined;
    return `ball ${row[0]}: ${wrong} is "${sheet.rows[index]!.duties[schemes[scheme].names.indexOf(wrong)]}"`;
  });
  const right = faults.filter((fault) => fault === undefined).length;
  const first = faults.find((fault) => fault !== undefined);
  return factRow(
    { id: `ring-${scheme}-${set}`, what: `${scheme} against ${set}`, source },
    `${rows.length} rows`,
    `${right} rows${first === undefined ? '' : `; ${first}`}`,
    right === rows.length,
  );
}

function holds(cell: string, { board, ball }: DutyRow, defender: number, names: readonly string[]): boolean {
  if (cell === '-') return true;
  const kind = board.kind[defender]!;
  const a = names[board.a[defender]!];
  const b = names[board.b[defender]!];
  const [word, first, second] = cell.split(' ');
  switch (word) {
    case 'ball':
      return kind === duty.ball && a === ball;
    case 'split':
      return kind === duty.split && [a, b].sort().join() === [first, second].sort().join();
    case 'lane':
      return kind === duty.lane && a === first;
    case 'crease':
      return a === first && ['man', 'lock', 'pipe', 'front'].includes(dutyNames[kind]!);
    default:
      return a === first && kind !== duty.place && kind !== duty.ball && kind !== duty.split;
  }
}

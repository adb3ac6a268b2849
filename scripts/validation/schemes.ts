import { createDutySheet, schemes, sets } from '../../src/engine/index.ts';
import { type DoctrineTable, firstFault, readDoctrineTables } from './doctrine-tables.ts';
import { factRow, type Group, type Row } from './row.ts';

export function schemesGroup(): Group {
  return {
    id: 'schemes',
    title: 'Schemes',
    about:
      'The ring tables of the four-man rotation, the string, the five-man rotation and two down, walked through with standing men: rows in which every defender has the duty of the table. The first duty that differs is named.',
    // Common practice without a page that says it is held by tests alone.
    rows: readDoctrineTables()
      .filter(({ origin }) => origin !== 'trade')
      .map(tableRow),
  };
}

function tableRow({ id, scheme, set, source, about, rows }: DoctrineTable): Row {
  const { spots } = sets[set]!;
  const names = spots.map((spot) => spot.id);
  const sheet = createDutySheet(
    schemes[scheme],
    spots,
    rows.map((row) => row.ball),
  );
  const faults = rows.map((row, index) => firstFault(schemes[scheme], names, row, sheet.rows[index]!));
  const right = faults.filter((fault) => fault === undefined).length;
  const first = faults.find((fault) => fault !== undefined);
  return factRow(
    { id: `ring-${id}`, what: `${scheme} against ${set}${about === undefined ? '' : `, ${about}`}`, source },
    `${rows.length} rows`,
    `${right} rows${first === undefined ? '' : `; ${first}`}`,
    right === rows.length,
  );
}

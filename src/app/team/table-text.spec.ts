import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Player, readRosterTable } from '../../playbook/index.ts';
import { decodeTable, readPastedCells, readTableText, rosterCsv } from './table-text.ts';

describe('the cells of a table', () => {
  it.each([
    [
      'parted by tabs',
      '7\tArden, Noel\t58; 61\r\n9\tLou\t',
      [
        ['7', 'Arden, Noel', '58; 61'],
        ['9', 'Lou', ''],
      ],
    ],
    [
      'parted by commas',
      'No,Name\n7,"Arden, Noel"\n',
      [
        ['No', 'Name'],
        ['7', 'Arden, Noel'],
      ],
    ],
    [
      'parted by semicolons',
      'No;Name\n7;Noel',
      [
        ['No', 'Name'],
        ['7', 'Noel'],
      ],
    ],
    [
      'after a byte order mark',
      '\uFEFFNo,Name\n7,Noel',
      [
        ['No', 'Name'],
        ['7', 'Noel'],
      ],
    ],
    ['with a line break in quotes', '7\t"two\nlines"', [['7', 'two\nlines']]],
    [
      'without empty lines',
      '7,Noel\n\n , \n9,Lou\n',
      [
        ['7', 'Noel'],
        ['9', 'Lou'],
      ],
    ],
    ['of nothing', '', []],
  ] as const)('%s', (_, text, cells) => expect(readTableText(text)).toEqual(cells));
});

describe('a roster as a CSV file', () => {
  it('comes back as it was', () => {
    const { roster } = demoPlaybook.team;
    const reading = readRosterTable(readTableText(rosterCsv(roster)));
    expect(reading.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(reading.players.map(({ number, name, grades, measured }) => ({ number, name, grades, measured }))).toEqual(
      roster.map(({ number, name, grades, measured }) => ({ number, name, grades, measured })),
    );
  });

  it('runs nothing in a spreadsheet: a name like a formula is written as text', () => {
    const man: Player = { number: 7, name: '=1+1', hand: 'left' };
    expect(rosterCsv([man])).toContain("'=1+1");
  });
});

describe('the text of a file', () => {
  const name = 'Jos\u00e9';
  it.each([
    ['UTF-8', [0x4a, 0x6f, 0x73, 0xc3, 0xa9]],
    ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, 0x4a, 0x6f, 0x73, 0xc3, 0xa9]],
    ['UTF-16, small end first', [0xff, 0xfe, 0x4a, 0, 0x6f, 0, 0x73, 0, 0xe9, 0]],
    ['UTF-16, large end first', [0xfe, 0xff, 0, 0x4a, 0, 0x6f, 0, 0x73, 0, 0xe9]],
    ['old Windows letters', [0x4a, 0x6f, 0x73, 0xe9]],
  ])('is read from %s', (_, bytes) => expect(decodeTable(new Uint8Array(bytes))).toBe(name));
});

describe('cells from the clipboard', () => {
  it('keep their rows, the empty ones too, and no row is made of the last line break', () => {
    expect(readPastedCells('58,61\n\n60\r\n')).toEqual([['58,61'], [''], ['60']]);
  });
});

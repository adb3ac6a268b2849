import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { readRosterTable } from './roster-table.ts';
import { writeRosterTable } from './write-roster-table.ts';

/** Cells of one row, parted by bars. */
const cells = (text: string) => text.split('|').map((cell) => cell.trim());
const table = (...rows: string[]) => readRosterTable(rows.map(cells));
/** One player by one column beside number, name and hand. */
const one = (header: string, cell: string) => table(`No|Name|Hand|${header}`, `7|Noel Arden|R|${cell}`);
const only = (header: string, cell: string) => one(header, cell).players[0]!;

describe('headers', () => {
  test.each([
    '#|Player|Hand',
    'No.|Name|L/R',
    'Number|Full Name|Dominant hand',
    'JERSEY #|player name|Strong Hand',
    'jersey_number|name|handedness',
  ])('%s', (header) => {
    const { players, problems, hasHeader } = table(header, '7|Noel Arden|L');
    expect(hasHeader).toBe(true);
    expect(problems).toEqual([]);
    expect(players).toEqual([{ number: 7, name: 'Noel Arden', hand: 'left' }]);
  });

  test.each([
    ['first and last name', 'First|#|Last Name|Hand', 'Noel|7|Arden|left', 'Noel Arden'],
    ['last name first', '#|Name|Hand', '7|Arden, Noel|left', 'Noel Arden'],
  ])('%s', (_, header, row, name) => {
    expect(table(header, row).players[0]).toEqual({ number: 7, name, hand: 'left' });
  });

  test('a column that is not known is told and left out', () => {
    expect(one('Shoe size', '9')).toMatchObject({
      players: [{ number: 7 }],
      problems: [{ severity: 'note', row: 0, column: 3, message: expect.stringMatching(/"Shoe size" is no column/) }],
    });
  });
});

describe('without a header columns go by what stands in them', () => {
  test.each([
    ['12|Noel Arden|L', '4|Odell Marsh|R'],
    ['Noel Arden|12|left', 'Odell Marsh|4|right'],
    ['L|Noel|Arden|12', 'R|Odell|Marsh|4'],
  ])('%s', (...rows) => {
    const { players, hasHeader } = table(...rows);
    expect(hasHeader).toBe(false);
    expect(players).toEqual([
      { number: 12, name: 'Noel Arden', hand: 'left' },
      { number: 4, name: 'Odell Marsh', hand: 'right' },
    ]);
  });
});

describe('cells', () => {
  test.each([
    ['Hand', 'both', { hand: 'both' }],
    ['Hand', 'Lefty', { hand: 'left' }],
    ['Hand', 'R/L', { hand: 'both' }],
    ['Stick', 'long pole', { crosse: 'pole' }],
    ['Pos', 'LSM', { role: 'lsm', crosse: 'pole' }],
    ['Position', 'Goalie', { role: 'goalkeeper', crosse: 'goalkeeper' }],
    ['Position', 'Middie', { role: 'midfield' }],
    ['Position', 'A/M', { role: 'attack' }],
    ['Level', 'U12', { level: '12U' }],
    ['Level', 'Varsity', { level: 'highSchool' }],
    ['Injured', 'x', { absent: true }],
    ['Available', 'no', { absent: true }],
    ['Shooting', '4', { grades: { shoot: 4 } }],
    ['Speed', '3,5', { grades: { speed: 3.5 } }],
    ['IQ', '4/5', { grades: { sense: 4 } }],
    ['Off-hand', 'B', { grades: { offHand: 4 } }],
    ['Shot (mph)', '58; 61 60', { measured: { shotSpeedMph: [58, 61, 60] } }],
    // 1 mi = 1.609344 km, 1 yd = .9144 m, exactly.
    ['Shot speed', '96.56 km/h', { measured: { shotSpeedMph: [60] } }],
    ['Passing speed km/h', '80.47', { measured: { passSpeedMph: [50] } }],
    ['Pass speed (m/s)', '20', { measured: { passSpeedMph: [44.74] } }],
    ['20 yd (s)', '3.1, 3.0 s', { measured: { sprint20ydSeconds: [3.1, 3] } }],
    ['Sprint', '3,05', { measured: { sprint20ydSeconds: [3.05] } }],
    ['Wall ball in 30 s', '31 33', { measured: { wallBallIn30s: [31, 33] } }],
    ['On goal', '34 of 50', { measured: { onGoal: { hits: 34, shots: 50 } } }],
    ['Height', '178', { measured: { heightCm: 178 } }],
    ['Height', '1.78 m', { measured: { heightCm: 178 } }],
    ['Ht', '5\'10"', { measured: { heightCm: 177.8 } }],
    ['Height', '5-10', { measured: { heightCm: 177.8 } }],
    ['Height', '5 ft 10 in', { measured: { heightCm: 177.8 } }],
    ['Height (in)', '70', { measured: { heightCm: 177.8 } }],
    ['Height', '70', { measured: { heightCm: 177.8 } }],
    ['Notes', '=HYPERLINK("x")', { notes: '=HYPERLINK("x")' }],
  ])('%s: %s', (header, cell, part) => {
    // A second column of hands would say the same as the first.
    const player = header === 'Hand' ? table('No|Name|Hand', `7|Noel Arden|${cell}`).players[0]! : only(header, cell);
    expect(player).toEqual({ number: 7, name: 'Noel Arden', hand: 'right', ...part });
  });

  test.each([
    ['Speed', '8', /from 1 \(weakest\) to 5/],
    ['Speed', 'fast', /no grade/],
    ['Shot (mph)', 'hard', /no speeds/],
    ['Height', '5.10', /write 178 cm/],
    ['Height (ft)', '5.10', /write 178 cm/],
    ['Height', '7 m', /no height of a man/],
    ['On goal', '68%', /how many of how many/],
    ['On goal', '51/50', /more on goal than shots/],
    ['Position', 'referee', /none of attack/],
    ['Shot speed', '-5', /no speeds/],
  ])('%s: %s is told, and the rest of the row taken', (header, cell, words) => {
    const { players, problems } = one(header, cell);
    expect(players).toEqual([{ number: 7, name: 'Noel Arden', hand: 'right' }]);
    expect(problems).toEqual([{ severity: 'error', row: 1, column: 3, message: expect.stringMatching(words) }]);
  });
});

describe('rows', () => {
  test.each([
    ['no number', '|Noel|L', /Noel has no number/],
    ['no name', '7||L', /Number 7 has no name/],
    ['a number twice', '4|Odell|R', /Rex wears 4 already/],
    ['a name without end', `8|${'x'.repeat(81)}|L`, /at most 80 letters/],
  ])('%s: left out and told', (_, row, words) => {
    const { players, problems } = table('#|Name|Hand', '4|Rex|R', row, '', '9|Ike|L');
    expect(players.map((player) => player.number)).toEqual([4, 9]);
    expect(problems).toEqual([{ severity: 'error', row: 2, message: expect.stringMatching(words) }]);
  });

  test('without a hand right is taken, and told', () => {
    expect(table('#|Name', '4|Rex')).toMatchObject({
      players: [{ hand: 'right' }],
      problems: [{ severity: 'warning', row: 1, message: expect.stringMatching(/right was taken/) }],
    });
  });

  test.each([[[]], [[[]]], [[['', ' ']]]])('an empty table: %j', (rows: string[][]) => {
    expect(readRosterTable(rows)).toMatchObject({ players: [], problems: [{ severity: 'error' }] });
  });
});

test('the roster of the demo goes out as a table and comes back', () => {
  const { roster } = demoPlaybook.team;
  const { players, problems } = readRosterTable(writeRosterTable(roster));
  expect(players).toEqual(roster);
  expect(problems).toEqual([]);
});

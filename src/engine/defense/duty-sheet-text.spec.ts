import { expect, test } from 'vitest';
import { sets } from '../offense/sets.ts';
import { createDutySheet } from './duty-sheet.ts';
import { dutySheetText, lapOf } from './duty-sheet-text.ts';
import { schemes } from './schemes.ts';

test.each([
  ['3-3', 'WL TL P TR WR C'],
  ['2-3-1', 'WL TL TR WR X C'],
  ['1-4-1', 'WL P WR X CL CR'],
  ['4-2', 'BL WL TL TR WR BR'],
])('a lap of %s is %s', (id, lap) => {
  expect(lapOf(sets[id].spots).join(' ')).toBe(lap);
});

test('a sheet has a line per place of the ball, columns lined up, and says who is open', () => {
  const lines = dutySheetText(schemes['box-zone'], sets['2-3-1'], ['TR', 'X']).split('\n');
  expect(lines).toEqual(
    [
      '2-3-1',
      'ball  tr                         tl                          lr           ll           c         open',
      'TR    ball                       TL                          WR           pipe for WL  fronts C  X',
      'X     holds (3, 7.5), watches TR  holds (-3, 7.5), watches TL  pipe for WR  pipe for WL  C         -',
    ].map((line, i) =>
      i === 0 ? line : expect.stringMatching(new RegExp(line.replace(/[()]/g, '.').replace(/ +/g, ' +'))),
    ),
  );
});

test('a ball at an unknown spot is refused by name', () => {
  expect(() => createDutySheet(schemes['box-zone'], sets['3-3'].spots, ['Q'])).toThrow(
    new RangeError('unknown spot: Q (expected P, TR, TL, WR, WL, C)'),
  );
});

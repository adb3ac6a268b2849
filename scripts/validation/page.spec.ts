import { describe, expect, it } from 'vitest';
import { causeFaults, validationPage } from './page.ts';
import { type Group, nearRow, printedRow, rangeRow } from './row.ts';

const label = (id: string) => ({ id, what: `what ${id} is`, source: 'a | b' });
const groups: readonly Group[] = [
  {
    id: 'one',
    title: 'Group one',
    about: 'About it.',
    rows: [printedRow(label('good'), 0.4913, 0.49134, 4), nearRow(label('bad'), 1, 2, 0.5, 2)],
  },
];

describe('a row', () => {
  it.each([
    // Theirs printed with two digits: half a unit of the last one on either side.
    [0.5, 0.505, true],
    [0.5, 0.495, true],
    [0.5, 0.506, false],
    [0.5, Number.NaN, false],
  ])('printed %s is held by %s: %s', (theirs, ours, pass) => {
    expect(printedRow(label('x'), theirs, ours, 2).pass).toBe(pass);
  });

  it.each([
    [0.1, true],
    [0.18, true],
    [0.181, false],
    [Number.NaN, false],
  ])('of the range .1 to .18 takes %s: %s', (ours, pass) => {
    expect(rangeRow(label('x'), '', ours, 0.1, 0.18).pass).toBe(pass);
    expect(rangeRow(label('x'), '', { mean: ours, low: 0, high: 1 }, 0.1, 0.18).pass).toBe(pass);
  });
});

describe('causeFaults', () => {
  it('names red rows without a cause, and causes without a red row', () => {
    expect(causeFaults(groups, { bad: 'because' })).toEqual([]);
    expect(causeFaults(groups, { good: 'no longer' })).toEqual([
      'red without a cause: bad',
      'cause without a red row: good',
    ]);
  });
});

describe('validationPage', () => {
  const page = validationPage(groups, { bad: 'it is too slow' }, 'How.');

  it('shows the cause beside the red row and on top', () => {
    expect(page.match(/it is too slow/g)).toHaveLength(2);
    expect(page).toContain('1 of 2 rows are green');
  });

  it('keeps a pipe inside its cell', () => {
    const row = page.split('\n').find((line) => line.includes('what bad is') && line.startsWith('| '))!;
    expect(row).toContain('a \\| b');
    expect(row.replaceAll('\\|', '').split('|')).toHaveLength(9);
  });

  it('shows figures before the rows of their group, and nothing where there are none', () => {
    const figures = { head: ['man', 'gain'], lines: [['a | b', '.03']] };
    const withFigures = validationPage([{ ...groups[0]!, figures }], { bad: 'why' }, 'How.');
    expect(withFigures.indexOf('| a \\| b | .03 |')).toBeGreaterThan(withFigures.indexOf('About it.'));
    expect(withFigures.indexOf('| a \\| b | .03 |')).toBeLessThan(withFigures.indexOf('| row | source |'));
    expect(page).not.toContain('| man |');
  });
});

import { describe, expect, it } from 'vitest';
import { formatTable, tableWidth } from './table.ts';

const columns = [
  { title: 'scheme', align: 'left', flexible: true },
  { title: 'goals', align: 'right' },
] as const;

describe('formatTable', () => {
  it('lines up columns under their titles', () => {
    expect(
      formatTable(columns, [
        ['box', '.33'],
        ['a longer one', '.2'],
      ]),
    ).toBe(['scheme        goals', '-------------------', 'box             .33', 'a longer one     .2'].join('\n'));
  });

  it('wraps the text column when the table is too wide', () => {
    const long = 'word '.repeat(40).trim();
    const lines = formatTable(columns, [[long, '1']]).split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(tableWidth);
    expect(lines.join(' ').match(/word/g)).toHaveLength(40);
  });

  it('refuses columns that cannot fit', () => {
    const wide = [{ title: 'x'.repeat(90), align: 'left' }] as const;
    expect(() => formatTable(wide, [])).toThrow(RangeError);
  });
});

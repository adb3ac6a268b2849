import { describe, expect, it } from 'vitest';
import { type GridKey, gridStep } from './grid-step.ts';

const size = { rows: 4, columns: 5 };
const plain: GridKey = { key: '', shift: false, command: false, caretAtStart: true, caretAtEnd: true };

// From, key, and where it leads with the typing of the row begun in column 1; - for nowhere.
const steps: readonly (readonly [string, string, Partial<GridKey>, string])[] = [
  ['1,3', 'Enter', {}, '2,1'],
  ['1,3', 'Enter', { shift: true }, '0,3'],
  ['1,3', 'Enter', { command: true }, '-'],
  ['3,3', 'Enter', {}, '-'],
  ['1,3', 'ArrowDown', {}, '2,3'],
  ['1,3', 'ArrowUp', {}, '0,3'],
  ['0,3', 'ArrowUp', {}, '-'],
  ['1,3', 'ArrowDown', { command: true }, '3,3'],
  ['1,3', 'ArrowUp', { command: true }, '0,3'],
  ['1,3', 'ArrowLeft', {}, '1,2'],
  ['1,3', 'ArrowLeft', { caretAtStart: false }, '-'],
  ['1,3', 'ArrowLeft', { shift: true }, '-'],
  ['1,0', 'ArrowLeft', {}, '-'],
  ['1,3', 'ArrowRight', {}, '1,4'],
  ['1,3', 'ArrowRight', { caretAtEnd: false }, '-'],
  ['1,4', 'ArrowRight', {}, '-'],
  ['1,3', 'Home', {}, '-'],
  ['1,3', 'Home', { command: true }, '0,0'],
  ['1,3', 'End', { command: true }, '3,4'],
  ['1,3', 'a', {}, '-'],
];

describe('a key in the roster', () => {
  it.each(steps)('at %s: %s %o leads to %s', (at, key, held, expected) => {
    const [row, column] = at.split(',').map(Number) as [number, number];
    const to = gridStep({ row, column }, { ...plain, ...held, key }, 1, size);
    expect(to === undefined ? '-' : `${to.row},${to.column}`).toBe(expected);
  });
});

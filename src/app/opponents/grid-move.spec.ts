import { expect, it } from 'vitest';
import { gridMove } from './grid-move.ts';

const size = { rows: 3, columns: 5 };

it.each([
  ['ArrowUp', 1, 2, [0, 2]],
  ['ArrowUp', 0, 2, undefined],
  ['ArrowDown', 2, 2, undefined],
  ['ArrowDown', 1, 2, [2, 2]],
  ['ArrowLeft', 1, 0, undefined],
  ['ArrowLeft', 1, 1, [1, 0]],
  ['ArrowRight', 1, 4, undefined],
  ['ArrowRight', 1, 3, [1, 4]],
  ['Home', 1, 3, [1, 0]],
  ['End', 1, 3, [1, 4]],
  ['PageUp', 2, 3, [0, 3]],
  ['PageDown', 0, 3, [2, 3]],
  ['Enter', 1, 1, undefined],
  ['m', 1, 1, undefined],
] as const)('%s leads from %d, %d to %o', (key, row, column, to) => {
  expect(gridMove({ row, column }, key, size)).toEqual(to === undefined ? undefined : { row: to[0], column: to[1] });
});

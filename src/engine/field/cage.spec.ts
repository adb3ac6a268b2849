import { expect, it } from 'vitest';
import { crossesCage } from './cage.ts';

it.each([
  ['from X straight to the point', 0, -5, 0, 13, true],
  ['from behind the pipe across the net', 3, -1, -3, -1, true],
  ['from X to a low wing', 0, -5, 8, 4, false],
  ['across the crease in front of the goal', -8, 1, 8, 1, false],
  ['round the back of the net', 4, -3, -4, -3, false],
  ['beside the pipe', 2, -4, 2, 6, false],
  ['nearly through the pipe', 0.5, -6, 0.9, 6, true],
] as const)('%s', (_, fromX, fromY, toX, toY, crosses) => {
  expect(crossesCage(fromX, fromY, toX, toY)).toBe(crosses);
  expect(crossesCage(toX, toY, fromX, fromY)).toBe(crosses);
  expect(crossesCage(-fromX, fromY, -toX, toY)).toBe(crosses);
});

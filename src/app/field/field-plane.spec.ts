import { describe, expect, it } from 'vitest';
import { unitView } from '../../render/index.ts';
import { pixelsPerYard, placeAt, type ScreenBox } from './field-plane.ts';

const exact: ScreenBox = { left: 10, top: 20, width: unitView.width * 10, height: unitView.height * 10 };

describe('a place under a pixel', () => {
  it.each([
    ['the corner', exact, 10, 20, unitView.left, unitView.top],
    ['the middle of the goal line', exact, 10 + 165, 20 + 95, 0, 0],
    ['the same in a box that is wider', { ...exact, width: exact.width + 100 }, 10 + 50 + 165, 20 + 95, 0, 0],
    ['the same in a box that is higher', { ...exact, height: exact.height + 60 }, 10 + 165, 20 + 30 + 95, 0, 0],
  ] as const)('%s', (_, box, clientX, clientY, x, y) => {
    const at = placeAt(clientX, clientY, box, unitView);
    expect(at.x).toBeCloseTo(x, 9);
    expect(at.y).toBeCloseTo(y, 9);
  });

  it('counts the pixels of a yard by the side that is short of room', () => {
    expect(pixelsPerYard({ ...exact, width: exact.width / 2 }, unitView)).toBe(5);
    expect(pixelsPerYard({ ...exact, height: exact.height / 4 }, unitView)).toBe(2.5);
  });
});

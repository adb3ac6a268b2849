import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeCard, shared } from './place-card.ts';

const screen = { width: 1280, height: 800 };
const card = { width: 320, height: 180 };

describe('the card of the first minute', () => {
  test.each([
    ['right of a thing at the left edge', { left: 0, top: 100, width: 600, height: 500 }, { left: 612, top: 100 }],
    ['left of a thing at the right edge', { left: 900, top: 100, width: 380, height: 500 }, { left: 568, top: 100 }],
    ['below a bar at the top', { left: 0, top: 0, width: 1280, height: 60 }, { left: 480, top: 72 }],
    ['above a bar at the bottom', { left: 0, top: 740, width: 1280, height: 60 }, { left: 480, top: 548 }],
    [
      'in the emptier corner beside a thing that fills the screen',
      { left: 0, top: 0, width: 1280, height: 700 },
      { left: 952, top: 612 },
    ],
    ['at the bottom right when the thing is not there', undefined, { left: 952, top: 612 }],
  ])('stands %s', (_, anchor, expected) => {
    expect(placeCard(anchor, card, screen)).toEqual(expected);
  });

  test('stays on every screen that it fits on, and hides nothing of what it points at where that can be', () => {
    const length = (min: number, max: number) => fc.integer({ min, max });
    const box = fc.record({
      left: length(-500, 2000),
      top: length(-500, 2000),
      width: length(1, 2000),
      height: length(1, 2000),
    });
    fc.assert(
      fc.property(box, length(336, 2000), length(196, 1200), (anchor, width, height) => {
        const place = placeCard(anchor, card, { width, height });
        expect(place.left).toBeGreaterThanOrEqual(8);
        expect(place.top).toBeGreaterThanOrEqual(8);
        expect(place.left + card.width).toBeLessThanOrEqual(width - 8);
        expect(place.top + card.height).toBeLessThanOrEqual(height - 8);
        const isBesideFree = anchor.left - card.width - 12 >= 8 && anchor.left <= width;
        if (isBesideFree) expect(shared({ ...place, ...card }, anchor)).toBe(0);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unitView } from './field-scene.ts';
import {
  type Label,
  type LabelPlace,
  type LabelRoom,
  labelBox,
  overlaps,
  placeLabels,
  placesRound,
  type TextMark,
} from './label-places.ts';

const { left, top, width, height } = unitView;
// Nobody stands exactly on the middle line, where neither side is the outward one.
const x = fc.double({ min: left, max: left + width, noNaN: true }).filter((value) => Math.abs(value) > 1e-6);
const y = fc.double({ min: top, max: top + height, noNaN: true });
const point = fc.record({ x, y });
const style = fc.constantFrom('openText', 'defenderText', 'laneText', 'readText');
const word = fc.constantFrom('c', 'tr', '83 %', 'open', 'read: open WL: skip WL');
const label: fc.Arbitrary<Label> = fc
  .record({ style, text: word, at: point, side: fc.constantFrom(1.45, 2.2) })
  .map(({ at, side, ...rest }) => ({ ...rest, places: placesRound(at, side, 1.35) }));
const letter: fc.Arbitrary<TextMark> = fc
  .record({ at: point, text: fc.constantFrom('X', 'TR') })
  .map((one) => ({ kind: 'text', style: 'attackerText', anchor: 'middle', ...one }));
const room: fc.Arbitrary<LabelRoom> = fc.record({
  view: fc.constant(unitView),
  fixed: fc.array(letter, { maxLength: 6 }),
  obstacles: fc.array(fc.record({ at: point, radius: fc.constantFrom(0.42, 0.62, 1.05) }), { maxLength: 14 }),
  pxPerYard: fc.constantFrom(4.5, 10, 21, 34),
});
const labels = fc.array(label, { maxLength: 18 });

const flip = ({ at, anchor }: LabelPlace): LabelPlace => ({
  at: { x: -at.x, y: at.y },
  anchor: ({ start: 'end', middle: 'middle', end: 'start' } as const)[anchor],
});
const mirrored = <T extends LabelPlace>(one: T): T => ({ ...one, ...flip(one) });

describe('placeLabels', () => {
  it('lays no label on another, on a fixed word or over the edge', () => {
    fc.assert(
      fc.property(labels, room, (wanted, around) => {
        const placed = placeLabels(wanted, around).map((mark) => labelBox(mark, around.pxPerYard));
        const fixed = around.fixed.map((mark) => labelBox(mark, around.pxPerYard));
        for (const [index, box] of placed.entries()) {
          for (const other of [...placed.slice(index + 1), ...fixed]) expect(overlaps(box, other)).toBe(false);
          expect(box.left).toBeGreaterThanOrEqual(left);
          expect(box.right).toBeLessThanOrEqual(left + width);
          expect(box.top).toBeGreaterThanOrEqual(top);
          expect(box.bottom).toBeLessThanOrEqual(top + height);
        }
      }),
    );
  });

  it('leaves a label out only when none of its places is free of what was placed before it', () => {
    fc.assert(
      fc.property(labels, room, (wanted, around) => {
        const boxes = around.fixed.map((mark) => labelBox(mark, around.pxPerYard));
        for (const [index, one] of wanted.entries()) {
          const before = placeLabels(wanted.slice(0, index), around);
          const after = placeLabels(wanted.slice(0, index + 1), around);
          // Who comes later takes nothing from who came before.
          expect(after.slice(0, before.length)).toEqual(before);
          const taken = [...boxes, ...before.map((mark) => labelBox(mark, around.pxPerYard))];
          const free = one.places.some((place) => {
            const box = labelBox({ ...one, ...place }, around.pxPerYard);
            const inside =
              box.left >= left && box.right <= left + width && box.top >= top && box.bottom <= top + height;
            return inside && taken.every((other) => !overlaps(box, other));
          });
          expect(after.length > before.length).toBe(free);
        }
      }),
      { numRuns: 50 },
    );
  });

  it('writes the mirrored picture with the same labels at the mirrored places', () => {
    fc.assert(
      fc.property(labels, room, (wanted, around) => {
        const other = placeLabels(
          wanted.map((one) => ({ ...one, places: one.places.map(flip) })),
          {
            ...around,
            fixed: around.fixed.map(mirrored),
            obstacles: around.obstacles.map(({ at, radius }) => ({ at: { x: -at.x, y: at.y }, radius })),
          },
        );
        expect(other).toEqual(placeLabels(wanted, around).map(mirrored));
      }),
    );
  });
});

describe('placesRound', () => {
  it('gives the mirrored mark the mirrored places in the same order', () => {
    fc.assert(
      fc.property(point, (at) => {
        expect(placesRound({ x: -at.x, y: at.y }, 1.45, 1.35)).toEqual(placesRound(at, 1.45, 1.35).map(flip));
      }),
    );
  });
});

describe('overlaps', () => {
  it('is the same either way, and holds for a box and itself', () => {
    fc.assert(
      fc.property(letter, letter, fc.constantFrom(4.5, 21), (one, two, pxPerYard) => {
        const [a, b] = [labelBox(one, pxPerYard), labelBox(two, pxPerYard)];
        expect(overlaps(a, b)).toBe(overlaps(b, a));
        expect(overlaps(a, a)).toBe(true);
      }),
    );
  });
});

import { describe, expect, test } from 'vitest';
import { sets } from '../offense/sets.ts';
import { createSchemeView, readOffense, resetSchemeView } from './view.ts';

type Places = readonly (readonly [x: number, y: number])[];

function read(places: Places, sense: 1 | -1 = 1) {
  const view = createSchemeView(5);
  view.sense = sense;
  place(view, places, sense);
  readOffense(view);
  return view;
}

function place(view: ReturnType<typeof createSchemeView>, places: Places, sense: 1 | -1 = 1) {
  for (const [i, [x, y]] of places.entries()) {
    view.offense[2 * i] = sense * x;
    view.offense[2 * i + 1] = y;
  }
}

describe('readOffense', () => {
  test.each([
    ['3-3', 'WL TL P TR WR', 'C'],
    ['2-3-1', 'WL TL TR WR X', 'C'],
    ['1-3-2', 'BL WL P WR BR', 'C'],
    ['1-4-1', 'WL P WR X', 'CL CR'],
    ['2-2-2-low', 'WL TL TR WR', 'CL CR'],
    ['2-2-2-behind', 'BL TL TR BR', 'CL CR'],
    ['3-2-1', 'WL TL P TR WR X', ''],
    ['4-2', 'BL WL TL TR WR BR', ''],
  ])('%s has the ring %s and on the crease "%s"', (id, ring, crease) => {
    const { spots } = sets[id]!;
    for (const sense of [1, -1] as const) {
      const view = read(
        spots.map((spot) => [spot.at.x, spot.at.y]),
        sense,
      );
      const names = (list: Int8Array, size: number) => [...list.slice(0, size)].map((i) => spots[i]!.id).join(' ');
      expect(names(view.ring, view.ringSize)).toBe(ring);
      expect(names(view.crease, view.creaseSize)).toBe(crease);
    }
  });

  test('the inside man of a diamond top is a crease man, the four others and the two low men the ring', () => {
    const view = read(sets.diamond!.spots.map((spot) => [spot.at.x, spot.at.y]));
    expect([view.ringSize, view.creaseSize]).toEqual([5, 1]);
    expect(sets.diamond!.spots[view.crease[0]!]!.at).toEqual({ x: 0, y: 8 });
  });

  const others: Places = [
    [0, 14],
    [9, 12],
    [-9, 12],
    [8, 4],
    [-8, 4],
  ];

  test('a popping crease man stays one until he is clearly out, and comes back only when clearly in', () => {
    const view = createSchemeView(5);
    const inside = [6, 8, 8.8, 9.1, 9.4, 9.1, 8.5, 8.1].map((y) => {
      place(view, [...others, [0, y]]);
      readOffense(view);
      return view.creaseSize;
    });
    expect(inside).toEqual([1, 1, 1, 1, 0, 0, 0, 1]);
  });

  test('a reset forgets who was inside', () => {
    const view = read([...others, [0, 6]]);
    place(view, [...others, [0, 9]]);
    resetSchemeView(view);
    readOffense(view);
    expect(view.creaseSize).toBe(0);
  });

  test('men in one spot keep the order of their numbers on both sides of the field', () => {
    const places: Places = [
      [9, 12],
      [9, 12],
      [0, 14],
      [-8, 4],
      [8, 4],
      [0, 6],
    ];
    for (const sense of [1, -1] as const) {
      const view = read(places, sense);
      expect([...view.ring.slice(0, view.ringSize)]).toEqual([3, 2, 0, 1, 4]);
    }
  });

  test('a man straight behind comes last on both sides of the field', () => {
    const places: Places = [[0, -5], ...others];
    for (const sense of [1, -1] as const) {
      const view = read(places, sense);
      expect(view.ring[view.ringSize - 1]).toBe(0);
    }
  });
});

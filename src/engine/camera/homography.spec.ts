import { describe, expect, it } from 'vitest';
import type { Point } from '../geometry/point.ts';
import { focalLength } from './focal-length.ts';
import { fitHomography, type Homography, inverseOf, mapPoint, type PointPair, stretchAt } from './homography.ts';

const pair = (from: readonly [number, number], to: readonly [number, number]): PointPair => ({
  from: { x: from[0], y: from[1] },
  to: { x: to[0], y: to[1] },
});

function fitted(...[points, lines]: Parameters<typeof fitHomography>): Homography {
  const found = fitHomography(points, lines);
  if (found.kind === 'none') throw new Error(found.reason);
  return found.homography;
}

function expectClose(found: Homography, wanted: readonly (readonly number[])[], digits: number): void {
  for (const [row, values] of wanted.entries()) {
    for (const [column, value] of values.entries()) {
      // So many digits of the number itself, whatever its size.
      expect(Math.abs(found[row]![column]! - value), `${row} ${column}`).toBeLessThan(
        10 ** -digits * Math.max(1, Math.abs(value)),
      );
    }
  }
}

/** scikit-image, tests of skimage.transform, test_geometric.py: SRC and DST. */
const eight: readonly PointPair[] = [
  pair([-12.3705, -10.5075], [0, 0]),
  pair([-10.7865, 15.4305], [0, 5800]),
  pair([8.6985, 10.8675], [4900, 5800]),
  pair([11.4975, -9.5715], [4900, 0]),
  pair([7.8435, 7.4835], [4479, 4580]),
  pair([-5.3325, 6.5025], [1176, 3660]),
  pair([6.7905, -6.3765], [3754, 790]),
  pair([-6.1695, -0.8235], [1024, 1931]),
];

describe('a homography from points', () => {
  it("is scikit-image's for its first four points, which it takes exactly", () => {
    const found = fitted(eight.slice(0, 4));
    expectClose(
      found,
      [
        [194.66901291, -11.888183994, 2283.2379309],
        [-8.691007754, 221.62069773, 2221.1673699],
        [-0.012695966735, -0.0096053624285, 1],
      ],
      8,
    );
    const { x, y } = mapPoint(found, { x: 7.8435, y: 7.4835 })!;
    expect([x, y]).toEqual([expect.closeTo(4491.238248, 4), expect.closeTo(4600.272345, 4)]);
  });

  it('is in least squares that of the normalised transformation for all eight (reckoned apart by singular values)', () => {
    const found = fitted(eight);
    expectClose(
      found,
      [
        [194.26893768, -11.984438217, 2285.554738],
        [-8.2673016278, 220.68431786, 2217.7506241],
        [-0.012589674143, -0.0097009303926, 1],
      ],
      7,
    );
    const errors = eight.map(({ from, to }) => {
      const { x, y } = mapPoint(found, from)!;
      return (x - to.x) ** 2 + (y - to.y) ** 2;
    });
    expect(Math.sqrt(errors.reduce((sum, one) => sum + one, 0) / eight.length)).toBeCloseTo(16.39067, 4);
  });

  it.each([
    {
      what: 'a trapeze',
      to: [
        [0, 0],
        [2, 0],
        [1.5, 1],
        [0.5, 1],
      ] as const,
      matrix: [
        [2, 1, 0],
        [0, 2, 0],
        [0, 1, 1],
      ],
      middle: [1, 2 / 3],
    },
    {
      what: 'four corners in pixels',
      to: [
        [10, 20],
        [110, 30],
        [90, 120],
        [20, 100],
      ] as const,
      matrix: [
        [78.65671642, 17.46268657, 10],
        [4.17910448, 117.31343284, 20],
        [-0.19402985, 0.37313433, 1],
      ],
      middle: [53.28767123, 74.10958904],
    },
  ])('takes the unit square to $what (solved by hand)', ({ to, matrix, middle }) => {
    const square = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const;
    const found = fitted(square.map((corner, at) => pair(corner, to[at]!)));
    expectClose(found, matrix, 7);
    const { x, y } = mapPoint(found, { x: 0.5, y: 0.5 })!;
    expect([x, y]).toEqual(middle.map((value) => expect.closeTo(value, 7)));
  });

  it('is none for marks that do not tell it, with the reason', () => {
    expect(fitHomography(eight.slice(0, 3))).toEqual({
      kind: 'none',
      reason: 'four marks are needed, and there are 3',
    });
    const onLine = [0, 1, 2, 3].map((at) => pair([at, 2 * at], [at, at]));
    expect(fitHomography(onLine)).toMatchObject({ kind: 'none', reason: expect.stringContaining('on one line') });
    const three = [pair([0, 0], [0, 0]), pair([1, 0], [1, 0]), pair([2, 0], [2, 0]), pair([0, 1], [0, 1])];
    expect(fitHomography(three)).toMatchObject({ kind: 'none' });
    expect(fitHomography([0, 1, 2, 3].map(() => pair([1, 1], [2, 2])))).toMatchObject({ kind: 'none' });
  });
});

/** A camera 12 yd high and 30 yd from the goal line, 1200 px of focal length, its axis in the middle of 1920 by 1080, that looks at (0, 10). By hand. */
const frontal: Homography = [
  [37.28680896, 28.57142857, 960],
  [0, 5.35714286, 647.14285714],
  [0, 0.0297619, 1],
];
/** The same from (25, -30). */
const oblique: Homography = [
  [12.9654184, 35.22375217, 802.78533259],
  [-2.98020074, 4.76832119, 602.01714361],
  [-0.0126968, 0.02031488, 1],
];

describe('a picture of the field', () => {
  const field: readonly Point[] = [-20, -10, 10, 20].flatMap((x) => [0, 25].map((y) => ({ x, y })));

  it.each([
    [{ x: -20, y: 0 }, [214.2638, 647.1429]],
    [{ x: 20, y: 30 }, [1353.9738, 426.7925]],
    [{ x: 0, y: 12 }, [960, 524.21052632]],
  ])('shows %o where a camera does (by hand)', (at, [x, y]) => {
    expect(mapPoint(frontal, at)).toEqual({ x: expect.closeTo(x!, 3), y: expect.closeTo(y!, 3) });
  });

  it('comes back from eight marks on whole pixels within a hundredth of a yard where the camera looks', () => {
    const marks = field.map((at): PointPair => {
      const { x, y } = mapPoint(frontal, at)!;
      return { from: { x: Math.round(x), y: Math.round(y) }, to: at };
    });
    const { x, y } = mapPoint(fitted(marks), { x: 960, y: 540 })!;
    expect(Math.hypot(x, y - 10)).toBeLessThan(0.05);
  });

  it('is told by lines as well as by points, and by both together', () => {
    const corners: readonly Point[] = [
      { x: -20, y: 0 },
      { x: 20, y: 0 },
      { x: 20, y: 25 },
      { x: -20, y: 25 },
    ];
    const seen = (at: Point): Point => mapPoint(oblique, at)!;
    const lines = corners.map((corner, at) => {
      const next = corners[(at + 1) % 4]!;
      // Other points of the same line than those that the field has.
      const half = { x: (corner.x + next.x) / 2, y: (corner.y + next.y) / 2 };
      return { from: [seen(corner), seen(half)], to: [half, next] } as const;
    });
    const points = [
      { x: -5, y: 0 },
      { x: 8, y: 14 },
    ].map((at): PointPair => ({ from: seen(at), to: at }));
    // Two of each leave it open, in whatever place (Hartley and Zisserman, 4.1.4): more are needed than the count says.
    expect(fitHomography(points, lines.slice(1, 3))).toMatchObject({ kind: 'none' });
    for (const found of [fitted([], lines), fitted(points, lines.slice(0, 3))]) {
      const { x, y } = mapPoint(found, seen({ x: 5, y: 12 }))!;
      expect([x, y]).toEqual([expect.closeTo(5, 5), expect.closeTo(12, 5)]);
    }
  });

  it('tells the focal length of its camera, from the front where one of two equations says nothing, and from aside', () => {
    // The numbers above are rounded to eight places, and differences of large ones are taken.
    expect(focalLength(frontal, { x: 960, y: 540 })).toBeCloseTo(1200, 1);
    expect(focalLength(oblique, { x: 960, y: 540 })).toBeCloseTo(1200, 0);
    expect(
      focalLength(
        [
          [10, 0, 5],
          [0, 10, 5],
          [0, 0, 1],
        ],
        { x: 5, y: 5 },
      ),
    ).toBeNull();
  });

  it('has a way back, and says how far a pixel goes: farther away more', () => {
    const back = inverseOf(oblique)!;
    const there = mapPoint(oblique, { x: -8, y: 15 })!;
    expect(mapPoint(back, there)).toEqual({ x: expect.closeTo(-8, 8), y: expect.closeTo(15, 8) });
    const near = stretchAt(back, mapPoint(oblique, { x: 0, y: 0 })!);
    const far = stretchAt(back, mapPoint(oblique, { x: 0, y: 30 })!);
    expect(far).toBeGreaterThan(near);
    const pixel = 1e-4;
    const [one, other] = [0, pixel].map((more) => mapPoint(back, { x: there.x, y: there.y + more })!);
    expect(Math.hypot(one!.x - other!.x, one!.y - other!.y) / pixel).toBeLessThanOrEqual(stretchAt(back, there) + 1e-6);
  });
});

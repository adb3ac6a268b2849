import type { Point } from '../geometry/point.ts';
import { smallestDirection } from './smallest-direction.ts';

/** How one flat picture of the ground lies on another: row by row, the last number 1 where it is not 0. */
export type Homography = readonly [
  readonly [number, number, number],
  readonly [number, number, number],
  readonly [number, number, number],
];

/** The same point in both. */
export interface PointPair {
  readonly from: Point;
  readonly to: Point;
}

/** The same straight line in both, by any two points of it. The two of one need not be those of the other. */
export interface LinePair {
  readonly from: readonly [Point, Point];
  readonly to: readonly [Point, Point];
}

export type FittedHomography =
  | {
      readonly kind: 'fitted';
      readonly homography: Homography;
      /** How well the marks tell it, 0 to 1: near 0 they lie almost on one line. */
      readonly spread: number;
    }
  /** A plain sentence: what is missing. */
  | { readonly kind: 'none'; readonly reason: string };

/** Marks that tell less than this lie on one line but for how they were set. */
const leastSpread = 1e-7;

/**
 * The homography that takes marks of one picture to those of the other, in the least squares of the direct linear transformation with both sides
 * brought to the same middle and size first (Hartley and Zisserman, Multiple View Geometry, 4.1 and 4.4.4; lines: 4.1.4). Four points, or points and lines that are
 * four in all, no three of them on one line, are the least;
 * two points with two lines leave it open.
 */
export function fitHomography(points: readonly PointPair[], lines: readonly LinePair[] = []): FittedHomography {
  if (points.length + lines.length < 4) {
    return { kind: 'none', reason: `four marks are needed, and there are ${points.length + lines.length}` };
  }
  const from = normalisation([...points.map((pair) => pair.from), ...lines.flatMap((pair) => pair.from)]);
  const to = normalisation([...points.map((pair) => pair.to), ...lines.flatMap((pair) => pair.to)]);
  if (from === undefined || to === undefined) return { kind: 'none', reason: 'all marks lie on one point' };
  const rows = [
    ...points.flatMap((pair) => pointRows(normalised(from, pair.from), normalised(to, pair.to))),
    ...lines.flatMap((pair) =>
      lineRows(
        throughPoints(normalised(from, pair.from[0]), normalised(from, pair.from[1])),
        throughPoints(normalised(to, pair.to[0]), normalised(to, pair.to[1])),
      ),
    ),
  ];
  const { direction, spread } = smallestDirection(rows);
  if (spread < leastSpread) {
    return { kind: 'none', reason: 'too many marks lie on one line: set one more, away from the others' };
  }
  return { kind: 'fitted', homography: scaled(denormalised(direction, from, to)), spread };
}

/** Where a point of the first picture lies on the second; undefined for one on its horizon. */
export function mapPoint([a, b, c]: Homography, { x, y }: Point): Point | undefined {
  const depth = c[0] * x + c[1] * y + c[2];
  if (Math.abs(depth) < horizon) return undefined;
  return { x: (a[0] * x + a[1] * y + a[2]) / depth, y: (b[0] * x + b[1] * y + b[2]) / depth };
}

/** A point so near to the horizon lies nowhere on the ground. */
const horizon = 1e-12;

/** The way back; undefined where there is none. */
export function inverseOf(homography: Homography): Homography | undefined {
  const [[a, b, c], [d, e, f], [g, h, i]] = homography;
  const cofactors = [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ] as const;
  const determinant = a * cofactors[0][0] + b * cofactors[1][0] + c * cofactors[2][0];
  return determinant === 0 ? undefined : scaled(cofactors);
}

/**
 * How far a point moves on the second picture for one step on the first, at its worst: yards a pixel, when it takes a frame of film to the field. The larger
 * singular value of its derivative there; infinite on the horizon.
 */
export function stretchAt(homography: Homography, { x, y }: Point): number {
  const [a, b, c] = homography;
  const depth = c[0] * x + c[1] * y + c[2];
  const there = mapPoint(homography, { x, y });
  if (there === undefined) return Number.POSITIVE_INFINITY;
  const [xx, xy] = [(a[0] - c[0] * there.x) / depth, (a[1] - c[1] * there.x) / depth];
  const [yx, yy] = [(b[0] - c[0] * there.y) / depth, (b[1] - c[1] * there.y) / depth];
  // Of a 2 by 2 matrix in closed form: half the sum of what turns and what skews.
  return (Math.hypot(xx + yy, yx - xy) + Math.hypot(xx - yy, yx + xy)) / 2;
}

/** x and y moved to their middle and scaled so that they lie the square root of two from it on average. */
interface Normalisation {
  readonly scale: number;
  readonly middle: Point;
}

function normalisation(points: readonly Point[]): Normalisation | undefined {
  const mean = (of: (point: Point) => number): number => points.reduce((sum, one) => sum + of(one), 0) / points.length;
  const middle = { x: mean(({ x }) => x), y: mean(({ y }) => y) };
  const away = mean(({ x, y }) => Math.hypot(x - middle.x, y - middle.y));
  return away > 0 ? { scale: Math.SQRT2 / away, middle } : undefined;
}

function normalised({ scale, middle }: Normalisation, { x, y }: Point): Point {
  return { x: scale * (x - middle.x), y: scale * (y - middle.y) };
}

function pointRows({ x, y }: Point, to: Point): readonly (readonly number[])[] {
  return [
    [0, 0, 0, -x, -y, -1, to.y * x, to.y * y, to.y],
    [x, y, 1, 0, 0, 0, -to.x * x, -to.x * y, -to.x],
  ];
}

/** a x + b y + c = 0 with (a, b) of length 1. */
type Line = readonly [number, number, number];

function throughPoints(one: Point, other: Point): Line {
  const [dx, dy] = [other.x - one.x, other.y - one.y];
  const length = Math.hypot(dx, dy);
  if (length === 0) return [0, 0, 0];
  return [-dy / length, dx / length, (dy * one.x - dx * one.y) / length];
}

// The line of the first picture is the other's, taken back by the transposed homography: their cross product is nothing.
function lineRows([a, b, c]: Line, [p, q, r]: Line): readonly (readonly number[])[] {
  return [
    [0, -c * p, b * p, 0, -c * q, b * q, 0, -c * r, b * r],
    [c * p, 0, -a * p, c * q, 0, -a * q, c * r, 0, -a * r],
    [-b * p, a * p, 0, -b * q, a * q, 0, -b * r, a * r, 0],
  ];
}

function denormalised(h: readonly number[], from: Normalisation, to: Normalisation): Homography {
  const rows = [0, 3, 6].map((at): readonly [number, number, number] => {
    const [a, b, c] = [h[at], h[at + 1], h[at + 2]];
    return [a * from.scale, b * from.scale, c - from.scale * (a * from.middle.x + b * from.middle.y)];
  });
  const [first, second, third] = rows;
  const back = (row: readonly number[], middle: number): readonly [number, number, number] => [
    row[0] / to.scale + middle * third[0],
    row[1] / to.scale + middle * third[1],
    row[2] / to.scale + middle * third[2],
  ];
  return [back(first, to.middle.x), back(second, to.middle.y), third];
}

/** With 1 as its last number, as homographies are printed; as it is where that is 0. */
function scaled(rows: Homography): Homography {
  const by = rows[2][2] === 0 ? 1 : rows[2][2];
  return rows.map((row) => row.map((value) => value / by)) as unknown as Homography;
}

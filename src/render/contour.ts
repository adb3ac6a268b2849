import type { Point } from '../engine/index.ts';

/** Numbers on a grid: `values[row * columns + column]`, all finite. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly values: ArrayLike<number>;
}

/**
 * The outlines of where a grid is at least `level`, as closed rings in the grid's own units: x is the column, y the row, and between the
 * grid's points it is taken to change evenly. Outside the grid nothing is reached, so that every ring closes. All rings run the same way
 * round what is reached, so that a hole runs the other way. A RangeError for values that do not fill the grid.
 *
 * Marching squares: W. E. Lorensen, H. E. Cline, "Marching cubes", SIGGRAPH 1987, https://doi.org/10.1145/37401.37422, in two dimensions.
 */
export function contourRings(grid: Grid, level: number): readonly (readonly Point[])[] {
  const { columns, rows, values } = grid;
  if (values.length !== columns * rows)
    throw new RangeError(`invalid grid: ${values.length} values (expected ${columns} by ${rows})`);
  return joinPieces(piecesOf(grid, level));
}

/** One straight piece of an outline, from one side of a square to another; sides are named, so that pieces meet exactly. */
interface Piece {
  readonly from: string;
  readonly to: string;
  readonly start: Point;
}

/** Sides of a square by number: 0 top (least row), 1 right, 2 bottom, 3 left. */
type Side = 0 | 1 | 2 | 3;

/**
 * From which side to which an outline crosses a square, by which corners are reached: 1 left top, 2 right top, 4 right bottom, 8 left bottom.
 * What is reached lies to the right of the way, looking along it, with y down the page. Where two corners across from each other are reached
 * and the others not (5 and 10), they are kept apart.
 */
const crossings: readonly (readonly (readonly [Side, Side])[])[] = [
  [],
  [[0, 3]],
  [[1, 0]],
  [[1, 3]],
  [[2, 1]],
  [
    [0, 3],
    [2, 1],
  ],
  [[2, 0]],
  [[2, 3]],
  [[3, 2]],
  [[0, 2]],
  [
    [1, 0],
    [3, 2],
  ],
  [[1, 2]],
  [[3, 1]],
  [[0, 1]],
  [[3, 0]],
  [],
];

function piecesOf(grid: Grid, level: number): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let row = -1; row < grid.rows; row += 1)
    for (let column = -1; column < grid.columns; column += 1)
      for (const [from, to] of crossings[reachedCorners(grid, column, row, level)]!)
        pieces.push({
          from: sideName(column, row, from),
          to: sideName(column, row, to),
          start: crossingOf(grid, column, row, from, level),
        });
  return pieces;
}

function reachedCorners(grid: Grid, column: number, row: number, level: number): number {
  const reached = (dx: number, dy: number): boolean => isReached(grid, column + dx, row + dy, level);
  return (reached(0, 0) ? 1 : 0) + (reached(1, 0) ? 2 : 0) + (reached(1, 1) ? 4 : 0) + (reached(0, 1) ? 8 : 0);
}

function isReached({ columns, rows, values }: Grid, column: number, row: number, level: number): boolean {
  return column >= 0 && row >= 0 && column < columns && row < rows && values[row * columns + column]! >= level;
}

// The right side of a square is the left one of its neighbour, and its bottom the top of the one below.
function sideName(column: number, row: number, side: Side): string {
  switch (side) {
    case 0:
      return `across ${column} ${row}`;
    case 1:
      return `down ${column + 1} ${row}`;
    case 2:
      return `across ${column} ${row + 1}`;
    case 3:
      return `down ${column} ${row}`;
    default:
      return exhaustive(side);
  }
}

function crossingOf(grid: Grid, column: number, row: number, side: Side, level: number): Point {
  const [ax, ay, bx, by] = cornersOf(column, row, side);
  const share = shareAlong(grid, ax, ay, bx, by, level);
  return { x: ax + (bx - ax) * share, y: ay + (by - ay) * share };
}

function cornersOf(column: number, row: number, side: Side): readonly [number, number, number, number] {
  switch (side) {
    case 0:
      return [column, row, column + 1, row];
    case 1:
      return [column + 1, row, column + 1, row + 1];
    case 2:
      return [column, row + 1, column + 1, row + 1];
    case 3:
      return [column, row, column, row + 1];
    default:
      return exhaustive(side);
  }
}

/** A ring never runs through a point of the grid itself: two rings could meet there and could not be told apart. */
const offPoint = 1e-6;
/** How far beyond the grid's edge a ring is drawn, as a share of a square: nothing is known there. */
const beyondEdge = 0.5;

function shareAlong(grid: Grid, ax: number, ay: number, bx: number, by: number, level: number): number {
  const a = valueAt(grid, ax, ay);
  const b = valueAt(grid, bx, by);
  if (a === undefined || b === undefined) return a === undefined ? 1 - beyondEdge : beyondEdge;
  return Math.min(1 - offPoint, Math.max(offPoint, (level - a) / (b - a)));
}

function valueAt({ columns, rows, values }: Grid, column: number, row: number): number | undefined {
  return column < 0 || row < 0 || column >= columns || row >= rows ? undefined : values[row * columns + column];
}

// Each side is left by one piece at most, and every piece ends where another begins: so they chain into rings.
function joinPieces(pieces: readonly Piece[]): readonly (readonly Point[])[] {
  const next = new Map(pieces.map((piece) => [piece.from, piece]));
  const rings: Point[][] = [];
  for (const first of pieces) {
    const ring: Point[] = [];
    for (let piece = next.get(first.from); piece !== undefined; piece = next.get(piece.to)) {
      next.delete(piece.from);
      ring.push(piece.start);
    }
    if (ring.length > 0) rings.push(ring);
  }
  return rings;
}

function exhaustive(side: never): never {
  throw new TypeError(`unknown side: ${side}`);
}

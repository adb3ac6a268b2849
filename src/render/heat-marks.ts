import type { Point, ShotHeat } from '../engine/index.ts';
import { contourRings, type Grid } from './contour.ts';
import type { FieldMarkings } from './field-scene.ts';
import { type PathStep, type Primitive, text } from './scene.ts';

/** Goal odds at which a band begins. */
export const heatLevels = [0.1, 0.2, 0.3, 0.4, 0.5] as const;

/**
 * What a shot is worth from everywhere, in bands: each one lies over those below it, so that the better place is the stronger tint, also in
 * grey; each edge has its line, and its goal odds are printed where it crosses the middle and on either side.
 */
export function heatMarks(heat: ShotHeat, field: FieldMarkings): readonly Primitive[] {
  const grid = withoutCrease(heat, field.creaseRadius);
  return heatLevels.flatMap((level) => {
    const rings = contourRings(grid, level).map((ring) => ring.map((at) => onField(heat, at)));
    if (rings.length === 0) return [];
    const steps = rings.flatMap(ringSteps);
    return [
      { kind: 'path', style: 'heat', steps },
      { kind: 'path', style: 'heatLine', steps },
      ...levelTexts(rings, level),
    ] as const;
  });
}

// Nobody may shoot from the crease: the bands run on below it, so that its edge is its own and not that of the grid's squares.
function withoutCrease(heat: ShotHeat, creaseRadius: number): Grid {
  const { columns, rows, odds_byCell } = heat;
  const values = odds_byCell.map((odds, cell) => {
    const { x, y } = onField(heat, { x: cell % columns, y: Math.floor(cell / columns) });
    const far = Math.hypot(x, y);
    if (far >= creaseRadius || far === 0) return odds;
    const out = (creaseRadius + heat.cell) / far;
    return odds_byCell[cellAt(heat, x * out, y * out)] ?? odds;
  });
  return { columns, rows, values };
}

function cellAt({ left, bottom, cell, columns, rows }: ShotHeat, x: number, y: number): number {
  const column = Math.min(columns - 1, Math.max(0, Math.round((x - left) / cell)));
  const row = Math.min(rows - 1, Math.max(0, Math.round((y - bottom) / cell)));
  return row * columns + column;
}

function onField({ left, bottom, cell }: ShotHeat, { x, y }: Point): Point {
  return { x: left + x * cell, y: bottom + y * cell };
}

function ringSteps(ring: readonly Point[]): readonly PathStep[] {
  return [...ring.map((to, index): PathStep => ({ kind: index === 0 ? 'move' : 'line', to })), { kind: 'close' }];
}

/** Height above the goal line at which the odds are printed on both sides, yd: above the wings, below the top. */
const sideHeight = 7.5;

function levelTexts(rings: readonly (readonly Point[])[], level: number): readonly Primitive[] {
  const content = `.${Math.round(level * 100)}`;
  const points = rings.flat();
  const sides = points.filter(({ y }) => Math.abs(y - sideHeight) < 0.75);
  const places = [
    points
      .filter(({ x }) => Math.abs(x) < 0.75)
      .reduce(
        furthest((at) => at.y),
        undefined,
      ),
    sides.reduce(
      furthest((at) => at.x),
      undefined,
    ),
    sides.reduce(
      furthest((at) => -at.x),
      undefined,
    ),
  ];
  return places.flatMap((at) => (at === undefined ? [] : [text('heatText', at, content)]));
}

function furthest(measure: (at: Point) => number): (best: Point | undefined, at: Point) => Point {
  return (best, at) => (best === undefined || measure(at) > measure(best) ? at : best);
}

import { type Landmarks, landmarksOf, type Point, type SpotId } from '../../engine/index.ts';
import type { FieldLimits } from '../field-limits.ts';
import { ruleCodeOf } from '../rule-settings.ts';
import type { Playbook, PlayEntry } from '../schema.ts';
import { roundPlace } from './place-rules.ts';
import { type PlayGround, playSpots } from './play-ground.ts';

/** What a place can catch on while it is dragged. */
export interface SnapGround {
  readonly field: FieldLimits;
  readonly landmarks: Landmarks;
  /** Homes of the other men, by spot. */
  readonly men: ReadonlyMap<SpotId, Point>;
}

export interface SnappedPlace {
  /** Yards, as it is written: a tenth of a yard. */
  readonly point: Point;
  /** What it caught on, in words: "right pipe", "level with TL, edge of the crease"; empty for a place by itself. */
  readonly words: string;
  /** The x and the y on which it lies because it caught on them: lines to show. */
  readonly alongX?: number;
  readonly alongY?: number;
  /** It lies on the edge of the crease. */
  readonly onCrease: boolean;
}

/** What the places of this play can catch on; `without` is the man who is dragged. */
export function snapGroundOf(playbook: Playbook, play: PlayEntry, ground: PlayGround, without?: SpotId): SnapGround {
  const men = playSpots(play, ground).flatMap(({ id, at }) => (id === without ? [] : [[id, at] as const]));
  return { field: ground.field, landmarks: landmarksOf(ruleCodeOf(playbook).markings), men: new Map(men) };
}

/**
 * The place that somebody most likely means who points at `at`, within `radius` yards of it.
 *
 * First the places themselves (homes of other men, the pipes), then lines in x and y (level or in line with a man or a pipe, the middle, the
 * goal line extended, the lines of the box) and the edge of the crease, where it may lie on one of them too; else whole half-yards.
 */
export function snapPlace(at: Point, ground: SnapGround, radius: number): SnappedPlace {
  const place = nearest(placesOf(ground), ({ point }) => Math.hypot(point.x - at.x, point.y - at.y), radius);
  if (place !== undefined) return { point: place.point, words: place.words, onCrease: false };
  const alongX = nearest(linesInX(ground), ({ value }) => Math.abs(value - at.x), radius);
  const alongY = nearest(linesInY(ground), ({ value }) => Math.abs(value - at.y), radius);
  const { creaseRadius } = ground.field;
  if (Math.abs(Math.hypot(at.x, at.y) - creaseRadius) <= radius) return onCrease(at, ground, alongX, alongY);
  const point = roundPlace(
    { x: alongX?.value ?? halfYard(at.x, radius), y: alongY?.value ?? halfYard(at.y, radius) },
    ground.field,
  );
  return {
    point,
    words: [alongX, alongY].flatMap((line) => line?.words ?? []).join(', '),
    ...(alongX !== undefined && { alongX: point.x }),
    ...(alongY !== undefined && { alongY: point.y }),
    onCrease: false,
  };
}

/** The nearest place to this one where a man of the offense may be: out of the crease, on the field. */
export function nearestAllowed(point: Point, field: FieldLimits): Point {
  const onField = {
    x: Math.max(-field.sideline, Math.min(field.sideline, point.x)),
    y: Math.max(field.endLine, Math.min(field.midline, point.y)),
  };
  const distance = Math.hypot(onField.x, onField.y);
  if (distance >= field.creaseRadius) return roundPlace(onField, field);
  return roundPlace(outTo(field.creaseRadius, onField), field);
}

interface Line {
  readonly value: number;
  readonly words: string;
}

interface NamedPlace {
  readonly point: Point;
  readonly words: string;
}

/** The pipes are named although nobody may stand there: a place to point at, as for a restart or a measure. */
function placesOf({ landmarks, men }: SnapGround): readonly NamedPlace[] {
  return [
    ...[...men].map(([id, point]) => ({ point, words: `where ${id} stands` })),
    { point: landmarks.leftPost, words: 'left pipe' },
    { point: landmarks.rightPost, words: 'right pipe' },
  ];
}

function linesInX({ landmarks, men }: SnapGround): readonly Line[] {
  const { boxSide } = landmarks;
  return [
    { value: 0, words: 'middle' },
    ...[...men].map(([id, { x }]) => ({ value: x, words: `in line with ${id}` })),
    { value: landmarks.leftPost.x, words: 'in line with the left pipe' },
    { value: landmarks.rightPost.x, words: 'in line with the right pipe' },
    ...(boxSide === null
      ? []
      : [
          { value: boxSide, words: 'right line of the box' },
          { value: -boxSide, words: 'left line of the box' },
        ]),
  ];
}

function linesInY({ landmarks, men }: SnapGround): readonly Line[] {
  return [
    { value: 0, words: 'goal line extended' },
    { value: landmarks.restrainingLine, words: 'restraining line' },
    ...[...men].map(([id, { y }]) => ({ value: y, words: `level with ${id}` })),
  ];
}

function onCrease(at: Point, { field }: SnapGround, alongX: Line | undefined, alongY: Line | undefined): SnappedPlace {
  const { creaseRadius } = field;
  const edge = 'edge of the crease';
  // A line that crosses the crease's edge steeply near here gives one place on both; a grazing one gives none.
  if (alongX !== undefined && Math.abs(alongX.value) < steep * creaseRadius && Math.abs(at.y) >= Math.abs(at.x)) {
    const y = Math.sign(at.y || 1) * Math.sqrt(creaseRadius ** 2 - alongX.value ** 2);
    const point = roundPlace({ x: alongX.value, y: outward(y) }, field);
    return { point, words: `${alongX.words}, ${edge}`, alongX: point.x, onCrease: true };
  }
  if (alongY !== undefined && Math.abs(alongY.value) < steep * creaseRadius && Math.abs(at.x) > Math.abs(at.y)) {
    const x = Math.sign(at.x) * Math.sqrt(creaseRadius ** 2 - alongY.value ** 2);
    const point = roundPlace({ x: outward(x), y: alongY.value }, field);
    return { point, words: `${alongY.words}, ${edge}`, alongY: point.y, onCrease: true };
  }
  return { point: roundPlace(outTo(creaseRadius, at), field), words: edge, onCrease: true };
}

/** Share of the crease's radius up to which a line counts as crossing its edge. */
const steep = 0.9;

/** Up to the next tenth of a yard away from the goal, so that the place is outside. */
function outward(value: number): number {
  return (Math.sign(value) * Math.ceil(Math.abs(value) * 10 - 1e-6)) / 10;
}

function outTo(radius: number, { x, y }: Point): Point {
  const distance = Math.hypot(x, y);
  if (distance < middle) return { x: 0, y: radius };
  // A hair outside, so that rounding to tenths goes outward where it has to.
  const scale = (radius * (1 + 1e-9)) / distance;
  return { x: x * scale, y: y * scale };
}

/** Nearer to the middle of the goal than this no way out is nearer than another, yd. */
const middle = 1e-6;

function halfYard(value: number, radius: number): number {
  const half = Math.round(value * 2) / 2;
  return Math.abs(half - value) <= radius ? half : value;
}

/** The first of the nearest within the radius. */
function nearest<T>(all: readonly T[], distanceOf: (one: T) => number, radius: number): T | undefined {
  let best: T | undefined;
  let least = radius;
  for (const one of all) {
    const distance = distanceOf(one);
    if (best === undefined ? distance > least : distance >= least) continue;
    best = one;
    least = distance;
  }
  return best;
}

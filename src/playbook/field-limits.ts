import { landmarksOf, type Point } from '../engine/index.ts';
import { ruleCodeOf } from './rule-settings.ts';
import type { Playbook } from './schema.ts';

/** The lines of the field that a playbook's places are checked against, yards. */
export interface FieldLimits {
  /** y of the end line behind the goal, below 0. */
  readonly endLine: number;
  /** y of the midline. */
  readonly midline: number;
  /** x of the sideline, above 0. */
  readonly sideline: number;
  readonly creaseRadius: number;
  /** The box: half its width and the y of its upper line. */
  readonly boxHalfWidth: number;
  readonly boxTop: number;
}

/** A place on the line itself still counts as inside: bodies have a width, and coaches write 3,0 for "at the crease's edge". Yards. */
const lineTolerance = 1e-9;

export function isInCrease(point: Point, field: FieldLimits): boolean {
  return Math.hypot(point.x, point.y) < field.creaseRadius - lineTolerance;
}

export function isOutOfBounds(point: Point, field: FieldLimits): boolean {
  return Math.abs(point.x) > field.sideline || point.y < field.endLine || point.y > field.midline;
}

/** Strictly inside the box; a place on its line is outside. */
export function isInBox(point: Point, field: FieldLimits): boolean {
  return Math.abs(point.x) < field.boxHalfWidth && point.y < field.boxTop;
}

/** Whether the straight way from one place to another leads through the crease. Ends on its edge do not count. */
export function crossesCrease(from: Point, to: Point, field: FieldLimits): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  if (square === 0) return false;
  const along = Math.min(1, Math.max(0, -(from.x * dx + from.y * dy) / square));
  // A stride that only brushes the edge is not a fault worth a word.
  return Math.hypot(from.x + along * dx, from.y + along * dy) < field.creaseRadius - brush;
}

/** Yards inside the crease's edge that a straight way may brush: half a stride. */
const brush = 0.4;

/** The field that a playbook's places are checked against: that of its rule code. */
export function fieldOf(playbook: Playbook): FieldLimits {
  const marks = landmarksOf(ruleCodeOf(playbook).markings);
  return {
    endLine: marks.endLine,
    midline: marks.midfieldLine,
    sideline: marks.sideline,
    creaseRadius: marks.creaseRadius,
    // Where the restraining line spans the field, everything below it is "the box".
    boxHalfWidth: marks.boxSide ?? marks.sideline,
    boxTop: marks.restrainingLine,
  };
}

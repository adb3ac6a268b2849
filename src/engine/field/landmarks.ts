import type { Point } from '../geometry/point.ts';
import type { Markings } from './rule-code.ts';

/** Named places and lines of the half field, yards (docs/units-and-frames.md). */
export interface Landmarks {
  readonly leftPost: Point;
  readonly rightPost: Point;
  /** Where the net is pegged behind the goal. */
  readonly netPeg: Point;
  /** y of the lines across the field. Goal line extended is 0. */
  readonly endLine: number;
  readonly restrainingLine: number;
  readonly midfieldLine: number;
  /** x of the right sideline; the left one is its negative. */
  readonly sideline: number;
  /** x of the box's right side; null where the line spans the field. */
  readonly boxSide: number | null;
  readonly creaseRadius: number;
  /** Middle of the substitution gate, on the bench's side: where a released man steps on. */
  readonly gate: Point;
  /** Where a ball behind the goal usually sits: halfway from the crease to the end line. */
  readonly x: Point;
}

/** The landmarks of a field; `benchSide` is +1 when the benches are to the offense's right looking in, else -1. */
export function landmarksOf(markings: Markings, benchSide: 1 | -1 = 1): Landmarks {
  const halfGoal = markings.goalWidth.value / 2;
  const endLine = -markings.goalToEndLine.value;
  const creaseRadius = markings.creaseRadius.value;
  return {
    leftPost: { x: -halfGoal, y: 0 },
    rightPost: { x: halfGoal, y: 0 },
    netPeg: { x: 0, y: -markings.goalDepth.value },
    endLine,
    restrainingLine: markings.goalToRestraining.value,
    midfieldLine: markings.goalToMidfield.value,
    sideline: markings.halfWidth.value,
    boxSide: markings.boxHalfWidth.value,
    creaseRadius,
    gate: { x: benchSide * markings.halfWidth.value, y: markings.goalToMidfield.value },
    x: { x: 0, y: (endLine - creaseRadius) / 2 },
  };
}

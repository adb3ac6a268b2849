import type { Point } from '../../engine/index.ts';
import { type FieldLimits, isInBox, isInCrease, isOutOfBounds } from '../field-limits.ts';
import { boundsWords } from '../play/read-set.ts';
import { type Refused, refused } from './edit-result.ts';

/** Places are written to this many parts of a yard: as exact as a coach can point. */
const partsOfAYard = 10;

/** A place as it is written: to a tenth of a yard, and away from the goal when rounding would put it into the crease. */
export function roundPlace({ x, y }: Point, field: FieldLimits): Point {
  const near = { x: roundYards(x), y: roundYards(y) };
  if (isInCrease({ x, y }, field) || !isInCrease(near, field)) return near;
  return { x: roundAway(x), y: roundAway(y) };
}

function roundYards(value: number): number {
  return Math.round(value * partsOfAYard) / partsOfAYard + 0;
}

function roundAway(value: number): number {
  // Less than a hundredth of a part is what a double is off by, not a reason to go a part further.
  return (Math.sign(value) * Math.ceil(Math.abs(value) * partsOfAYard - 0.01)) / partsOfAYard + 0;
}

/** Why nobody of the offense may be told to be there; undefined when he may. */
export function placeRefusal(point: Point, field: FieldLimits): Refused | undefined {
  if (!Number.isFinite(point.x) || !Number.isFinite(point.y)) return refused('That is no place on the field.');
  if (isInCrease(point, field))
    return refused(`The place ${placeText(point)} lies inside the crease, where the offense may not be.`);
  if (isOutOfBounds(point, field)) return refused(`The place ${placeText(point)} is ${boundsWords(point, field)}.`);
  return undefined;
}

/** How near the end line a restart must be to be one after the ball went over it, yd: as the check has it. */
const endLineRestart = 1;

/** Why the ball cannot be put in play there after a penalty; undefined when it can. */
export function restartRefusal(point: Point, field: FieldLimits): Refused | undefined {
  if (!Number.isFinite(point.x) || !Number.isFinite(point.y)) return refused('That is no place on the field.');
  if (isOutOfBounds(point, field)) return refused(`The place ${placeText(point)} is ${boundsWords(point, field)}.`);
  if (isInBox(point, field) && point.y > field.endLine + endLineRestart)
    return refused(
      `After a penalty the ball is put in play outside the box: x at least ${field.boxHalfWidth} either way, or y at least ${field.boxTop}.`,
    );
  return undefined;
}

export function placeText({ x, y }: Point): string {
  return `${x},${y}`;
}

import type { Markings, Point } from '../engine/index.ts';
import { circle, line, type Primitive, polygon, rectangle, text, type View } from './scene.ts';

/**
 * What a half field shows, yards from the middle of the goal line. A rule code's markings have this shape.
 */
export interface FieldMarkings {
  /** From the middle of the field to a sideline. */
  readonly halfWidth: number;
  /** From the goal line back to the end line. */
  readonly behind: number;
  /** From the goal line up to the restraining line. */
  readonly restraining: number;
  /** From the goal line up to midfield. */
  readonly midfield: number;
  /** From the middle of the field to the side of the box; `null` where the line runs from sideline to sideline. */
  readonly boxHalfWidth: number | null;
  readonly creaseRadius: number;
  readonly goalHalfWidth: number;
  readonly goalDepth: number;
}

/** The markings of a rule code, as they are drawn. */
export function drawnField(markings: Markings): FieldMarkings {
  return {
    halfWidth: markings.halfWidth.value,
    behind: markings.goalToEndLine.value,
    restraining: markings.goalToRestraining.value,
    midfield: markings.goalToMidfield.value,
    boxHalfWidth: markings.boxHalfWidth.value,
    creaseRadius: markings.creaseRadius.value,
    goalHalfWidth: markings.goalWidth.value / 2,
    goalDepth: markings.goalDepth.value,
  };
}

/** The part of the half field that a man-up unit uses, with room for a restart outside the box. */
export const unitView: View = { left: -16.5, top: -9.5, width: 33, height: 31.2 };
/** Room kept round a man at the edge, yd. */
const viewMargin = 1.8;

/** `unitView`, grown to both sides alike, up and down, until every point is inside with room for its mark. */
export function viewAround(points: readonly Point[], least: View = unitView): View {
  const half = Math.max(least.width / 2, ...points.map((at) => Math.abs(at.x) + viewMargin));
  const top = Math.min(least.top, ...points.map((at) => at.y - viewMargin));
  const bottom = Math.max(least.top + least.height, ...points.map((at) => at.y + viewMargin));
  return { left: -half, top, width: 2 * half, height: bottom - top };
}

/** The markings of the half field inside `view`, with a yard scale down the left edge. */
export function fieldScene(field: FieldMarkings, view: View = unitView): readonly Primitive[] {
  const right = view.left + view.width;
  const bottom = view.top + view.height;
  return [
    rectangle('turf', view.left, view.top, right, bottom),
    ...boxOf(field, view),
    ...sidelines(field, view),
    ...acrossLine('paint', -field.behind, field.halfWidth, view),
    ...acrossLine('midline', field.midfield, field.halfWidth, view),
    circle('creaseArea', { x: 0, y: 0 }, field.creaseRadius),
    ...goal(field),
    ...yardScale(view),
  ];
}

function boxOf(field: FieldMarkings, view: View): readonly Primitive[] {
  const half = field.boxHalfWidth;
  if (half === null) return acrossLine('paint', field.restraining, field.halfWidth, view);
  const left = Math.max(-half, view.left);
  const right = Math.min(half, view.left + view.width);
  const top = Math.max(-field.behind, view.top);
  const area = rectangle('boxArea', left, top, right, field.restraining);
  const sides = [-half, half]
    .filter((x) => x > view.left && x < view.left + view.width)
    .map((x) => line('paint', { x, y: top }, { x, y: field.restraining }));
  return [area, ...sides, ...acrossLine('paint', field.restraining, half, view)];
}

function sidelines(field: FieldMarkings, view: View): readonly Primitive[] {
  const top = Math.max(-field.behind, view.top);
  const bottom = Math.min(field.midfield, view.top + view.height);
  return [-field.halfWidth, field.halfWidth]
    .filter((x) => x > view.left && x < view.left + view.width)
    .map((x) => line('paint', { x, y: top }, { x, y: bottom }));
}

function acrossLine(style: 'paint' | 'midline', y: number, half: number, view: View): readonly Primitive[] {
  if (y < view.top || y > view.top + view.height) return [];
  const left = Math.max(-half, view.left);
  const right = Math.min(half, view.left + view.width);
  return [line(style, { x: left, y }, { x: right, y })];
}

function goal(field: FieldMarkings): readonly Primitive[] {
  const half = field.goalHalfWidth;
  const net = [
    { x: -half, y: 0 },
    { x: half, y: 0 },
    { x: 0, y: -field.goalDepth },
  ];
  return [polygon('goalNet', net), line('goalLine', { x: -half, y: 0 }, { x: half, y: 0 })];
}

// Short ticks and figures every five yards: a coach reads "eight yards above the line" off the page.
function yardScale(view: View): readonly Primitive[] {
  const items: Primitive[] = [];
  const first = Math.ceil((view.top + 1) / 5) * 5;
  for (let y = first; y < view.top + view.height - 0.6; y += 5) {
    items.push(line('guide', { x: view.left, y }, { x: view.left + 0.5, y }));
    items.push(text('yardText', { x: view.left + 0.75, y }, y === 0 ? 'GLE' : String(y), 'start'));
  }
  return items;
}

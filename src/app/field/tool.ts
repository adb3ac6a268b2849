import type { Point, SpotId } from '../../engine/index.ts';
import { aimOf, type FieldOrder, type Verb } from './field-order.ts';
import { type FieldStep, type Grip, gripAt } from './grips.ts';

/**
 * What the pointer is at. A press becomes a drag once it has moved; a drag ends in one order or in none. Whoever chose a verb
 * points next at a man or a place.
 */
export type Tool =
  | { readonly kind: 'idle' }
  | { readonly kind: 'pressing'; readonly grip: Grip; readonly from: Point }
  | { readonly kind: 'dragging'; readonly grip: Grip; readonly from: Point; readonly at: Point }
  /** `place` is where a pick is to stand, once it is known and only its man is missing. */
  | {
      readonly kind: 'aiming';
      readonly by: SpotId;
      readonly verb: Verb;
      readonly place: Point | undefined;
      readonly at: Point | undefined;
      /** `at` was stepped to by keys: it is meant to the tenth of a yard and catches on nothing. */
      readonly byKeys: boolean;
    };

/** What arrow keys can move: where the man who is told something shall go or stand. */
export interface AimMark {
  readonly by: SpotId;
  readonly verb: Verb;
  readonly at: Point;
  /** It is no longer at the man himself. */
  readonly isMoved: boolean;
}

export type ToolEvent =
  /** `reach`: how far from a grip it is still taken hold of, yards. */
  | { readonly kind: 'down'; readonly at: Point; readonly reach: number }
  | { readonly kind: 'move'; readonly at: Point; readonly reach: number }
  | { readonly kind: 'up'; readonly at: Point; readonly reach: number }
  | { readonly kind: 'choose'; readonly by: SpotId; readonly verb: Verb }
  /** The mark of who points by keys is moved here. */
  | { readonly kind: 'aim'; readonly at: Point }
  /** The place of the mark is taken. */
  | { readonly kind: 'take' }
  /** Escape, a second finger, or the browser took the pointer away. */
  | { readonly kind: 'cancel' };

export interface ToolAnswer {
  readonly tool: Tool;
  /** What is to be done now. */
  readonly order?: FieldOrder;
  /** The man who is chosen from now on; null for none. Absent: as before. */
  readonly select?: SpotId | null;
}

type Aiming = Extract<Tool, { kind: 'aiming' }>;

export const idleTool: Tool = { kind: 'idle' };

/** A pointer that moves less than this is still pressing. Yards. */
const slop = 0.45;
/** A mark is moved to places: whoever means the man there chooses the man. Yards. */
const markReach = 0.01;
/** Where a drag of the ball ends in a shot: this near to the middle of the goal. Yards. */
const goalReach = 2;

/** What the tool is after an event, and what that asks for. Pure. */
export function nextTool(tool: Tool, event: ToolEvent, field: FieldStep): ToolAnswer {
  switch (event.kind) {
    case 'cancel':
      return { tool: idleTool };
    case 'choose':
      return choose(tool, event.by, event.verb);
    case 'down':
      return tool.kind === 'aiming' ? { tool: { ...tool, at: event.at, byKeys: false } } : press(event, field);
    case 'move':
      return { tool: moved(tool, event.at) };
    case 'aim':
      return { tool: tool.kind === 'aiming' ? { ...tool, at: event.at, byKeys: true } : tool };
    case 'take':
      return tool.kind === 'aiming' && tool.at !== undefined ? pointed(tool, tool.at, field, markReach) : { tool };
    case 'up':
      return released(tool, event, field);
    default:
      return exhaustive(event);
  }
}

/** What would be done if the pointer were let go now: what is drawn, and simulated, while it is still held. */
export function pendingOrder(tool: Tool, field: FieldStep, reach: number): FieldOrder | undefined {
  if (tool.kind === 'dragging') return dropOrder(tool.grip, tool.at, field, reach);
  if (tool.kind === 'aiming' && tool.at !== undefined) return aimedOrder(tool, tool.at, field, reach);
  return undefined;
}

/** The mark that arrow keys move, from the man himself; undefined where no place is asked for. */
export function aimMark(tool: Tool, field: FieldStep): AimMark | undefined {
  if (tool.kind !== 'aiming' || tool.place !== undefined) return undefined;
  const { by, verb, at = field.picture.places[by] } = tool;
  const wantsPlace = aimOf[verb] === 'place' || aimOf[verb] === 'placeAndMan';
  return wantsPlace && at !== undefined ? { by, verb, at, isMoved: tool.at !== undefined } : undefined;
}

// A verb that waits for its aim is given up by the same button: a finger has no Escape.
function choose(tool: Tool, by: SpotId, verb: Verb): ToolAnswer {
  if (tool.kind === 'aiming' && tool.by === by && tool.verb === verb) return { tool: idleTool };
  if (aimOf[verb] === 'nothing') return { tool: idleTool, order: { kind: 'tell', by, verb } };
  return { tool: { kind: 'aiming', by, verb, place: undefined, at: undefined, byKeys: false } };
}

function press({ at, reach }: { readonly at: Point; readonly reach: number }, field: FieldStep): ToolAnswer {
  const grip = gripAt(field.grips, at, reach);
  if (grip === undefined) return { tool: idleTool, select: null };
  const select = grip.kind === 'man' ? grip.spot : grip.kind === 'point' ? grip.by : null;
  return { tool: { kind: 'pressing', grip, from: at }, select };
}

function moved(tool: Tool, at: Point): Tool {
  switch (tool.kind) {
    case 'idle':
      return tool;
    case 'pressing':
      return apart(tool.from, at) < slop ? tool : { kind: 'dragging', grip: tool.grip, from: tool.from, at };
    case 'dragging':
      return { ...tool, at };
    case 'aiming':
      return { ...tool, at, byKeys: false };
    default:
      return exhaustive(tool);
  }
}

function released(
  tool: Tool,
  { at, reach }: { readonly at: Point; readonly reach: number },
  field: FieldStep,
): ToolAnswer {
  if (tool.kind === 'dragging') {
    const order = dropOrder(tool.grip, at, field, reach);
    return order === undefined ? { tool: idleTool } : { tool: idleTool, order };
  }
  return tool.kind === 'aiming' ? pointed(tool, at, field, reach) : { tool: idleTool };
}

function pointed(tool: Aiming, at: Point, field: FieldStep, reach: number): ToolAnswer {
  const order = aimedOrder(tool, at, field, reach);
  if (order !== undefined) return { tool: idleTool, order, select: tool.by };
  // A pick has its place now and wants its man; whoever pointed beside all men points again.
  const place = aimOf[tool.verb] === 'placeAndMan' ? (tool.place ?? at) : undefined;
  return { tool: { ...tool, place, at: undefined } };
}

function dropOrder(grip: Grip, at: Point, field: FieldStep, reach: number): FieldOrder | undefined {
  switch (grip.kind) {
    case 'restart':
      return { kind: 'moveRestart', to: at };
    case 'point':
      return { kind: 'movePoint', beat: grip.beat, action: grip.action, point: grip.point, to: at };
    case 'man':
      return field.step === 0 ? { kind: 'moveHome', spot: grip.spot, to: at } : sendOrder(grip.spot, at, field, reach);
    default:
      return exhaustive(grip);
  }
}

// The man with the ball is dragged to a mate to throw, to the goal to shoot, anywhere else to carry; without the ball a man runs.
function sendOrder(by: SpotId, at: Point, field: FieldStep, reach: number): FieldOrder {
  if (by !== field.ballAfter && by !== field.picture.ball) return { kind: 'send', by, to: at };
  const mate = manAt(field, at, reach, by);
  if (mate !== undefined) return { kind: 'throwTo', to: mate };
  if (Math.hypot(at.x, at.y) <= goalReach) return { kind: 'tell', by, verb: 'shoot' };
  return { kind: 'send', by, to: at };
}

function aimedOrder({ by, verb, place }: Aiming, at: Point, field: FieldStep, reach: number): FieldOrder | undefined {
  switch (aimOf[verb]) {
    case 'nothing':
      return { kind: 'tell', by, verb };
    case 'place':
      return { kind: 'tell', by, verb, at };
    case 'man': {
      const on = manAt(field, at, reach, by);
      return on === undefined ? undefined : { kind: 'tell', by, verb, on };
    }
    case 'placeAndMan': {
      const on = manAt(field, at, reach, by);
      if (on === undefined) return undefined;
      // Who points at the man at once leaves the place to us: beside him, on the side from which the picker comes.
      return { kind: 'tell', by, verb, at: place ?? besideMan(field, by, on), on };
    }
    default:
      return exhaustive(aimOf[verb] as never);
  }
}

/** How far from a man the pick for him is set, yards: his defender stands between. */
const besideHim = 1.8;

function besideMan({ picture }: FieldStep, by: SpotId, on: SpotId): Point {
  const [from, to] = [picture.places[by]!, picture.places[on]!];
  const length = apart(from, to);
  const share = length <= besideHim ? 0.5 : besideHim / length;
  return { x: to.x + (from.x - to.x) * share, y: to.y + (from.y - to.y) * share };
}

/** The man near a place, but for `by` himself; where he is at the start of the step or where it leads him. */
function manAt(field: FieldStep, at: Point, reach: number, by: SpotId): SpotId | undefined {
  const others = field.grips.filter(
    (grip) => (grip.kind === 'man' && grip.spot !== by) || (grip.kind === 'point' && grip.by !== by && grip.isEnd),
  );
  const grip = gripAt(others, at, reach);
  return grip === undefined || grip.kind === 'restart' ? undefined : grip.kind === 'man' ? grip.spot : grip.by;
}

function apart(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}

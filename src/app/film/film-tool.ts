import type { Point } from '../../engine/index.ts';
import { type CameraMarks, dropMark, setLine, setPlace, withOwnMarks } from './camera-marks.ts';

/** Somebody or something that is marked at a moment. */
export type Marked =
  | { readonly kind: 'ball' }
  | { readonly kind: 'defender'; readonly at: number }
  | { readonly kind: 'attacker'; readonly at: number };

/** What the next press means. */
export type FilmTool =
  /** Nothing is set; what is there can be dragged. */
  | { readonly kind: 'look' }
  | { readonly kind: 'place'; readonly id: string }
  | { readonly kind: 'line'; readonly id: string; readonly first: Point | undefined }
  | { readonly kind: 'man'; readonly what: Marked['kind'] };

/** What the pointer holds. */
export type Hold =
  | { readonly kind: 'nothing' }
  | ({ readonly kind: 'man'; readonly who: Marked } & Held)
  | ({ readonly kind: 'place'; readonly id: string } & Held);

interface Held {
  readonly from: Point;
  readonly at: Point;
  /** Nearer than this to where it was pressed, it is still only pressed. */
  readonly slop: number;
  readonly isMoved: boolean;
}

/** The state of the hand over a film: the same over the field beside it, where there are no marks of the camera. */
export interface FilmHand {
  readonly tool: FilmTool;
  readonly hold: Hold;
  readonly views: readonly CameraMarks[];
  /** Marks of the camera as they were before, the last step at the end. */
  readonly before: readonly (readonly CameraMarks[])[];
}

/** What can be taken hold of, and where it is seen: pixels over a film, yards over the field. */
export interface Handle {
  readonly what: Exclude<Hold, { kind: 'nothing' }>['kind'];
  readonly who?: Marked;
  readonly id?: string;
  readonly at: Point;
}

export type FilmEvent =
  | { readonly kind: 'choose'; readonly tool: FilmTool }
  /** `reach`: how far from a handle it is still taken hold of, in the units of `at`. `time`: seconds of the film. */
  | {
      readonly kind: 'down';
      readonly at: Point;
      readonly reach: number;
      readonly time: number;
      readonly handles: readonly Handle[];
    }
  | { readonly kind: 'move'; readonly at: Point }
  | { readonly kind: 'up'; readonly at: Point; readonly time: number }
  | { readonly kind: 'drop'; readonly id: string; readonly time: number }
  | { readonly kind: 'own'; readonly time: number }
  | { readonly kind: 'back' }
  | { readonly kind: 'forget' }
  /** Marks of this very film that were kept from another day. */
  | { readonly kind: 'found'; readonly views: readonly CameraMarks[] }
  /** Escape, or the browser took the pointer away. */
  | { readonly kind: 'cancel' };

/** What is to be done with the moment's marks; places in the units of the event. */
export type MarkOrder =
  | { readonly kind: 'set'; readonly what: Marked['kind']; readonly at: Point }
  | { readonly kind: 'move'; readonly who: Marked; readonly at: Point };

export interface HandAnswer {
  readonly hand: FilmHand;
  readonly order?: MarkOrder;
}

export const emptyHand: FilmHand = { tool: { kind: 'look' }, hold: { kind: 'nothing' }, views: [], before: [] };

const nothing: Hold = { kind: 'nothing' };
/** A pointer that moved less than this share of its reach is still pressing. */
const slopShare = 0.3;
/** Steps of the camera's marks that can be taken back. */
const mostSteps = 60;

/** What the hand is after an event, and what that asks for. Pure. */
export function nextHand(hand: FilmHand, event: FilmEvent): HandAnswer {
  switch (event.kind) {
    case 'choose':
      return { hand: { ...hand, tool: event.tool, hold: nothing } };
    case 'down':
      return pressed(hand, event);
    case 'move':
      return { hand: { ...hand, hold: moved(hand.hold, event.at) } };
    case 'up':
      return released(hand, event.at, event.time);
    case 'drop':
      return { hand: withViews(hand, dropMark(hand.views, event.time, event.id)) };
    case 'own':
      return { hand: withViews(hand, withOwnMarks(hand.views, event.time)) };
    case 'back': {
      const views = hand.before.at(-1);
      return { hand: views === undefined ? hand : { ...hand, views, before: hand.before.slice(0, -1), hold: nothing } };
    }
    case 'forget':
      return { hand: emptyHand };
    case 'found':
      // Whoever has begun to mark anew meanwhile means that.
      return { hand: hand.views.length > 0 ? hand : { ...hand, views: event.views } };
    case 'cancel':
      return { hand: { ...hand, tool: letGo(hand.tool), hold: nothing } };
    default:
      return exhaustive(event);
  }
}

// A tool sets something new, but for who presses right on what is there already: he wants to move that.
function pressed(hand: FilmHand, { at, reach, time, handles }: Extract<FilmEvent, { kind: 'down' }>): HandAnswer {
  const { tool } = hand;
  const sets = tool.kind === 'place' || tool.kind === 'line';
  const near = sets ? undefined : nearestHandle(handles, at, tool.kind === 'man' ? reach / 2 : reach);
  const held: Held = { from: at, at, slop: slopShare * reach, isMoved: false };
  if (near?.what === 'man' && near.who !== undefined)
    return { hand: { ...hand, hold: { kind: 'man', who: near.who, ...held } } };
  if (near?.what === 'place' && near.id !== undefined)
    return { hand: { ...hand, hold: { kind: 'place', id: near.id, ...held } } };
  switch (tool.kind) {
    case 'look':
      return { hand };
    case 'place':
      return { hand: { ...withViews(hand, setPlace(hand.views, time, tool.id, at)), tool: { kind: 'look' } } };
    case 'line': {
      const { first } = tool;
      if (first === undefined) return { hand: { ...hand, tool: { ...tool, first: at } } };
      // Two presses on one spot are no line.
      if (Math.hypot(at.x - first.x, at.y - first.y) <= reach) return { hand };
      return { hand: { ...withViews(hand, setLine(hand.views, time, tool.id, [first, at])), tool: { kind: 'look' } } };
    }
    case 'man':
      return { hand: afterSetting(hand, tool.what), order: { kind: 'set', what: tool.what, at } };
    default:
      return exhaustive(tool);
  }
}

// A moment begins with its ball, and there is one: then the defenders, of whom there are several.
function afterSetting(hand: FilmHand, what: Marked['kind']): FilmHand {
  return what === 'ball' ? { ...hand, tool: { kind: 'man', what: 'defender' } } : hand;
}

function moved(hold: Hold, at: Point): Hold {
  switch (hold.kind) {
    case 'nothing':
      return hold;
    case 'man':
    case 'place':
      return { ...hold, at, isMoved: hold.isMoved || Math.hypot(at.x - hold.from.x, at.y - hold.from.y) > hold.slop };
    default:
      return exhaustive(hold);
  }
}

function released(hand: FilmHand, at: Point, time: number): HandAnswer {
  const hold = moved(hand.hold, at);
  const free: FilmHand = { ...hand, hold: nothing };
  if (hold.kind === 'nothing' || !hold.isMoved) return { hand: free };
  if (hold.kind === 'man') return { hand: free, order: { kind: 'move', who: hold.who, at: hold.at } };
  return { hand: { ...withViews(free, setPlace(hand.views, time, hold.id, hold.at)) } };
}

function withViews(hand: FilmHand, views: readonly CameraMarks[]): FilmHand {
  if (views === hand.views) return hand;
  return { ...hand, views, before: [...hand.before, hand.views].slice(-mostSteps), hold: nothing };
}

// Escape first takes the first end of a line back, then the tool.
function letGo(tool: FilmTool): FilmTool {
  return tool.kind === 'line' && tool.first !== undefined ? { ...tool, first: undefined } : { kind: 'look' };
}

function nearestHandle(handles: readonly Handle[], at: Point, reach: number): Handle | undefined {
  let best: Handle | undefined;
  let least = reach;
  for (const handle of handles) {
    const away = Math.hypot(handle.at.x - at.x, handle.at.y - at.y);
    if (away > least) continue;
    best = handle;
    least = away;
  }
  return best;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}

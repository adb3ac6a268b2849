import type { SchemeMemory, SchemeView } from './scheme.ts';

/** The six parts of the attack that a zone gives away as property. */
export const zone = { unknown: 0, lowLeft: 1, topLeft: 2, point: 3, topRight: 4, lowRight: 5, behind: 6 } as const;
export type Zone = (typeof zone)[keyof typeof zone];

/** Memory slots that `readZones` uses: a zone per attacker, then the ball's last side and the man who had it last. */
export const zoneMemory = 8;
const sideSlot = 6;
const lastBallSlot = 7;

// Borders in yards (ours; chosen so that the sets of doctrine 1a fall where its tables say who takes whom).
const topFrom = 7.25;
const lowFrom = 6.75;
const pointWithin = 3;
const pointOutside = 4;
const behindFrom = -1;
const sideMargin = 0.5;

/** Put every attacker in a zone, with hysteresis kept in the first six memory slots, in the scheme's own frame. */
export function readZones(view: SchemeView, memory: SchemeMemory): void {
  for (let i = 0; i < 6; i++) {
    memory[i] = nextZone(memory[i], view.sense * view.offense[2 * i], view.offense[2 * i + 1]);
  }
}

function nextZone(old: number, x: number, y: number): Zone {
  if (y < 0 && (y < behindFrom || old === zone.behind)) return zone.behind;
  const isTop = old === zone.lowLeft || old === zone.lowRight || old === zone.behind ? y > topFrom : y > lowFrom;
  const wasRight = old === zone.topRight || old === zone.lowRight;
  const wasLeft = old === zone.topLeft || old === zone.lowLeft;
  const border = wasRight ? -sideMargin : wasLeft ? sideMargin : 0;
  if (!isTop) return x >= border ? zone.lowRight : zone.lowLeft;
  const width = old === zone.point ? pointOutside : pointWithin;
  if (x < width && x > -width) return zone.point;
  return x > 0 ? zone.topRight : zone.topLeft;
}

/** The man the defense plays as having the ball: he, or while it is loose the last who had it, or the top man before the start. */
export function playedBall(view: SchemeView, memory: SchemeMemory): number {
  if (view.ball >= 0) memory[lastBallSlot] = view.ball + 1;
  const last = memory[lastBallSlot] - 1;
  return last >= 0 ? last : topMan(view);
}

/** The man farthest from the goal line; the lower index on a tie. */
export function topMan(view: SchemeView): number {
  let best = 0;
  for (let i = 1; i < 6; i++) if (view.offense[2 * i + 1] > view.offense[2 * best + 1]) best = i;
  return best;
}

/**
 * The side the ball is on, +1 right or -1 left: for a ball at the point or straight behind it is the side it came from.
 * Call once per assignment, after `readZones`.
 */
export function readSide(view: SchemeView, memory: SchemeMemory, ball: number): 1 | -1 {
  const here = sideOfZone(memory[ball], view.sense * view.offense[2 * ball]);
  if (here !== 0) memory[sideSlot] = here;
  else if (memory[sideSlot] === 0 && view.previousBall >= 0) {
    memory[sideSlot] = sideOfZone(memory[view.previousBall], view.sense * view.offense[2 * view.previousBall]);
  }
  return memory[sideSlot] < 0 ? -1 : 1;
}

/** A man behind or on the crease counts for a side only when this far off the axis, yards. */
const axis = 2;

function sideOfZone(of: number, x: number): -1 | 0 | 1 {
  switch (of) {
    case zone.topLeft:
      return -1;
    case zone.topRight:
      return 1;
    case zone.point:
    case zone.unknown:
      return 0;
    default:
      return x > axis ? 1 : x < -axis ? -1 : 0;
  }
}

export function isTop(of: number): boolean {
  return of === zone.topLeft || of === zone.point || of === zone.topRight;
}

export function topOn(side: 1 | -1): Zone {
  return side > 0 ? zone.topRight : zone.topLeft;
}

export function lowOn(side: 1 | -1): Zone {
  return side > 0 ? zone.lowRight : zone.lowLeft;
}

/** The uppermost perimeter man at the top of a side, other than `except`; -1 if there is none. */
export function topOf(view: SchemeView, memory: SchemeMemory, side: 1 | -1, except: number): number {
  return manIn(view, memory, topOn(side), except, side);
}

/** The uppermost perimeter man low on a side in front of the goal, other than `except`; -1 if there is none. */
export function lowOf(view: SchemeView, memory: SchemeMemory, side: 1 | -1, except: number): number {
  return manIn(view, memory, lowOn(side), except, side);
}

/** The man behind the goal, of two the one on `side`; -1 if there is none. */
export function behindOf(view: SchemeView, memory: SchemeMemory, side: 1 | -1, except: number): number {
  return manIn(view, memory, zone.behind, except, side > 0 ? -1 : 1);
}

export function pointMan(view: SchemeView, memory: SchemeMemory, except: number): number {
  return manIn(view, memory, zone.point, except, 1);
}

/** The first perimeter man in a zone, in the ring's order (+1) or against it (-1). */
export function manIn(view: SchemeView, memory: SchemeMemory, wanted: Zone, except: number, order: 1 | -1): number {
  const size = view.ringSize;
  for (let i = 0; i < size; i++) {
    const man = view.ring[order > 0 ? i : size - 1 - i];
    if (man !== except && memory[man] === wanted) return man;
  }
  return -1;
}

/**
 * Which of two choices holds, 1 for a positive `value` and -1 for a negative one, kept in memory slot `slot`
 * until the value contradicts it by more than `margin`: men who stand level must not make a defense dither.
 */
export function steady(memory: SchemeMemory, slot: number, value: number, margin: number): 1 | -1 {
  const kept = memory[slot];
  if (kept !== 0 && value * kept >= -margin) return kept > 0 ? 1 : -1;
  memory[slot] = value >= 0 ? 1 : -1;
  return value >= 0 ? 1 : -1;
}

import type { SchemeMemory, SchemeView } from './scheme.ts';
import { zoneMemory } from './zones.ts';

/*
 * Rotations: defenders keep one cyclic order round the goal, and who is on the ball says what everyone else is.
 * On a pass the ball goes to the defender who already had the receiver, and the order turns with him.
 */

// Memory of a rotation, after the zones: the defender on the ball, the man he turned for, and who has each attacker (all plus one).
const onBallSlot = zoneMemory;
const ballManSlot = zoneMemory + 1;
const ownerSlot = zoneMemory + 2;
/** Slots in use by zones and rotation together. */
export const rotationMemory = zoneMemory + 8;

/** True until the first `startRotation`: the scheme must choose who starts on the ball. */
export function isFresh(memory: SchemeMemory): boolean {
  return memory[ballManSlot] === 0;
}

export function startRotation(memory: SchemeMemory, defender: number, ball: number): void {
  memory[onBallSlot] = defender + 1;
  memory[ballManSlot] = ball + 1;
}

/** The defender on the ball. */
export function onBall(memory: SchemeMemory): number {
  return memory[onBallSlot] - 1;
}

/** The man the rotation last turned for. */
export function rotationBall(memory: SchemeMemory): number {
  return memory[ballManSlot] - 1;
}

/** Note that `defender` would take `man` if he were thrown to. */
export function own(memory: SchemeMemory, man: number, defender: number): void {
  if (man >= 0) memory[ownerSlot + man] = defender + 1;
}

/** The defender who has `man`; -1 if he is open. */
export function ownerOf(memory: SchemeMemory, man: number): number {
  return memory[ownerSlot + man] - 1;
}

/** Forget who has whom, before the scheme notes it anew. */
export function disown(memory: SchemeMemory): void {
  for (let i = 0; i < 6; i++) memory[ownerSlot + i] = 0;
}

/** Turn for a ball that has come to another man: his owner plays him, an open man the nearest of the order. True if it turned. */
export function turn(view: SchemeView, memory: SchemeMemory, order: readonly number[], ball: number): boolean {
  if (memory[ballManSlot] === ball + 1) return false;
  const owner = ownerOf(memory, ball);
  startRotation(memory, owner >= 0 ? owner : nearestOf(view, order, ball), ball);
  return true;
}

/** Index of a defender in a cyclic order; 0 if he is not in it. */
export function indexIn(order: readonly number[], defender: number): number {
  for (let i = 0; i < order.length; i++) if (order[i] === defender) return i;
  return 0;
}

/** The defender of the order whose home is nearest the ball. */
export function nearestHome(view: SchemeView, order: readonly number[], home: readonly number[], ball: number): number {
  const x = view.sense * view.offense[2 * ball];
  const y = view.offense[2 * ball + 1];
  let best = -1;
  let bestSquare = Number.POSITIVE_INFINITY;
  // From the end, so that on a tie the right one of a pair that is listed left to right counts.
  for (let i = order.length - 1; i >= 0; i--) {
    const dx = home[2 * order[i]] - x;
    const dy = home[2 * order[i] + 1] - y;
    const square = dx * dx + dy * dy;
    if (square < bestSquare) {
      best = order[i];
      bestSquare = square;
    }
  }
  return best;
}

function nearestOf(view: SchemeView, order: readonly number[], ball: number): number {
  let best = order[0];
  let bestSquare = Number.POSITIVE_INFINITY;
  for (let i = order.length - 1; i >= 0; i--) {
    const dx = view.defense[2 * order[i]] - view.offense[2 * ball];
    const dy = view.defense[2 * order[i] + 1] - view.offense[2 * ball + 1];
    const square = dx * dx + dy * dy;
    if (square < bestSquare) {
      best = order[i];
      bestSquare = square;
    }
  }
  return best;
}

/** Of two men the second must be this much nearer to be taken for the nearer one, yards. */
const nearerMargin = 1;
/** A man behind the goal can't shoot: he counts as this much farther away, yards. */
const behindDiscount = 4;

/** The perimeter man whom `defender` had, of two the one nearer the ball, of equals the one on `side`; his last ball failing that; else -1. */
export function ownedBy(view: SchemeView, memory: SchemeMemory, defender: number, ball: number, side: 1 | -1): number {
  let best = -1;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (let i = 0; i < view.ringSize; i++) {
    const man = view.ring[side < 0 ? i : view.ringSize - 1 - i];
    if (ownerOf(memory, man) !== defender) continue;
    const dx = view.offense[2 * man] - view.offense[2 * ball];
    const dy = view.offense[2 * man + 1] - view.offense[2 * ball + 1];
    const distance = Math.sqrt(dx * dx + dy * dy) + (view.offense[2 * man + 1] < 0 ? behindDiscount : 0);
    if (distance < bestDistance - nearerMargin) {
      best = man;
      bestDistance = distance;
    }
  }
  const last = rotationBall(memory);
  if (best < 0 && onBall(memory) === defender && view.inside[last] === 0) return last;
  return best;
}

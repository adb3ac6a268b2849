import type { SchemeMemory, SchemeView } from './scheme.ts';

/*
 * Rotations: defenders keep one cyclic order round the goal, and who is on the ball says what everyone else is.
 * On a pass the ball goes to the defender who already had the receiver, and the order turns with him.
 */

/** Memory of a rotation: index in the cyclic order of the defender on the ball, the ball's man, and who has each attacker. */
export const rotationMemory = 8;
const ballIndexSlot = 0;
const ballManSlot = 1;
const ownerSlot = 2;

/** True until the first `turn`: the scheme must choose who starts on the ball. */
export function isFresh(memory: SchemeMemory): boolean {
  return memory[ballManSlot] === 0;
}

export function startRotation(memory: SchemeMemory, ballIndex: number, ball: number): void {
  memory[ballIndexSlot] = ballIndex;
  memory[ballManSlot] = ball + 1;
}

/** Index in the cyclic order of the defender on the ball. */
export function ballIndex(memory: SchemeMemory): number {
  return memory[ballIndexSlot];
}

/** The man the rotation last turned for. */
export function rotationBall(memory: SchemeMemory): number {
  return memory[ballManSlot] - 1;
}

/** Note that the defender with index `index` in the order would take `man` if he were thrown to. */
export function own(memory: SchemeMemory, man: number, index: number): void {
  if (man >= 0) memory[ownerSlot + man] = index + 1;
}

/** Forget who has whom, before the scheme notes it anew. */
export function disown(memory: SchemeMemory): void {
  for (let i = 0; i < 6; i++) memory[ownerSlot + i] = 0;
}

/** Turn for a ball that has come to another man: his owner plays him; of an open man the nearest of the order. */
export function turn(view: SchemeView, memory: SchemeMemory, order: readonly number[], ball: number): void {
  if (memory[ballManSlot] === ball + 1) return;
  const owner = memory[ownerSlot + ball] - 1;
  memory[ballIndexSlot] = owner >= 0 ? owner : nearestOf(view, order, ball);
  memory[ballManSlot] = ball + 1;
}

/** Move the ball to the next defender of the order without a pass: a carrier handed on. */
export function handOn(memory: SchemeMemory, steps: 1 | -1, size: number): void {
  memory[ballIndexSlot] = (memory[ballIndexSlot] + steps + size) % size;
}

/** Index in `order` of the defender whose home is nearest the ball; the first on a tie. */
export function nearestHome(view: SchemeView, order: readonly number[], home: readonly number[], ball: number): number {
  const x = view.sense * view.offense[2 * ball];
  const y = view.offense[2 * ball + 1];
  let best = 0;
  let bestSquare = Number.POSITIVE_INFINITY;
  // From the end, so that on a tie the right one of a pair that is listed left to right counts.
  for (let i = order.length - 1; i >= 0; i--) {
    const dx = home[2 * order[i]] - x;
    const dy = home[2 * order[i] + 1] - y;
    const square = dx * dx + dy * dy;
    if (square < bestSquare) {
      best = i;
      bestSquare = square;
    }
  }
  return best;
}

function nearestOf(view: SchemeView, order: readonly number[], ball: number): number {
  let best = 0;
  let bestSquare = Number.POSITIVE_INFINITY;
  for (let i = order.length - 1; i >= 0; i--) {
    const dx = view.defense[2 * order[i]] - view.offense[2 * ball];
    const dy = view.defense[2 * order[i] + 1] - view.offense[2 * ball + 1];
    const square = dx * dx + dy * dy;
    if (square < bestSquare) {
      best = i;
      bestSquare = square;
    }
  }
  return best;
}

import type { SchemeMemory, SchemeView } from './scheme.ts';

/** A crease man must be this much nearer the ball before he becomes "the near one" in the other's place, yards. */
const nearMargin = 2;

/** The crease man nearest the ball, kept in memory slot `slot` until another is clearly nearer; -1 with an empty crease. */
export function nearCrease(view: SchemeView, memory: SchemeMemory, slot: number, ball: number): number {
  let best = -1;
  let bestDistance = Number.POSITIVE_INFINITY;
  const kept = memory[slot] - 1;
  // From right to left, so that of two equally near the right one counts.
  for (let i = view.creaseSize - 1; i >= 0; i--) {
    const man = view.crease[i];
    const distance = ballDistance(view, man, ball) - (man === kept ? nearMargin : 0);
    if (distance < bestDistance) {
      best = man;
      bestDistance = distance;
    }
  }
  memory[slot] = best + 1;
  return best;
}

/** The first crease man other than `near`; -1 if there is none. */
export function otherCrease(view: SchemeView, near: number): number {
  for (let i = view.creaseSize - 1; i >= 0; i--) if (view.crease[i] !== near) return view.crease[i];
  return -1;
}

/**
 * The man a locked crease defender has, kept in memory slot `slot`; -1 if there is none.
 *
 * He follows his man out of the crease while nobody takes the man's place there, and lets him go when another crease man comes in.
 */
export function lockedCrease(view: SchemeView, memory: SchemeMemory, slot: number, ball: number): number {
  const kept = memory[slot] - 1;
  if (kept >= 0 && (view.inside[kept] === 1 || view.creaseSize === 0)) return kept;
  memory[slot] = 0;
  return nearCrease(view, memory, slot, ball);
}

function ballDistance(view: SchemeView, man: number, ball: number): number {
  const dx = view.offense[2 * man] - view.offense[2 * ball];
  const dy = view.offense[2 * man + 1] - view.offense[2 * ball + 1];
  return Math.sqrt(dx * dx + dy * dy);
}

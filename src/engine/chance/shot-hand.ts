import type { Athlete } from '../people/athlete.ts';

/** Near the middle both hands are at home. Yards. */
const middleHalfWidth = 2.5;

/** A right-hander wants to shoot from the offense's left, a left-hander from its right: the sign of x on his wrong side, 0 for none. */
export function offSide({ hand }: Athlete): 1 | 0 | -1 {
  return hand === 'both' ? 0 : hand === 'right' ? 1 : -1;
}

/** Whether a man whose wrong side is `side` shoots with his off hand from `x`. */
export function isOffHand(side: number, x: number): boolean {
  return side * x > middleHalfWidth;
}

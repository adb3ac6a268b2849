import { createShotQuery, type ShotQuery } from '../ball/shot-table.ts';

/**
 * A shot from a place some time from now, as a carrier reckons with it.
 *
 * Asked and answered in fields, because a number that is handed to a function, or comes back from one, is put on the heap when the
 * function is not inlined, and these questions are asked several times a step.
 */
export interface ShotAhead {
  /** The place and what is known of the shot so far. */
  readonly shot: ShotQuery;
  /** When it is let go, seconds from now. */
  seconds: number;
  /** Room beyond this does not count, yards; and the room that will be left. */
  most: number;
  gap: number;
  /** Seconds of penalty left when it is let go, and the worth that it must beat to count; 0 when it counts in any case. */
  rest: number;
  floor: number;
}

export function createShotAhead(): ShotAhead {
  return { shot: createShotQuery(), seconds: 0.5, most: 0.5, gap: 0.5, rest: 0.5, floor: 0.5 };
}

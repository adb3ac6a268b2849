/**
 * What a scheme asks of one defender now. The numbers are stored in typed arrays,
 * so the kinds are small integers; `dutyNames` is what people read.
 *
 * `a` and `b` are offense indices 0 to 5 (or -1); `x`, `y` are yards. Beside place and pipe, (x, y) means: for ball the pipe he waits at
 * while the carrier is behind the goal, for lane the place near which he takes the lane. A place may name in `a` and `b` whom it watches,
 * a lane in `b` the man at the defender's back, a lock in `b` the man he cheats to.
 */
export const duty = {
  /** Hold the place (x, y). */
  place: 0,
  /** Play the carrier `a`: meet him, stick length off, between him and the goal. */
  ball: 1,
  /** Play the man `a`: in his area, goal side, ready to go when he is thrown to. */
  man: 2,
  /** Split `a` and `b`: stand so that either can be reached, sagging to the goal as `sag`. */
  split: 3,
  /** Stand in the lane from the ball to `a`, stick up. */
  lane: 4,
  /** Stay with `a` wherever he goes, between him and the ball: a lock or a shutoff. */
  lock: 5,
  /** Guard the near or far pipe side against `a` at the doorstep: place (x, y), but go to `a` when he comes inside. */
  pipe: 6,
  /** Front the crease man `a`: ball side of him, stick in the feed lane. */
  front: 7,
} as const;
export type DutyKind = (typeof duty)[keyof typeof duty];

export const dutyNames: readonly string[] = ['place', 'ball', 'man', 'split', 'lane', 'lock', 'pipe', 'front'];

/** One duty per defender, written in place by a scheme. Arrays have one entry per defender. */
export interface DutyBoard {
  readonly kind: Int8Array;
  readonly a: Int8Array;
  readonly b: Int8Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export function createDutyBoard(defenders: number): DutyBoard {
  return {
    kind: new Int8Array(defenders),
    a: new Int8Array(defenders).fill(-1),
    b: new Int8Array(defenders).fill(-1),
    x: new Float64Array(defenders),
    y: new Float64Array(defenders),
  };
}

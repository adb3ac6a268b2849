/** Kinds of random event: part of every draw's address, so the order and the numbers are fixed for good. */
export const drawKind = {
  passPlacement: 0,
  passFate: 1,
  shotPlacement: 2,
  shotFate: 3,
  looseBall: 4,
  strip: 5,
  bite: 6,
  dutyChange: 7,
  start: 8,
  faceOff: 9,
  /** No event of a trial: the luck of a future that begins in the middle of one (`reads/future.ts`). */
  future: 10,
} as const;
export type DrawKind = (typeof drawKind)[keyof typeof drawKind];
export const drawKinds = 11;

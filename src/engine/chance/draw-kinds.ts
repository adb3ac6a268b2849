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
} as const;
export type DrawKind = (typeof drawKind)[keyof typeof drawKind];
export const drawKinds = 10;

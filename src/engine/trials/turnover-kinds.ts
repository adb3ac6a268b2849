import type { TurnoverKind } from '../chance/trace.ts';

/** Every way to lose the ball, in the order in which reports list them. */
export const turnoverKinds: readonly TurnoverKind[] = [
  'intercepted',
  'deflected',
  'badPass',
  'dropped',
  'stripped',
  'saved',
  'blocked',
  'wide',
  'rebound',
  'shotClock',
  'outOfBounds',
  'failedClear',
];

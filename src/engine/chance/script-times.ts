import { defaultChanceParameters } from './parameters.ts';
import { stepSeconds } from './state.ts';
import {
  arrivalRadius,
  carryEffort,
  fakeSeconds,
  lastStride,
  runPatience,
  sprint,
  waypointRadius,
  windUpShare,
} from './timing.ts';

/** How a chance times what its script tells the men, for who reckons a script by hand. Seconds, yards, shares. */
export const scriptTimes = {
  /** Length of a step: nothing happens between two of them. */
  step: stepSeconds,
  /** Time between two looks round by a man who holds the ball. */
  lookEvery: defaultChanceParameters.decideEvery,
  /** Share of a passer's catch-to-release time that is the throw itself; before it he gathers the ball. */
  windUpShare,
  /** A fake takes this long. */
  fake: fakeSeconds,
  /** A man who is to throw at the end of a carry may throw this far before it. */
  lastStride,
  /** A way's bend counts as passed, and its end as reached, within these distances. */
  waypointRadius,
  arrivalRadius,
  /** Share of his top speed at which a man carries the ball, and runs without it. */
  carryEffort,
  runEffort: sprint,
  /** A man who waits until his place is open goes after this at the latest; who picks or seals stands a second longer. */
  patience: runPatience,
} as const;

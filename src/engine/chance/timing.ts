// By what the men carry out an order. Apart from the code that moves them: who reckons a script by hand needs these and no simulation.

/** A waypoint counts as passed within this distance, so that runners round their corners. Yards. */
export const waypointRadius = 0.7;
/** The end of a run counts as reached within this distance. Yards. */
export const arrivalRadius = 0.5;
/** Yards before the end of a carry at which the pass may leave. */
export const lastStride = 1.5;
/** Share of top speed at which men carry, and run their cuts. */
export const carryEffort = 0.8;
export const sprint = 1;
/** A waiting runner goes at the latest after this, so that a play never stands still for one man. Seconds. */
export const runPatience = 2;
/** Of a passer's catch-to-release time this share is the throw itself; the rest is the gather that he has already done. */
export const windUpShare = 0.5;
/** The fake itself takes the carrier this long. Seconds. */
export const fakeSeconds = 0.35;

import type { PlayEntry } from '../schema.ts';

/** The id of every play that `setAlone` makes: two plays that stand and begin alike have one set alone. */
export const setAloneId = 'set-alone';

/**
 * The set of a play without the play: the same men in the same places, the same restart and the same man with the ball first, and nothing
 * that was written after that. They swing the ball and take what opens.
 *
 * A play must have one step, so one is left that asks nobody for anything: the ball goes round to see the defense as it does before every
 * play, comes back to the man who would begin, and after two seconds in which he looks the unit goes on without a script. The reset is
 * `free`, because with `again` the unit would come back to the empty step over and over, and wait for it: a set that is made to stand still
 * is no measure for a play. Reads go with the steps, and so do the steps of the last ten seconds; where the men stand is what is left. Until the play's
 * first step both are the same to the last bit, so with one seed they share their luck. Needs of the spots come from the set, so the best six are the play's.
 */
export function setAlone({ set, spots, start }: PlayEntry): PlayEntry {
  return {
    id: setAloneId,
    name: 'The set alone',
    set,
    ...(spots !== undefined && { spots }),
    start,
    beats: [{ id: 'swing', on: 'start', do: [] }],
    reset: { ball: start.ball, then: 'free' },
  };
}

import type { Play, Read } from '../offense/play.ts';

/** A play that teaches one carrier (offense index) these reads in place of those that it has for him; all others stay as they are. */
export function taughtPlay(play: Play, carrier: number, reads: readonly Read[]): Play {
  const by = play.spots[carrier].id;
  return { ...play, reads: [...play.reads.filter((read) => read.carrier !== by), ...reads] };
}

import { useEffect } from 'react';
import type { WatchedTrial } from '../play/screen-state.ts';
import type { Player } from '../playback/player.ts';
import { seek } from '../playback/playhead.ts';

/** Plays a trial that was asked for from where there is something to see, and stands still when it is there. */
export function useWatchedTrial(player: Player, trial: WatchedTrial | undefined): void {
  useEffect(() => {
    if (trial === undefined) return undefined;
    const { from, until } = trial;
    player.change((head) => ({ ...seek(head, from), running: true }));
    if (until === undefined) return undefined;
    const stop = player.onFrame(({ time, running }) => {
      if (!running || time < until) return;
      stop();
      player.change((head) => ({ ...seek(head, until), running: false }));
    });
    return stop;
  }, [player, trial]);
}

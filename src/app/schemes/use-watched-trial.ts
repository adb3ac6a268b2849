import { useEffect } from 'react';
import type { WatchedTrial } from '../play/screen-state.ts';
import type { Player } from '../playback/player.ts';
import { seek } from '../playback/playhead.ts';
import type { ShownTrial } from './watch-field.tsx';

/** Plays a trial that was asked for, once it is there, from where there is something to see, and stands still when it is seen. */
export function useWatchedTrial(player: Player, trial: WatchedTrial | undefined, shown: ShownTrial | undefined): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the trial is played anew when the picture of it comes
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
  }, [player, trial, shown]);
}

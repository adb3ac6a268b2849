import { useSyncExternalStore } from 'react';
import type { Player } from './player.ts';

/** Whether the player runs, how fast, and whether it loops: what buttons show. Quiet while it only moves. */
export function usePlaying(player: Player): {
  readonly running: boolean;
  readonly speed: number;
  readonly loops: boolean;
} {
  const running = useSyncExternalStore(player.onChange, () => player.head().running);
  const speed = useSyncExternalStore(player.onChange, () => player.head().speed);
  const loops = useSyncExternalStore(player.onChange, () => player.head().loops);
  return { running, speed, loops };
}

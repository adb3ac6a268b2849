import { useEffect } from 'react';
import type { Player } from './player.ts';

/** Holds the play still as long as a condition stands; never longer than the component that asks for it. */
export function useHeldWhile(player: Player, condition: boolean): void {
  useEffect(() => {
    if (!condition) return undefined;
    player.hold(true);
    return () => player.hold(false);
  }, [player, condition]);
}

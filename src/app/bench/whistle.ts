import { tap } from './bench-store.ts';
import type { GameNow } from './use-game.ts';

/** Play is whistled dead: the clock stops now, and not when what was called has been tapped, unless it runs through whistles. */
export function whistle({ game, state }: Pick<GameNow, 'game' | 'state'>): void {
  if (state.clock.running && !game.settings.runningTime) tap({ kind: 'clock', does: 'stop' });
}

import type { WatchedPlay } from '../engine/index.ts';

/** What was seen in one run of trials, from its parts in their order. Every part names the same throws; without a part there are none to name. */
export function joinWatched(parts: readonly WatchedPlay[]): WatchedPlay {
  return {
    throws: parts[0]?.throws ?? [],
    seen: parts.flatMap(({ seen }) => seen),
    windows: parts.flatMap(({ windows }) => windows),
  };
}

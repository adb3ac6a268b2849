import { useMemo } from 'react';
import { type Chance, type Playbook, toEnginePlay } from '../../playbook/index.ts';
import { readPlayOf } from '../play/play-reading.ts';
import { useFilm } from './film-state.ts';
import type { SetOnFilm } from './use-belief.ts';

/** The play whose set is taken to be on the film, and those to choose from. */
export function useSetOnFilm(playbook: Playbook) {
  const wanted = useFilm((state) => state.play);
  return useMemo(() => {
    const plays = playbook.plays.filter(({ archived }) => archived !== true);
    const entry = plays.find(({ id }) => id === wanted) ?? plays[0];
    const play = entry === undefined ? undefined : readPlayOf(playbook, entry).play;
    if (entry === undefined || play === undefined) return undefined;
    return {
      id: entry.id,
      spots: play.spots,
      ball: play.start.ball,
      choices: plays.map(({ id, name, set }) => ({ value: id, text: `${name} (${set})` })),
    };
  }, [playbook, wanted]);
}

/** The set of each man-up: that of the call, run from its side, where it is known; else the one that is chosen. */
export function useSetOfChance(
  playbook: Playbook,
  chosen: string | undefined,
): (chance: Chance) => SetOnFilm | undefined {
  return useMemo(() => {
    const known = new Map<string, SetOnFilm | undefined>();
    const read = (id: string | undefined, side: 'left' | 'right'): SetOnFilm | undefined => {
      const entry = playbook.plays.find((one) => one.id === id);
      if (entry === undefined) return undefined;
      const key = `${side} ${entry.id}`;
      // A play that cannot be drawn has no set.
      if (!known.has(key)) {
        const isDrawn = readPlayOf(playbook, entry).play !== undefined;
        const play = isDrawn ? toEnginePlay(playbook, entry.id, side) : undefined;
        known.set(key, play && { spots: play.spots, restart: play.start.restart });
      }
      return known.get(key);
    };
    return ({ call, fromSide = 'right' }) => read(call, fromSide) ?? read(chosen, fromSide);
  }, [playbook, chosen]);
}

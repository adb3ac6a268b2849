import { useEffect, useRef } from 'react';
import { recallFilm, rememberFilm } from './film-memory.ts';
import { useFilm } from './film-state.ts';

/** Finds again what was marked of a film when it is opened, and keeps what is marked. */
export function useFilmMemory(opponent: string): void {
  const { film, hand, begins, change, send } = useFilm();
  const key = film?.key;
  const name = film?.name ?? '';
  const { views } = hand;
  /** The film whose memory was looked up: nothing is kept before, or it would be empty. */
  const known = useRef<string>(undefined);
  useEffect(() => {
    if (key === undefined) return undefined;
    let isWanted = true;
    void recallFilm(key).then((memory) => {
      if (!isWanted) return;
      known.current = key;
      if (memory === undefined) return;
      send({ kind: 'found', views: memory.views });
      change({ begins: { ...memory.begins, ...useFilm.getState().begins } });
    });
    return () => {
      isWanted = false;
    };
  }, [key, change, send]);
  useEffect(() => {
    if (key === undefined || known.current !== key) return;
    if (views.length === 0 && Object.keys(begins).length === 0) return;
    void rememberFilm(key, { views, begins, opponent, name, at: Date.now() });
  }, [key, views, begins, opponent, name]);
}

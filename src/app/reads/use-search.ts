import { useCallback, useEffect, useRef } from 'react';
import type { TrialPool } from '../../worker/index.ts';
import { useDesk } from '../shell/desk.tsx';

/** A search of one kind: how it is done, and where it is kept what it is at and what it found. Made once, outside of what is drawn. */
export interface SearchKind<Asked, News> {
  readonly run: (pool: TrialPool, asked: Asked, tell: (news: News) => void, signal: AbortSignal) => Promise<void>;
  readonly change: (news: News | { readonly search: { readonly kind: 'idle' | 'stopped' } }) => void;
}

export interface Search<Asked> {
  /** Begins anew; what was on its way is dropped. */
  readonly find: (asked: Asked) => void;
  readonly stop: () => void;
}

/** A search on the threads of the desk. Whoever leaves the place or asks something else (another `text`) stops it. */
export function useSearch<Asked, News>(kind: SearchKind<Asked, News>, text: string | undefined): Search<Asked> {
  const { threads } = useDesk();
  const running = useRef<AbortController>(undefined);
  const stop = useCallback(() => {
    if (running.current === undefined) return;
    running.current.abort();
    running.current = undefined;
    kind.change({ search: { kind: 'stopped' } });
  }, [kind]);
  const find = useCallback(
    (asked: Asked) => {
      running.current?.abort();
      const controller = new AbortController();
      running.current = controller;
      void kind.run(threads, asked, kind.change, controller.signal).then(() => {
        if (running.current === controller) running.current = undefined;
      });
    },
    [kind, threads],
  );
  useEffect(() => stop, [stop]);
  const asked = useRef(text);
  useEffect(() => {
    if (asked.current === text) return;
    asked.current = text;
    stop();
    // What was said of the question before is not true of this one.
    kind.change({ search: { kind: 'idle' } });
  }, [kind, stop, text]);
  return { find, stop };
}

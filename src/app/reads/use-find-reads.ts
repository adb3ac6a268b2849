import { useCallback, useEffect, useRef } from 'react';
import { useDesk } from '../shell/desk.tsx';
import { useReads } from './reads-state.ts';
import { type AskedReads, searchReads } from './search-reads.ts';

export interface FindReads {
  /** Begins anew; what was on its way is dropped. */
  readonly find: (asked: AskedReads) => void;
  readonly stop: () => void;
}

/** The search for a man's reads, round after round. Whoever leaves the place or asks something else (another `text`) stops it. */
export function useFindReads(text: string | undefined): FindReads {
  const { threads } = useDesk();
  const running = useRef<AbortController>(undefined);
  const stop = useCallback(() => {
    if (running.current === undefined) return;
    running.current.abort();
    running.current = undefined;
    useReads.getState().change({ search: { kind: 'stopped' } });
  }, []);
  const find = useCallback(
    (asked: AskedReads) => {
      running.current?.abort();
      const controller = new AbortController();
      running.current = controller;
      void searchReads(threads, asked, useReads.getState().change, controller.signal).then(() => {
        if (running.current === controller) running.current = undefined;
      });
    },
    [threads],
  );
  useEffect(() => stop, [stop]);
  const asked = useRef(text);
  useEffect(() => {
    if (asked.current === text) return;
    asked.current = text;
    stop();
    // What was said of the question before is not true of this one.
    useReads.getState().change({ search: { kind: 'idle' } });
  }, [stop, text]);
  return { find, stop };
}

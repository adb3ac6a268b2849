import { useCallback, useEffect, useRef } from 'react';
import { useDesk } from '../shell/desk.tsx';
import { usePractice } from './practice-state.ts';
import { type AskedPractice, searchPractice } from './search-practice.ts';

export interface FindPractice {
  /** Begins anew; what was on its way is dropped. */
  readonly find: (asked: AskedPractice) => void;
  readonly stop: () => void;
}

/** The search for what practice is worth. Whoever leaves the place or asks something else (another `text`) stops it. */
export function useFindPractice(text: string | undefined): FindPractice {
  const { threads } = useDesk();
  const running = useRef<AbortController>(undefined);
  const stop = useCallback(() => {
    if (running.current === undefined) return;
    running.current.abort();
    running.current = undefined;
    usePractice.getState().change({ search: { kind: 'stopped' } });
  }, []);
  const find = useCallback(
    (asked: AskedPractice) => {
      running.current?.abort();
      const controller = new AbortController();
      running.current = controller;
      void searchPractice(threads, asked, usePractice.getState().change, controller.signal).then(() => {
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
    usePractice.getState().change({ search: { kind: 'idle' } });
  }, [stop, text]);
  return { find, stop };
}

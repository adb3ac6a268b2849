import { useCallback } from 'react';
import type { Playbook, PlaybookEdit } from '../../playbook/index.ts';
import { goTo } from '../shell/place.ts';
import { useOpponents } from './opponents-state.ts';
import { useApply } from './use-apply.ts';

/** Deletes what the page is about, goes to the page of all, and tells there that it can be had back. */
export function useDelete(): (name: string, edit: (playbook: Playbook) => PlaybookEdit) => void {
  const apply = useApply();
  const tell = useOpponents((state) => state.change);
  return useCallback(
    (name, edit) => {
      const gone = apply(`delete ${name}`, edit);
      if (gone === undefined) return;
      const text = [`${name} is deleted; undo brings it back.`, ...gone.also].join(' ');
      tell({ notice: { text, tone: 'said', page: undefined } });
      goTo({ kind: 'opponents', opponent: undefined });
    },
    [apply, tell],
  );
}

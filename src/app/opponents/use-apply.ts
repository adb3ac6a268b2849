import { useCallback } from 'react';
import type { EditedPlaybook, Playbook, PlaybookEdit } from '../../playbook/index.ts';
import { useDesk } from '../shell/desk.tsx';
import { placeOf } from '../shell/place.ts';
import { useOpponents } from './opponents-state.ts';

/** Does an edit as one step of undo; with `joins`, edits of the same name that follow each other are one. */
export type Apply = (
  label: string,
  edit: (playbook: Playbook) => PlaybookEdit,
  joins?: string,
) => EditedPlaybook | undefined;

/** Edits of this place: what was refused, or changed or lost with it, is told. Gives what was made, or undefined. */
export function useApply(): Apply {
  const { store } = useDesk();
  const tell = useOpponents((state) => state.change);
  return useCallback(
    (label, edit, joins) => {
      const result = edit(store.playbook);
      if (result.kind === 'refused') {
        tell({ notice: { text: result.reason, tone: 'refused', page: pageNow() } });
        return undefined;
      }
      // What is told of something new is told where that is looked at.
      const text = result.also.join(' ');
      tell({ notice: text === '' ? undefined : { text, tone: 'said', page: result.id ?? pageNow() } });
      store.edit(label, () => result.playbook, joins === undefined ? {} : { joins });
      return result;
    },
    [store, tell],
  );
}

function pageNow(): string | undefined {
  const place = placeOf(window.location.hash);
  return place.kind === 'opponents' ? place.opponent : undefined;
}

/** One edit and then another, if the first was not refused; what both tell is told together. */
export function andThen(first: PlaybookEdit, second: (playbook: Playbook) => PlaybookEdit): PlaybookEdit {
  if (first.kind === 'refused') return first;
  const next = second(first.playbook);
  if (next.kind === 'refused') return next;
  const id = next.id ?? first.id;
  return { ...next, also: [...first.also, ...next.also], ...(id !== undefined && { id }) };
}

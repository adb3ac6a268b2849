import { createContext, useContext, useRef, useSyncExternalStore } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import type { PlaybookStore } from './playbook-store.ts';
import type { SaveStatus } from './save-status.ts';
import type { StepLabels } from './undo-steps.ts';

/** The store of the page: `<PlaybookStoreContext value={store}>`. */
export const PlaybookStoreContext = createContext<PlaybookStore | undefined>(undefined);

/** The store itself, for its edits. Throws TypeError outside a `PlaybookStoreContext`. */
export function usePlaybookStore(): PlaybookStore {
  const store = useContext(PlaybookStoreContext);
  if (store === undefined) throw new TypeError('missing PlaybookStoreContext round this component');
  return store;
}

/**
 * A part of the playbook; the component is drawn anew when that part is another object or value. `select` is asked once a change of the playbook
 * (and once a drawing, when it is written in place), so it may build something new.
 */
export function usePlaybook<T>(select: (playbook: Playbook) => T): T {
  return usePart((store) => store.playbook, select);
}

export function useSaveStatus(): SaveStatus {
  return usePart((store) => store.status, whole);
}

/** What undo and redo would do. */
export function useStepLabels(): StepLabels {
  return usePart((store) => store.steps, whole);
}

function whole<T>(value: T): T {
  return value;
}

function usePart<S, T>(read: (store: PlaybookStore) => S, select: (source: S) => T): T {
  const store = usePlaybookStore();
  const last = useRef<{ readonly source: S; readonly select: (source: S) => T; readonly part: T } | undefined>(
    undefined,
  );
  // React asks more than once a drawing and wants the same object each time.
  const get = (): T => {
    const source = read(store);
    const known = last.current;
    if (known !== undefined && known.source === source && known.select === select) return known.part;
    const part = select(source);
    last.current = { source, select, part };
    return part;
  };
  return useSyncExternalStore(store.subscribe, get, get);
}

import { createContext, type ReactNode, useContext, useSyncExternalStore } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import type { TrialPool } from '../../worker/index.ts';
import type { Answers } from '../answers/create-answers.ts';
import type { PlaybookStore } from '../document/playbook-store.ts';
import type { SaveStatus } from '../document/save-status.ts';
import type { OverwrittenStep, StepLabels } from '../document/undo-steps.ts';
import type { Player } from '../playback/player.ts';

/** What every place works with: the document, the simulation's answers, its threads, and the clock. Made once, in main.tsx. */
export interface Desk {
  readonly store: PlaybookStore;
  readonly answers: Answers;
  /** For questions that `answers` does not put: those that a place asks once, when somebody wants to know. */
  readonly threads: TrialPool;
  readonly player: Player;
}

const DeskContext = createContext<Desk | undefined>(undefined);

export function DeskProvider({ desk, children }: { readonly desk: Desk; readonly children: ReactNode }): ReactNode {
  return <DeskContext value={desk}>{children}</DeskContext>;
}

/** Throws a TypeError outside of a `DeskProvider`. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new TypeError('missing DeskProvider above this component');
  return desk;
}

/** The playbook as it stands now; it may be unfinished. What did not change keeps its identity. */
export function usePlaybook(): Playbook {
  const { store } = useDesk();
  return useSyncExternalStore(store.subscribe, () => store.playbook);
}

export function useSaveStatus(): SaveStatus {
  const { store } = useDesk();
  return useSyncExternalStore(store.subscribe, () => store.status);
}

/** What undo and redo would do now. */
export function useStepLabels(): StepLabels {
  const { store } = useDesk();
  return useSyncExternalStore(store.subscribe, () => store.steps);
}

/** The step that the last undo or redo could not move, because another tab has changed the same since. */
export function useOverwrittenStep(): OverwrittenStep | undefined {
  const { store } = useDesk();
  return useSyncExternalStore(store.subscribe, () => store.overwritten);
}

import { create } from 'zustand';
import type { Notice } from '../play/screen-state.ts';

/** What the field beside a grid shows: where the duties put everybody, where each is at home, or the play against it. */
export type FieldMode = 'duties' | 'homes' | 'play';

interface OpponentsState {
  readonly notice: Notice | undefined;
  /** The play that own schemes are tried with; the first of the playbook when there is none of this id. */
  readonly play: string;
  readonly mode: FieldMode;
  readonly change: (part: Partial<Omit<OpponentsState, 'change'>>) => void;
}

/** The state of this place that is no part of the document. */
export const useOpponents = create<OpponentsState>((set) => ({
  notice: undefined,
  play: '',
  mode: 'duties',
  change: (part) => set(part),
}));

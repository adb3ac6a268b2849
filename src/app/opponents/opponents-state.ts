import { create } from 'zustand';

/** What the field beside a grid shows: where the duties put everybody, where each is at home, or the play against it. */
export type FieldMode = 'duties' | 'homes' | 'play';

/** What the coach is told once: what was refused, what else an edit changed. */
export interface PageNotice {
  readonly text: string;
  readonly tone: 'said' | 'refused';
  /** The page on which it is told: the id of an opponent or an own scheme; undefined for the page of all. */
  readonly page: string | undefined;
}

interface OpponentsState {
  readonly notice: PageNotice | undefined;
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

import { create } from 'zustand';
import type { PractisingMan, SkillWorths } from '../../worker/index.ts';

/** What practice was found to be worth, and of what. */
export interface FoundPractice {
  readonly worths: SkillWorths;
  /** The six by whom the play was played. */
  readonly men: readonly PractisingMan[];
  /** The play's id. */
  readonly play: string;
  /** Play, team and schemes that it was found for, as text: another text is another question. */
  readonly question: string;
}

/** What the search is at. */
export type PracticeSearch =
  | { readonly kind: 'idle' }
  /** Requests that are answered, of all that are planned at most. */
  | { readonly kind: 'finding'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string };

interface PracticeState {
  readonly search: PracticeSearch;
  /** Kept while the coach is elsewhere. */
  readonly found: FoundPractice | undefined;
  readonly change: (part: Partial<Omit<PracticeState, 'change'>>) => void;
}

/** What is known of practice, which is no part of the document. */
export const usePractice = create<PracticeState>((set) => ({
  search: { kind: 'idle' },
  found: undefined,
  change: (part) => set(part),
}));

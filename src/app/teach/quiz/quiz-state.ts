import { create } from 'zustand';
import type { MadeQuiz } from '../../../teach/index.ts';

/** What the making of a quiz is at. */
export type QuizSearch =
  | { readonly kind: 'idle' }
  /** Requests that are answered, of all that are planned so far. */
  | { readonly kind: 'finding'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string };

/** A quiz that was made, and by which question. */
export interface FoundQuiz {
  readonly question: string;
  readonly made: MadeQuiz;
}

/** Against what a quiz asks. What he chose may not be there any more. */
export type QuizAgainst =
  | { readonly kind: 'all' | 'onPlay' }
  | { readonly kind: 'opponent'; readonly opponent: string }
  | { readonly kind: 'scheme'; readonly scheme: string };

interface QuizState {
  /** The man whose reads are asked; the whole unit's when undefined or not in the play. */
  readonly spot: string | undefined;
  readonly against: QuizAgainst;
  readonly questions: number;
  /** Seconds to answer; those of the level when undefined. */
  readonly seconds: number | undefined;
  readonly search: QuizSearch;
  readonly found: FoundQuiz | undefined;
  /** Id of the kept quiz whose results are shown; the newest of the play when undefined or gone. */
  readonly shown: string | undefined;
  /** What was said last of saving and loading, a sentence or two. */
  readonly said: string;
  readonly change: (part: Partial<Omit<QuizState, 'change'>>) => void;
}

/** The state of the quiz that is no part of the document. */
export const useQuiz = create<QuizState>((set) => ({
  spot: undefined,
  against: { kind: 'all' },
  questions: 10,
  seconds: undefined,
  search: { kind: 'idle' },
  found: undefined,
  shown: undefined,
  said: '',
  change: (part) => set(part),
}));

import { create } from 'zustand';
import type { Play, RunnerStudy } from '../../engine/index.ts';

/** What was found of when a man should make one run. */
export interface FoundRun {
  readonly study: RunnerStudy;
  /** The play as it was asked about. */
  readonly play: Play;
  /** Man-ups against each scheme that were learnt from, and as many that were measured in. */
  readonly trials: number;
  /** Whether this is the first and rough answer. */
  readonly isRough: boolean;
  /** Play, team, run and schemes that it was found for, as text: another text is another question. */
  readonly question: string;
}

/** What the search is at. */
export type RunSearch =
  | { readonly kind: 'idle' }
  /** Requests of a round that are answered, of all that are planned. */
  | { readonly kind: 'finding'; readonly trials: number; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  /** The play hardly ever comes to this man's run. */
  | { readonly kind: 'never'; readonly runner: string }
  | { readonly kind: 'failed'; readonly reason: string };

interface RunsState {
  /** The run that was chosen, by its name (`RunChoice`); the play's first when it has no such run. */
  readonly run: string | undefined;
  /** Most reads on the card; one when undefined. */
  readonly cardReads: number | undefined;
  readonly search: RunSearch;
  /** Kept while the coach is elsewhere. */
  readonly found: FoundRun | undefined;
  readonly change: (part: Partial<Omit<RunsState, 'change'>>) => void;
}

/** What is known of runs without the ball, which is no part of the document. */
export const useRuns = create<RunsState>((set) => ({
  run: undefined,
  cardReads: undefined,
  search: { kind: 'idle' },
  found: undefined,
  change: (part) => set(part),
}));

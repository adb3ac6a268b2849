import type { AnswerOptions } from '../../worker/index.ts';
import { urgency } from '../answers/answer-plan.ts';

/** A search whose rounds know more and more, each in place of the one before. */
export interface Rounds<Effort, Study, News> {
  /** The first is rough and there in seconds. */
  readonly rounds: readonly Effort[];
  /** Requests that a round puts in all. */
  readonly planned: (effort: Effort) => number;
  /** `null` when what is asked about hardly ever comes. */
  readonly study: (effort: Effort, options: AnswerOptions) => Promise<Study | null>;
  readonly found: (study: Study, effort: Effort, isRough: boolean) => News;
  /** Told when it hardly ever comes. */
  readonly never: News;
}

/** What is told of any such search. */
export interface RoundNews {
  readonly search:
    | { readonly kind: 'idle' }
    | { readonly kind: 'finding'; readonly trials: number; readonly answered: number; readonly planned: number }
    | { readonly kind: 'failed'; readonly reason: string };
}

/** Goes through the rounds and tells how far it is and what comes of each; tells nothing more once the signal is given. */
export async function searchRounds<Effort extends { readonly trials: number }, Study, News>(
  { rounds, planned, study, found, never }: Rounds<Effort, Study, News>,
  tell: (news: News | RoundNews) => void,
  signal: AbortSignal,
): Promise<void> {
  try {
    for (const [round, effort] of rounds.entries()) {
      const onAnswer = progressOf(effort.trials, planned(effort), tell, signal);
      const known = await study(effort, { signal, priority: urgency.coarse, onAnswer });
      if (signal.aborted) return;
      if (known !== null) tell(found(known, effort, round === 0));
      // With few trials what seldom comes comes hardly ever: one more round tells.
      else if (round > 0) return tell(never);
    }
    tell({ search: { kind: 'idle' } });
  } catch (error) {
    if (signal.aborted) return;
    tell({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}

/** Tells that nothing is answered yet, and at each answer how many are. */
function progressOf(trials: number, planned: number, tell: (news: RoundNews) => void, signal: AbortSignal): () => void {
  let answered = 0;
  const tellProgress = (): void => tell({ search: { kind: 'finding', trials, answered, planned } });
  tellProgress();
  return () => {
    answered += 1;
    if (!signal.aborted) tellProgress();
  };
}

import type { Play } from '../../engine/index.ts';
import { type ReadsEffort, requestsOfStudy, studyReads, type TrialPool } from '../../worker/index.ts';
import { urgency } from '../answers/answer-plan.ts';
import { findRounds } from './find-rounds.ts';
import type { ReadsQuestion } from './reads-question.ts';
import type { FoundReads, ReadsSearch } from './reads-state.ts';

/** The man at a spot of a play as it is now, and what is asked about him. */
export interface AskedReads {
  readonly play: Play;
  readonly carrier: string;
  readonly question: ReadsQuestion;
}

/** What is told of a search: what it is at, or what a round found. */
export type ReadsNews = { readonly search: ReadsSearch } | { readonly found: FoundReads };

/** Goes through the rounds and tells how far it is and what comes of each; tells nothing more once the signal is given. */
export async function searchReads(
  pool: TrialPool,
  { play, carrier, question }: AskedReads,
  tell: (news: ReadsNews) => void,
  signal: AbortSignal,
  rounds: readonly ReadsEffort[] = findRounds,
): Promise<void> {
  const isTaught = play.reads.some((read) => read.carrier === carrier);
  const man = play.spots.findIndex(({ id }) => id === carrier);
  try {
    for (const [round, effort] of rounds.entries()) {
      const { trials } = effort;
      const planned = requestsOfStudy(question.setups.length, trials, isTaught);
      let answered = 0;
      const tellProgress = (): void => tell({ search: { kind: 'finding', trials, answered, planned } });
      tellProgress();
      const study = await studyReads(pool, question.setups, { play, carrier: man }, effort, {
        signal,
        priority: urgency.coarse,
        onAnswer: () => {
          answered += 1;
          if (!signal.aborted) tellProgress();
        },
      });
      if (signal.aborted) return;
      const { setups, text } = question;
      if (study !== null) tell({ found: { study, play, setups, trials, isRough: round === 0, question: text } });
      // With few trials a man who seldom has the ball has it hardly ever: one more round tells.
      else if (round > 0) return tell({ search: { kind: 'never', carrier } });
    }
    tell({ search: { kind: 'idle' } });
  } catch (error) {
    if (signal.aborted) return;
    tell({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}

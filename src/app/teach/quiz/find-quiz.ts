import type { Playbook } from '../../../playbook/index.ts';
import { makeQuiz, type QuizWishes } from '../../../teach/index.ts';
import type { TrialPool } from '../../../worker/index.ts';
import type { FoundQuiz, QuizSearch } from './quiz-state.ts';

/** A quiz that is wished for. */
export interface AskedQuiz {
  readonly playbook: Playbook;
  readonly wishes: QuizWishes;
  readonly text: string;
}

/** What is told of it: how far it is, and in the end the quiz. */
export type QuizNews = { readonly search: QuizSearch; readonly found?: FoundQuiz };

/** Makes a quiz and tells how far it is; nothing more once the signal is given. */
export async function findQuiz(
  pool: TrialPool,
  { playbook, wishes, text }: AskedQuiz,
  tell: (news: QuizNews) => void,
  signal: AbortSignal,
): Promise<void> {
  let [answered, planned] = [0, 1];
  const say = (news: QuizNews): void => {
    if (!signal.aborted) tell(news);
  };
  const progress = (): void => say({ search: { kind: 'finding', answered, planned: Math.max(planned, answered + 1) } });
  try {
    progress();
    const made = await makeQuiz(pool, playbook, wishes, {
      signal,
      onPlan: (requests) => {
        planned = requests;
        progress();
      },
      onAnswer: () => {
        answered += 1;
        progress();
      },
    });
    say({ search: { kind: 'idle' }, found: { question: text, made } });
  } catch (error) {
    say({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}

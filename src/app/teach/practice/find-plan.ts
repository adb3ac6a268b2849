import type { Playbook } from '../../../playbook/index.ts';
import { findPractice, type PracticeQuestion, usualPracticeEffort } from '../../../teach/index.ts';
import type { TrialPool } from '../../../worker/index.ts';
import type { FoundPlan, PlanSearch } from './plan-state.ts';

/** What is to be found out for a plan. */
export interface AskedPlan {
  readonly playbook: Playbook;
  readonly question: PracticeQuestion;
  readonly text: string;
}

/** What is told of it: how far it is, and in the end what was found. */
export type PlanNews = {
  readonly search: PlanSearch;
  readonly found?: FoundPlan;
};

/** Finds what is worth practising and tells how far it is; nothing more once the signal is given. */
export async function findPlan(
  pool: TrialPool,
  { playbook, question, text }: AskedPlan,
  tell: (news: PlanNews) => void,
  signal: AbortSignal,
): Promise<void> {
  let [answered, planned] = [0, 0];
  const say = (news: PlanNews): void => {
    if (!signal.aborted) tell(news);
  };
  const progress = (): void => say({ search: { kind: 'finding', answered, planned: Math.max(1, planned) } });
  try {
    progress();
    const findings = await findPractice(pool, playbook, question, usualPracticeEffort, {
      signal,
      onPlan: (requests) => {
        planned += requests;
        progress();
      },
      onAnswer: () => {
        answered += 1;
        progress();
      },
    });
    say({ search: { kind: 'idle' }, found: { question: text, findings } });
  } catch (error) {
    say({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}

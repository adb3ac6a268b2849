import type { Playbook } from '../../../playbook/index.ts';
import { findPractice, findSkill, type PracticeQuestion, usualPracticeEffort } from '../../../teach/index.ts';
import type { TrialPool } from '../../../worker/index.ts';
import { countRequests } from '../../answers/count-requests.ts';
import type { FoundPlan, PlanSearch } from './plan-state.ts';

/** What is to be found out for a plan. */
export interface AskedPlan {
  readonly playbook: Playbook;
  readonly question: PracticeQuestion;
  readonly text: string;
  readonly withSkill: boolean;
}

/** What is told of it: how far it is, and in the end what was found. */
export type PlanNews = {
  readonly search: PlanSearch;
  readonly found?: FoundPlan;
};

/** Finds what is worth practising and tells how far it is; nothing more once the signal is given. */
export async function findPlan(
  pool: TrialPool,
  { playbook, question, text, withSkill }: AskedPlan,
  tell: (news: PlanNews) => void,
  signal: AbortSignal,
): Promise<void> {
  const say = (news: PlanNews): void => {
    if (!signal.aborted) tell(news);
  };
  try {
    const { options, count } = countRequests(signal, (requests) => say({ search: { kind: 'finding', ...requests } }));
    const findings = await findPractice(pool, playbook, question, usualPracticeEffort, options);
    const found = { question: text, findings };
    if (!withSkill) {
      say({ search: { kind: 'idle' }, found });
      return;
    }
    // The plan is there already while the skill is looked for.
    say({ search: { kind: 'finding', ...count() }, found });
    const skill = await findSkill(pool, playbook, question, options);
    say({ search: { kind: 'idle' }, found: { ...found, skill } });
  } catch (error) {
    say({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}

import type { Practice } from '../../../playbook/index.ts';

/** A plan that is not kept in the playbook yet. */
export type DraftPlan = Omit<Practice, 'id'>;

/** As many changes of a draft as can be taken back. */
const mostKept = 50;

/** The drafts with one more, the newest last. */
export function withDraft(drafts: readonly DraftPlan[], draft: DraftPlan): readonly DraftPlan[] {
  return [...drafts, draft].slice(-mostKept);
}

import type { Practice } from '../../../playbook/index.ts';

/** A plan that is not kept in the playbook yet. */
export type DraftPlan = Omit<Practice, 'id'>;

/** The id under which it is edited; a kept plan gets one of its own. */
export const draftId = '(draft)';

/** As many changes of a draft as can be taken back. */
const mostKept = 50;

/** The drafts with one more, the newest last. */
export function withDraft(drafts: readonly DraftPlan[], draft: DraftPlan): readonly DraftPlan[] {
  return [...drafts, draft].slice(-mostKept);
}

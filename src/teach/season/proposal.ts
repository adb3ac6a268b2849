import type { Playbook, PlaybookEdit } from '../../playbook/index.ts';

/** What the chances of a season suggest to change. Nothing changes until the coach accepts it. */
export interface Proposal {
  /** Its own among the proposals of a playbook. */
  readonly id: string;
  /** Whom it is about. */
  readonly title: string;
  /** What was counted, and what follows. */
  readonly says: string;
  /** What would change, in short: "box zone 75 % to 48 %". */
  readonly changes: readonly string[];
  /** One step of undo; undefined where nothing follows. */
  readonly edit: ((playbook: Playbook) => PlaybookEdit) | undefined;
}

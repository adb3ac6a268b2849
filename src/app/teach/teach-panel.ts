import type { Playbook, PlayEntry } from '../../playbook/index.ts';

/** What each part of the Teach place is given: the playbook, and a play of it that can be played. */
export interface TeachPanelProps {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
}

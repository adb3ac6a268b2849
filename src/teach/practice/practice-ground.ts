import type { Playbook, Practice } from '../../playbook/index.ts';
import type { FieldMarkings, PaperName } from '../../render/index.ts';
import type { LookStand } from './find-practice.ts';

/** How the pages of a practice are wanted. */
export interface PracticePagesWishes {
  readonly side: 'left' | 'right';
  readonly paper: PaperName;
  /** The day that they are made: see `dayWords`. */
  readonly made: string;
}

/** What all the pages of one practice know. */
export interface PracticeGround extends PracticePagesWishes {
  readonly playbook: Playbook;
  readonly practice: Omit<Practice, 'id'>;
  readonly stands: readonly LookStand[];
  readonly field: FieldMarkings;
  readonly scheme: (id: string) => string;
}

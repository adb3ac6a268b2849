import type { Level } from '../../engine/index.ts';
import type { Playbook, Practice } from '../../playbook/index.ts';
import type { FieldMarkings, PaperName } from '../../render/index.ts';
import type { LookStand } from './find-practice.ts';

/** How the pages of a practice are wanted. */
export interface PracticePagesWishes {
  readonly side: 'left' | 'right';
  readonly paper: PaperName;
  /** At which it is played: cautions go by age. The team's own when absent. */
  readonly level?: Level;
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

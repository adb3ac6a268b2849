import type { Level, Spot } from '../../engine/index.ts';
import { type FieldLimits, fieldOf } from '../field-limits.ts';
import { moveSpots, readSet } from '../play/read-set.ts';
import { createReport } from '../report.ts';
import type { OwnSet, Playbook, PlayEntry } from '../schema.ts';

/** What a play stands on and does not hold itself: the lines of the field, the own sets, the level. */
export interface PlayGround {
  readonly field: FieldLimits;
  readonly sets: readonly OwnSet[];
  readonly level: Level;
}

export function groundOf(playbook: Playbook): PlayGround {
  return { field: fieldOf(playbook), sets: playbook.sets ?? [], level: playbook.team.level };
}

/** The six spots of the play's set before its own moves; none when the set is not known. */
export function setSpots(play: PlayEntry, ground: PlayGround): readonly Spot[] {
  return readSet(play, [], ground.sets, createReport())?.spots ?? [];
}

/** The play's spots where they stand in it, in the order of its set. */
export function playSpots(play: PlayEntry, ground: PlayGround): readonly Spot[] {
  const report = createReport();
  const set = readSet(play, [], ground.sets, report);
  return set === undefined ? [] : moveSpots(play, [], set, ground.field, report);
}

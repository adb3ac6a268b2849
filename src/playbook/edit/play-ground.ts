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

/** One object for all playbooks without own sets, so that what is known of a play is known again. */
const noSets: readonly OwnSet[] = [];

export function groundOf(playbook: Playbook): PlayGround {
  return { field: fieldOf(playbook), sets: playbook.sets ?? noSets, level: playbook.team.level };
}

/** The six spots of the play's set before its own moves; none when the set is not known. */
export function setSpots(play: PlayEntry, ground: PlayGround): readonly Spot[] {
  return spotsOf(play, ground).set;
}

/** The play's spots where they stand in it, in the order of its set. */
export function playSpots(play: PlayEntry, ground: PlayGround): readonly Spot[] {
  return spotsOf(play, ground).play;
}

interface FoundSpots {
  readonly ground: PlayGround;
  readonly set: readonly Spot[];
  readonly play: readonly Spot[];
}

/** A play never changes, and to find its set all its phrases are looked through: that is done once for many edits of a drag. */
const found_byPlay = new WeakMap<PlayEntry, FoundSpots>();

function spotsOf(play: PlayEntry, ground: PlayGround): FoundSpots {
  const known = found_byPlay.get(play);
  if (known?.ground.sets === ground.sets) return known;
  const report = createReport();
  const set = readSet(play, [], ground.sets, report);
  const moved = set === undefined ? [] : moveSpots(play, [], set, ground.field, report);
  const found = { ground, set: set?.spots ?? [], play: moved };
  found_byPlay.set(play, found);
  return found;
}

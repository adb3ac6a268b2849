import type { Play } from '../../engine/index.ts';
import type { ScriptName } from '../../playbook/index.ts';
import { playSteps } from '../../render/index.ts';

/** The play with the steps and reads of one script; as it is where it has no last ten seconds of its own. */
export function ofScript(play: Play, script: ScriptName): Play {
  return script === 'main' || play.lastTen === undefined ? play : { ...play, ...play.lastTen };
}

/** Which step of a script a beat is, the set being 0; undefined for a beat that is not in it. */
export function stepOfBeat(play: Play, script: ScriptName, beat: string): number | undefined {
  const index = playSteps(ofScript(play, script)).findIndex((step) => step.beat.id === beat);
  return index < 0 ? undefined : index + 1;
}

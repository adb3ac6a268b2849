import { type Playbook, ruleCodeOf } from '../../playbook/index.ts';
import { type Clip, drawnField, type FilmOptions, type FilmScript } from '../../render/index.ts';

/** All that a film of a clip is made of, on the field of the playbook's rules. */
export function filmScript(playbook: Playbook, clip: Clip, options: FilmOptions): FilmScript {
  return { clip, options, field: drawnField(ruleCodeOf(playbook).markings) };
}

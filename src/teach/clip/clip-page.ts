import { type Playbook, ruleCodeOf } from '../../playbook/index.ts';
import { type Clip, type ClipParts, clipHtml, drawnField } from '../../render/index.ts';

/** A clip as one whole page, on the field of the playbook's rules. */
export function clipPage(playbook: Playbook, clip: Clip, parts: Omit<ClipParts, 'field'>): Promise<string> {
  return clipHtml(clip, { ...parts, field: drawnField(ruleCodeOf(playbook).markings) });
}

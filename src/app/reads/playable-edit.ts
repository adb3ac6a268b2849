import type { Playbook, PlayEdit } from '../../playbook/index.ts';
import { readPlayOf } from '../play/play-reading.ts';

/** The edit as it is when the play that it makes can be played; else refused, with what is wrong first and where. `standing` is what the play stands on. */
export function playableEdit(edit: PlayEdit, standing: Playbook): PlayEdit {
  if (edit.kind === 'refused') return edit;
  const { isWhole, problems } = readPlayOf(standing, edit.play);
  if (isWhole) return edit;
  const [first] = problems;
  const why = first === undefined ? '' : ` ${first.where === '' ? '' : `${first.where}: `}${first.message}`;
  return { kind: 'refused', reason: `Then the play could not be played.${why}` };
}

import type { Opponent, Playbook } from '../schema.ts';
import { everyDefender, menOfScheme } from './edit-opponents.ts';
import { type EditedPlaybook, editedPlaybook } from './edit-result.ts';

/**
 * What is said of single men whom none of an opponent's schemes has any more is left out, and told in `also`: to be done after an edit that takes
 * schemes out of a mix, or men out of a scheme.
 */
export function forgetUnknownMen(playbook: Playbook): EditedPlaybook {
  const also: string[] = [];
  const opponents = (playbook.opponents ?? []).map((one) => withKnownMen(playbook, one, also));
  return also.length === 0 ? editedPlaybook(playbook) : editedPlaybook({ ...playbook, opponents }, also);
}

function withKnownMen(playbook: Playbook, opponent: Opponent, also: string[]): Opponent {
  const schemes = Object.keys(opponent.schemes ?? {}).map((id) => menOfScheme(playbook, id));
  // The men of a scheme that nobody knows may be any.
  if (schemes.includes(undefined)) return opponent;
  const known = new Set(schemes.flatMap((men) => men ?? []));
  const said = Object.entries(opponent.discipline ?? {});
  const lost = said.map(([man]) => man).filter((man) => man !== everyDefender && !known.has(man));
  if (lost.length === 0) return opponent;
  also.push(`${opponent.name} has no ${lost.join(' or ')} any more: what was said of his discipline is left out.`);
  const { discipline: _, ...rest } = opponent;
  const kept = said.filter(([man]) => !lost.includes(man));
  return kept.length === 0 ? rest : { ...rest, discipline: Object.fromEntries(kept) };
}

import { type Chance, changeChance, type NewChance, type Playbook, type PlaybookEdit } from '../../playbook/index.ts';
import { tabledKeys } from '../../teach/index.ts';

/** Puts what the form says in place of a chance. What the form does not ask (marks, what was expected of the scheme) stays. */
export function keepChange(playbook: Playbook, id: string, written: NewChance): PlaybookEdit {
  return changeChance(playbook, id, (before) => ({ ...unasked(before), ...written }));
}

/** What of a chance no field shows, with its id. */
function unasked(chance: Chance): Pick<Chance, 'id'> {
  const kept = Object.entries(chance).filter(([key]) => !tabledKeys.has(key as keyof NewChance));
  return Object.fromEntries(kept) as unknown as Pick<Chance, 'id'>;
}

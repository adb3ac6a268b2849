import { limits } from '../limits.ts';
import type { Chance, Playbook } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';
import { freshId } from './fresh-id.ts';

/** A chance that has no id yet. */
export type NewChance = Omit<Chance, 'id'>;

/** Writes down a chance behind the others, under an id of its own; the edit says which. */
export function addChance(playbook: Playbook, chance: NewChance): PlaybookEdit {
  return addChances(playbook, [chance]);
}

/**
 * Writes down several chances at once, all or none, in their order. The edit says the id of the last. Ids are made of day, opponent, period and clock: two people who wrote
 * down the same chance give it the same id, so that a merge shows the two side by side.
 */
export function addChances(playbook: Playbook, added: readonly NewChance[]): PlaybookEdit {
  const before = playbook.chances ?? [];
  if (added.length === 0) return editedPlaybook(playbook);
  if (before.length + added.length > limits.chances)
    return refused(
      `A playbook holds at most ${limits.chances} chances, and this would make ${before.length + added.length}. Begin a new season with a copy, and delete the old ones there.`,
    );
  const taken = new Set(before.map(({ id }) => id));
  const chances = added.map((chance): Chance => {
    const id = freshId(stemOf(chance), taken, 'man-up');
    taken.add(id);
    return { id, ...chance };
  });
  return editedPlaybook({ ...playbook, chances: [...before, ...chances] }, [], chances.at(-1)!.id);
}

/** Puts another chance in the place of one, under the same id. */
export function changeChance(playbook: Playbook, id: string, change: (chance: Chance) => Chance): PlaybookEdit {
  const chance = playbook.chances?.find((each) => each.id === id);
  if (chance === undefined) return noChance(id);
  const changed = change(chance);
  if (changed === chance) return editedPlaybook(playbook);
  const chances = playbook.chances!.map((each) => (each === chance ? { ...changed, id } : each));
  return editedPlaybook({ ...playbook, chances });
}

/** Takes chances out, all of them in one step. Ids that are not there are passed over; refused when none of them is. */
export function removeChances(playbook: Playbook, ids: readonly string[]): PlaybookEdit {
  const gone = new Set(ids);
  const chances = (playbook.chances ?? []).filter(({ id }) => !gone.has(id));
  if (chances.length === (playbook.chances ?? []).length) return noChance(ids[0] ?? '');
  return editedPlaybook({ ...playbook, chances });
}

function stemOf({ date, opponent, game, period, clock }: NewChance): string {
  const time = [period === undefined ? '' : `p${period}`, clock === undefined ? '' : String(Math.floor(clock))];
  return [date, opponent, game, ...time].filter((part) => part !== undefined && part !== '').join(' ');
}

function noChance(id: string): ReturnType<typeof refused> {
  return refused(`The playbook has no chance "${id}" any more.`);
}

import { schemeList } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';

/** A scheme that a play can be run against. */
export interface SchemeChoice {
  readonly id: string;
  readonly name: string;
  /** How many defenders it has. */
  readonly men: number;
  readonly own: boolean;
}

/** All that a playbook can be tested against: the built-in schemes, then its own. */
export function schemeChoices(playbook: Playbook): readonly SchemeChoice[] {
  const own = (playbook.schemes ?? []).map(({ id, name, men }) => ({
    id,
    name,
    men: Object.keys(men).length,
    own: true,
  }));
  const builtIn = schemeList
    .filter(({ id }) => !own.some((one) => one.id === id))
    .map(({ id, notes, defenders }) => ({ id, name: notes.name, men: defenders, own: false }));
  return [...builtIn, ...own];
}

/** What a play is run against when nobody chose: all built-in schemes with one man less. */
export function usualSchemes(choices: readonly SchemeChoice[]): readonly string[] {
  return choices.filter(({ men, own }) => men === 5 && !own).map(({ id }) => id);
}

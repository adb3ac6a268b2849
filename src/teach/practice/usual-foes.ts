import { schemeById } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { manDownSchemeIds } from '../../worker/index.ts';

/** Defenders of a unit that is one man down. */
const oneDown = 5;

/** The schemes of a unit that is one man down, built in and own: against whom a practice is made when nobody says. */
export function usualFoes(playbook: Playbook): readonly string[] {
  return manDownSchemeIds(playbook).filter((id) => {
    const own = playbook.schemes?.find((scheme) => scheme.id === id);
    return (own === undefined ? schemeById(id)?.defenders : Object.keys(own.men).length) === oneDown;
  });
}

import { usualSchemeWeight } from '../../engine/index.ts';
import { menOfScheme, type Opponent, type Playbook } from '../../playbook/index.ts';
import { schemeIds } from '../../worker/index.ts';

/** What an opponent's entry is not trusted with: whoever watched them may be wrong, and teams learn new schemes (our choice, no source). Share. */
export const unwritten = 0.15;

/**
 * How likely each scheme of so many defenders is before the game, by its id: the opponent's own weights, with a part for what is usual at the level; what is
 * usual alone where nothing is known of them. Adds up to 1; empty when nobody plays anything with so many men.
 */
export function expectedSchemes(
  playbook: Playbook,
  opponent: Opponent | undefined,
  defenders: number,
): Readonly<Record<string, number>> {
  const ids = schemeIds(playbook).filter((id) => menOfScheme(playbook, id)?.length === defenders);
  const usual = sharesOf(ids, (id) => usualSchemeWeight(playbook.team.level, id));
  const known = sharesOf(ids, (id) => opponent?.schemes?.[id] ?? 0);
  return known === undefined || usual === undefined
    ? (usual ?? {})
    : Object.fromEntries(ids.map((id) => [id, (1 - unwritten) * known[id]! + unwritten * usual[id]!]));
}

function sharesOf(
  ids: readonly string[],
  weightOf: (id: string) => number,
): Readonly<Record<string, number>> | undefined {
  const all = ids.reduce((sum, id) => sum + weightOf(id), 0);
  return all > 0 ? Object.fromEntries(ids.map((id) => [id, weightOf(id) / all])) : undefined;
}

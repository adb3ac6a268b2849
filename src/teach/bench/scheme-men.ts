import { schemeById } from '../../engine/index.ts';
import { type Playbook, schemeName } from '../../playbook/index.ts';
import { schemeIds } from '../../worker/index.ts';
import { priorOf } from './scheme-belief.ts';

/** Field defenders of a scheme; `undefined` for one that nobody knows. */
export function menOfScheme(playbook: Pick<Playbook, 'schemes'>, id: string): number | undefined {
  const own = playbook.schemes?.find((one) => one.id === id);
  return own === undefined ? schemeById(id)?.defenders : Object.keys(own.men).length;
}

/** The weights of schemes that so many defenders can play, before the game: the opponent's, with what else is usual. Empty when there is none. */
export function priorOfGame(
  playbook: Playbook,
  opponent: string | undefined,
  defenders: number,
): Readonly<Record<string, number>> {
  const isPlayable = (id: string): boolean => menOfScheme(playbook, id) === defenders;
  const known = playbook.opponents?.find(({ id }) => id === opponent)?.schemes ?? {};
  const usual = schemeIds(playbook).filter(isPlayable);
  return priorOf(
    Object.fromEntries(Object.entries(known).filter(([id]) => isPlayable(id))),
    Object.fromEntries(usual.map((id) => [id, 1])),
  );
}

/** A scheme's name without its number of men, for a button under a thumb. */
export function shortSchemeName(playbook: Pick<Playbook, 'schemes'>, id: string): string {
  return schemeName(playbook, id).replace(/\s*\(.*\)$/, '');
}

import { schemeById, usualSchemeWeight } from '../../engine/index.ts';
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
    Object.fromEntries(usual.map((id) => [id, usualSchemeWeight(playbook.team.level, id)])),
  );
}

/** A scheme in a word, as it is called across a field: for a button under a thumb. One that a coach wrote has his own name. */
export function shortSchemeName(playbook: Pick<Playbook, 'schemes'>, id: string): string {
  const isOwn = playbook.schemes?.some((one) => one.id === id) === true;
  return isOwn ? schemeName(playbook, id) : (shortNames[id] ?? schemeName(playbook, id));
}

const shortNames: Readonly<Record<string, string | undefined>> = {
  'box-zone': 'Box',
  'box-string': 'String',
  'four-man-rotation': 'Four-man',
  'five-man-rotation': 'Five-man',
  'diamond-and-one': 'Diamond',
  'house-3-2': 'House',
  'zone-2-3': '2-3',
};

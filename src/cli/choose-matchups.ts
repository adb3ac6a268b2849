import type { Playbook } from '../playbook/index.ts';
import { nearestName } from '../playbook/index.ts';
import { manDownSchemeIds, schemeIds } from '../worker/index.ts';
import { badUse, unknownName } from './failure.ts';

/** Ids of the plays to test: the named one, or all. Fails with the likeliest name when there is no such play. */
export function chosenPlays(playbook: Playbook, id: string | undefined): readonly string[] {
  const known = playbook.plays.map((play) => play.id);
  if (known.length === 0) throw badUse('the playbook holds no play yet. Write one under "plays".');
  return id === undefined ? known : [oneOf('play', id, known)];
}

/** Ids of the schemes in "a,b,c" or "all", each once, in the order given. */
export function chosenSchemes(playbook: Playbook, list: string): readonly string[] {
  const known = schemeIds(playbook);
  if (list === 'all') return manDownSchemeIds(playbook);
  const ids = list
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (ids.length === 0) throw badUse(`missing scheme after --against (expected all or ${known.join(', ')}).`);
  return [...new Set(ids.map((id) => oneOf('scheme', id, known)))];
}

/** The name itself when it is known; fails with the likeliest one otherwise. */
export function oneOf(what: string, name: string, known: readonly string[]): string {
  if (known.includes(name)) return name;
  throw unknownName(what, name, known, nearestName(name, known));
}

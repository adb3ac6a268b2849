import type { Opponent, Playbook } from '../playbook/index.ts';
import { nearestName } from '../playbook/index.ts';
import { manDownSchemeIds, schemeIds } from '../worker/index.ts';
import { shown } from './conditions.ts';
import { badUse, unknownName } from './failure.ts';

/** Ids of the plays to test: those named in "a,b", each once, or all that are not archived. Fails with the likeliest name when there is no such play. */
export function chosenPlays(playbook: Playbook, list: string | undefined): readonly string[] {
  const known = playbook.plays.map((play) => play.id);
  if (known.length === 0) throw badUse('the playbook holds no play yet. Write one under "plays".');
  if (list === undefined) {
    const current = playbook.plays.filter((play) => play.archived !== true).map((play) => play.id);
    if (current.length === 0) throw badUse(`every play is archived. Name one after --play (${known.join(', ')}).`);
    return current;
  }
  const ids = partsOf(list);
  if (ids.length === 0) throw badUse(`missing play after --play (expected ${known.join(', ')}).`);
  return [...new Set(ids.map((id) => oneOf('play', id, known)))];
}

/** Whom plays are tested against. */
export interface Foes {
  /** Ids of schemes. */
  readonly schemes: readonly string[];
  /** The opponent who plays them, as well as the playbook says; anybody of the level when absent. */
  readonly opponent?: Opponent;
  /** How likely each scheme is where the caller said so; else as the opponent plays them, or all alike. */
  readonly weights?: Readonly<Record<string, number>>;
}

/** How likely a scheme is to be met, beside the others. */
export function weightOf({ opponent, weights }: Foes, scheme: string): number {
  return weights?.[scheme] ?? opponent?.schemes?.[scheme] ?? 1;
}

/** Everything that can be named after --against: schemes, then opponents. */
export function foeIds(playbook: Playbook): readonly string[] {
  return [...schemeIds(playbook), ...(playbook.opponents ?? []).map(({ id }) => id)];
}

/** The schemes in "a,b,c" or "all", each once, in the order given, or those of the one opponent who is named; read from this option. */
export function chosenFoes(playbook: Playbook, list: string, option = '--against'): Foes {
  if (list === 'all') return { schemes: manDownSchemeIds(playbook) };
  const known = foeIds(playbook);
  const ids = partsOf(list);
  if (ids.length === 0) throw badUse(`missing scheme after ${option} (expected all or ${known.join(', ')}).`);
  for (const id of ids) oneOf('scheme or opponent', id, known);
  const schemes = ids.filter((id) => schemeIds(playbook).includes(id));
  const opponent = playbook.opponents?.find(({ id }) => !schemes.includes(id) && ids.includes(id));
  if (opponent === undefined) return { schemes: [...new Set(schemes)] };
  if (new Set(ids).size > 1) {
    throw badUse(
      `${opponent.id} is an opponent, who has schemes of his own: name him alone after ${option}, or schemes alone.`,
    );
  }
  const own = Object.keys(opponent.schemes ?? {});
  if (own.length === 0) {
    throw badUse(
      `${opponent.name} has no schemes yet: write what they play into "schemes" of the opponent, such as { "box-zone": 1 }.`,
    );
  }
  return { schemes: own, opponent };
}

/**
 * The foes in "box-zone:3,jump:1", schemes with how likely each is; without a colon as `chosenFoes` reads them. Fails where a weight is no
 * number above nothing, or some schemes have one and others not.
 */
export function weighedFoes(playbook: Playbook, list: string, option = '--against'): Foes {
  const parts = partsOf(list).map((part) => part.split(':').map((word) => word.trim()));
  const weighed = parts.filter(({ length }) => length > 1);
  if (weighed.length === 0) return chosenFoes(playbook, list, option);
  const foes = chosenFoes(playbook, parts.map(([id]) => id).join(','), option);
  const wrong = parts.find(({ length, 1: weight }) => length !== 2 || !(Number(weight) > 0 && Number(weight) <= 1e6));
  const isDouble = new Set(parts.map(([id]) => id)).size < parts.length;
  if (wrong !== undefined || isDouble || foes.opponent !== undefined) {
    throw badUse(
      `invalid ${option}: ${shown(list)} (expected schemes, each once and with how often it is met, such as ${foes.schemes[0] ?? 'box-zone'}:3).`,
    );
  }
  return { ...foes, weights: Object.fromEntries(parts.map(([id, weight]) => [id, Number(weight)])) };
}

/** The one scheme in which a single man-up is played: the named one, or the one that the named opponent plays most. */
export function chosenFoe(playbook: Playbook, id: string): { readonly scheme: string; readonly opponent?: Opponent } {
  const { schemes, opponent } = chosenFoes(playbook, id);
  if (id === 'all' || (schemes.length !== 1 && opponent === undefined)) {
    throw badUse(`one man-up is played against one scheme: name one of ${schemes.join(', ')} after --against.`);
  }
  const weight = (scheme: string): number => opponent?.schemes?.[scheme] ?? 0;
  const scheme = schemes.reduce((best, one) => (weight(one) > weight(best) ? one : best));
  return { scheme, ...(opponent && { opponent }) };
}

function partsOf(list: string): readonly string[] {
  return list
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/** The name itself when it is known; fails with the likeliest one otherwise. */
function oneOf(what: string, name: string, known: readonly string[]): string {
  if (known.includes(name)) return name;
  throw unknownName(what, name, known, nearestName(name, known));
}

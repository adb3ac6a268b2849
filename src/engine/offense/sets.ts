import { diamondTop } from './sets/diamond-top.ts';
import { fourTwo } from './sets/four-two.ts';
import type { OffenseSet } from './sets/offense-set.ts';
import { oneFourOne } from './sets/one-four-one.ts';
import { oneThreeTwo } from './sets/one-three-two.ts';
import { threeThree } from './sets/three-three.ts';
import { threeTwoOne } from './sets/three-two-one.ts';
import { twoThreeOne } from './sets/two-three-one.ts';
import { twoTwoTwoBehind } from './sets/two-two-two-behind.ts';
import { twoTwoTwoLow } from './sets/two-two-two-low.ts';

export type { OffenseSet } from './sets/offense-set.ts';

/** Every set the engine knows, by id. */
export const sets: Readonly<Record<string, OffenseSet>> = {
  '3-3': threeThree,
  '2-3-1': twoThreeOne,
  '1-3-2': oneThreeTwo,
  '1-4-1': oneFourOne,
  '2-2-2-low': twoTwoTwoLow,
  '2-2-2-behind': twoTwoTwoBehind,
  '3-2-1': threeTwoOne,
  '4-2': fourTwo,
  diamond: diamondTop,
};

/** Names that different coaches use for different sets, and the sets they may mean. The first is ours when one is. */
const ambiguousNames: Readonly<Record<string, readonly OffenseSet[]>> = {
  '1-3-2': [oneThreeTwo, twoThreeOne],
  '2-3-1': [twoThreeOne, oneThreeTwo],
  '3-1-2': [threeThree, diamondTop],
  '2-2-2': [twoTwoTwoLow, twoTwoTwoBehind],
  '222': [twoTwoTwoLow, twoTwoTwoBehind],
};

export type SetSearch =
  /** One set. `otherwise` is what the same name means to some other coaches (many count from behind up). */
  | { readonly kind: 'found'; readonly set: OffenseSet; readonly otherwise?: OffenseSet }
  /** The name alone does not say which. */
  | { readonly kind: 'ambiguous'; readonly sets: readonly OffenseSet[] }
  | { readonly kind: 'unknown' };

/**
 * The set that a coach's name means, counted top-down; capitals and doubled spaces do not matter.
 *
 * `findSet('1-3-2 from behind')` finds the 2-3-1; `findSet('2-2-2')` is ambiguous (low or behind).
 */
export function findSet(name: string): SetSearch {
  const wanted = name.trim().toLowerCase().replace(/\s+/g, ' ');
  const candidates = Object.hasOwn(ambiguousNames, wanted) ? ambiguousNames[wanted]! : [];
  const set = Object.values(sets).find((candidate) => isNameOf(wanted, candidate));
  if (set === undefined) return candidates.length > 0 ? { kind: 'ambiguous', sets: candidates } : { kind: 'unknown' };
  const otherwise = candidates.find((candidate) => candidate !== set);
  return otherwise === undefined ? { kind: 'found', set } : { kind: 'found', set, otherwise };
}

function isNameOf(wanted: string, set: OffenseSet): boolean {
  return wanted === set.id || wanted === set.name.toLowerCase() || set.aliases.includes(wanted);
}

import type { Scheme } from './scheme.ts';
import { boxString } from './schemes/box-string.ts';
import { boxZone } from './schemes/box-zone.ts';
import { diamond } from './schemes/diamond.ts';
import { fiveMan } from './schemes/five-man.ts';
import { fourManRotation } from './schemes/four-man-rotation.ts';
import { house } from './schemes/house.ts';
import { jump } from './schemes/jump.ts';
import { settled } from './schemes/settled.ts';
import { shutoff } from './schemes/shutoff.ts';
import { threeDown } from './schemes/three-down.ts';
import { twoDown } from './schemes/two-down.ts';
import { twoThree } from './schemes/two-three.ts';

/** Every scheme by id: nine of five men, two down, three down, and the settled six of a flag-down chance. */
export const schemes = {
  'box-zone': boxZone,
  'box-string': boxString,
  'four-man-rotation': fourManRotation,
  'five-man-rotation': fiveMan,
  'diamond-and-one': diamond,
  'house-3-2': house,
  'zone-2-3': twoThree,
  shutoff,
  jump,
  'two-down': twoDown,
  'three-down': threeDown,
  'settled-six': settled,
} as const satisfies Readonly<Record<string, Scheme>>;

export type SchemeId = keyof typeof schemes;

export const schemeList: readonly Scheme[] = Object.values(schemes);

/** The scheme of this id; undefined for an unknown one. */
export function schemeById(id: string): Scheme | undefined {
  return Object.hasOwn(schemes, id) ? schemes[id as SchemeId] : undefined;
}

/** The schemes that are played with this many field defenders. */
export function schemesFor(defenders: number): readonly Scheme[] {
  return schemeList.filter((scheme) => scheme.defenders === defenders);
}

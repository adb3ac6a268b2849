import type { Point } from '../../geometry/point.ts';

/** A place whose man is found on the crease rather than by a point. */
export const creasePlace = -1;

/**
 * Places that every grid may name, whatever the set: by where they are and by the trade's names.
 * Yards are the middle of what coaches use (common practice, no source).
 */
export const namedPlaces: Readonly<Record<string, readonly [number, number]>> = {
  top: [0, 14],
  topRight: [8, 13],
  topLeft: [-8, 13],
  wingRight: [9, 4],
  wingLeft: [-9, 4],
  behind: [0, -5],
  behindRight: [6, -4],
  behindLeft: [-6, -4],
  P: [0, 14],
  TR: [8, 13],
  TL: [-8, 13],
  WR: [9, 4],
  WL: [-9, 4],
  C: [0, 6],
  CR: [3, 6],
  CL: [-3, 6],
  X: [0, -5],
  BR: [6, -4],
  BL: [-6, -4],
};

/** The name of whoever is on the crease nearest the ball. */
export const creaseName = 'crease';

/** The point of a place name: the set's own spot first, then the common name; undefined if neither knows it. */
export function pointOf(
  name: string,
  spots: readonly { readonly id: string; readonly at: Point }[],
): readonly [number, number] | undefined {
  const spot = spots.find((candidate) => candidate.id === name);
  if (spot !== undefined) return [spot.at.x, spot.at.y];
  return Object.hasOwn(namedPlaces, name) ? namedPlaces[name] : undefined;
}

export function expectedPlaces(spots: readonly { readonly id: string }[]): string {
  const names = spots.length > 0 ? spots.map((spot) => spot.id) : Object.keys(namedPlaces);
  return [...names, creaseName].join(', ');
}

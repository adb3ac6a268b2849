import type { Point } from '../../engine/index.ts';

/** Men of a scheme by name, each with his home, yards. */
type Men = Readonly<Record<string, readonly [number, number]>>;

/** A name and a home for one more man of a scheme: the first that are free; undefined when it has all that may play. */
export function spareDefender(men: Men): { readonly name: string; readonly at: Point } | undefined {
  const places = Object.values(men);
  if (places.length >= mostMen) return undefined;
  const name = names.find((each) => !Object.hasOwn(men, each));
  const at = homes.find(([x, y]) => places.every((place) => Math.hypot(place[0] - x, place[1] - y) >= room));
  return name === undefined || at === undefined ? undefined : { name, at: { x: at[0], y: at[1] } };
}

const mostMen = 6;
/** More of each than there are men, so that one is always free. */
const names = ['c', 'm', 'tr', 'tl', 'lr', 'll', 'pt'] as const;
const homes = [
  [0, 5],
  [0, 8],
  [0, 11],
  [5, 3],
  [-5, 3],
  [5, 10],
  [-5, 10],
] as const;
/** Between two homes, yd: more than the check asks for. */
const room = 1.5;

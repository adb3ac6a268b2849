import { createSchemeView, readOffense } from '../defense/view.ts';
import type { Point } from '../geometry/point.ts';

/** A pass to a man this near to the goal, above its line, is a feed. Yards. */
const feedRadius = 7.5;

/** What the trade calls a pass: to the next man round the goal, over a man, or inside. */
export type PassStyle = 'adjacent' | 'skip' | 'feed';

/** Whether a man here is thrown to inside, near the goal and above its line: yards, (0, 0) the middle of the goal. */
export function isFeedPlace(x: number, y: number): boolean {
  return y > 0 && x * x + y * y < feedRadius * feedRadius;
}

/** Whether two men are next to each other round the goal; the first `ringSize` entries of `ring` are the men in their order. */
export function areNeighbours(ring: ArrayLike<number>, ringSize: number, one: number, other: number): boolean {
  for (let seat = 0; seat < ringSize; seat++) {
    const next = ring[(seat + 1) % ringSize];
    if ((ring[seat] === one && next === other) || (ring[seat] === other && next === one)) return true;
  }
  return false;
}

/**
 * What a pass between two of six men is called when they stand at these places, yards.
 *
 * A man on the crease who throws out passes over nobody: that is called a pass to the next man.
 * Throws RangeError when there are not six places or `from` or `to` is none of them.
 */
export function passStyleOf(places: readonly Point[], from: number, to: number): PassStyle {
  if (places.length !== 6) throw new RangeError(`invalid places: ${places.length} (expected 6)`);
  const [giver, taker] = [places[from], places[to]];
  if (giver === undefined || taker === undefined) throw new RangeError(`invalid men: ${from}, ${to} (expected 0 to 5)`);
  if (isFeedPlace(taker.x, taker.y)) return 'feed';
  const view = createSchemeView(6);
  for (const [i, place] of places.entries()) view.offense.set([place.x, place.y], 2 * i);
  readOffense(view);
  if (view.inside[from] === 1) return 'adjacent';
  return areNeighbours(view.ring, view.ringSize, from, to) ? 'adjacent' : 'skip';
}

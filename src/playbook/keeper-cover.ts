import {
  guessCover,
  type KeeperCover,
  type KeeperQuarterId,
  keeperQuarterIds,
  type QuarterCounts,
} from '../engine/index.ts';
import type { KeeperShot, Opponent } from './schema.ts';

/** Half the mouth's width and its height, feet. */
const [halfWidth, height] = [3, 6];

/** How a goalkeeper stops balls into each quarter of the mouth, by the shots that were marked; `undefined` when they say nothing. */
export function keeperCoverOf({ keeper }: Opponent): KeeperCover | undefined {
  return keeper === undefined ? undefined : guessCover(countQuarters(keeper));
}

/** Marked shots by quarters of the mouth. Those that were put outside of it count for none. */
export function countQuarters(shots: readonly KeeperShot[]): QuarterCounts {
  const inside = shots.filter(({ at: [x, y] }) => Math.abs(x) <= halfWidth && y <= height);
  const counted = keeperQuarterIds.map((id) => {
    const here = inside.filter(({ at }) => quarterOf(at) === id);
    const goals = here.filter(({ result }) => result === 'goal').length;
    return [id, { saves: here.length - goals, goals }];
  });
  return Object.fromEntries(counted) as QuarterCounts;
}

/** The quarter of a place in the mouth; who stands right on a middle line belongs to the right and to the upper one. */
export function quarterOf([x, y]: KeeperShot['at']): KeeperQuarterId {
  if (y >= height / 2) return x < 0 ? 'highLeft' : 'highRight';
  return x < 0 ? 'lowLeft' : 'lowRight';
}

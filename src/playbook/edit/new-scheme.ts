import { lapOf, type Point, schemeById } from '../../engine/index.ts';
import { printDuty } from '../language/print-duty.ts';
import { limits } from '../limits.ts';
import type { Playbook } from '../schema.ts';
import { spotsOfSet } from './edit-plays.ts';
import { type PlaybookEdit, refused } from './edit-result.ts';
import { addScheme } from './scheme-list.ts';

/**
 * An own scheme that asks nothing yet, for the spots of a set: the men of a box, a row for each place of the ball in which the nearest man has the
 * ball and the others are at home. `id` of the edit is the scheme's.
 */
export function newScheme(playbook: Playbook, name: string, set: string): PlaybookEdit {
  const spots = spotsOfSet(playbook, set);
  if (spots === undefined) return refused(`No set is called "${set}".`);
  const { names, home, shortSticks } = schemeById('box-zone')!;
  const men = names.map((man, i): [string, [number, number]] => [man, [home[2 * i]!, home[2 * i + 1]!]]);
  return addScheme(playbook, name, {
    men: Object.fromEntries(men),
    ...(shortSticks.length > 0 && { shortSticks: shortSticks.map((i) => names[i]!) }),
    rows: lapOf(spots).map((ball) => {
      const { at } = spots.find(({ id }) => id === ball)!;
      const nearest = men.reduce((best, one) => (away(one[1], at) < away(best[1], at) ? one : best))[0];
      return {
        ball,
        do: men.map(([man, place]) =>
          printDuty(man, man === nearest ? { duty: 'ball' } : { duty: 'place', at: place }),
        ),
      };
    }),
  });
}

/** A copy of an own scheme under a name of its own, at the end of the list. */
export function copyScheme(playbook: Playbook, id: string): PlaybookEdit {
  const scheme = playbook.schemes?.find((one) => one.id === id);
  if (scheme === undefined) return refused(`The playbook has no scheme "${id}" of its own any more.`);
  const { id: _, name, ...rest } = scheme;
  return addScheme(playbook, name.slice(0, limits.name - copyEnding.length) + copyEnding, rest);
}

const copyEnding = ' (copy)';

function away([x, y]: readonly [number, number], at: Point): number {
  return Math.hypot(x - at.x, y - at.y);
}

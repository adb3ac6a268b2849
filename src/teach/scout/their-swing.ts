import { movementsOf, type Spot } from '../../engine/index.ts';
import { type PlayEntry, setAlone } from '../../playbook/index.ts';

/**
 * A set whose ball goes round once, and again: what to expect of an opponent of whom only the set is known. Everybody stands, and whoever has something takes it. The
 * spots are those of the entry as written.
 */
export function theirSwing(entry: PlayEntry, spots: readonly Spot[]): PlayEntry {
  const alone = setAlone(entry);
  const start = Math.max(
    0,
    spots.findIndex(({ id }) => id === entry.start.ball),
  );
  const lap = movementsOf(
    spots.map(({ at }) => at),
    start,
    'college',
  )[0]!;
  const way = lap.ball.map((man) => spots[man]!.id);
  return {
    ...alone,
    name: 'The ball round the set',
    start: { ...entry.start, ball: way[0]! },
    beats: way.slice(1).map((to, at) => {
      const from = way[at]!;
      const on = at === 0 ? 'start' : `pass ${way[at - 1]} to ${from}`;
      return { id: `pass-${at + 1}`, on, do: [`${from} pass ${to}`] };
    }),
    reset: { ball: way[0]!, then: 'again' },
  };
}

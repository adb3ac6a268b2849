import { limits, type Playbook, type Player, type Team } from '../../playbook/index.ts';

/** A man of whom nothing was said yet; nobody else wears his number. */
export function newPlayer(roster: readonly Player[]): Player {
  const worn = new Set(roster.map(({ number }) => number));
  let number = 1;
  while (worn.has(number)) number++;
  return { number, name: '', hand: 'right' };
}

/** The playbook with one man changed; a new man when `index` is the roster's length. The same playbook when nothing changes or nobody fits in. */
export function editPlayer(playbook: Playbook, index: number, change: (player: Player) => Player): Playbook {
  const { roster } = playbook.team;
  if (index === roster.length && roster.length >= limits.players) return playbook;
  const before = roster[index] ?? newPlayer(roster);
  const after = change(before);
  if (after === before) return playbook;
  const next = index < roster.length ? roster.map((player, i) => (i === index ? after : player)) : [...roster, after];
  return withTeam(playbook, { ...playbook.team, roster: next });
}

/** The playbook without a man, and without him in the depth chart. */
export function removePlayer(playbook: Playbook, index: number): Playbook {
  const { roster, depth, ...team } = playbook.team;
  const gone = roster[index];
  if (gone === undefined) return playbook;
  const left = roster.filter((player) => player !== gone);
  const isWorn = left.some(({ number }) => number === gone.number);
  const kept = isWorn ? depth : mapDepth(depth, (numbers) => numbers.filter((number) => number !== gone.number));
  return withTeam(playbook, { ...team, roster: left, ...(kept && { depth: kept }) });
}

/** The roster by number; those who wear the same one as they stood. */
export function sortByNumber(playbook: Playbook): Playbook {
  const { roster } = playbook.team;
  const sorted = [...roster].sort((one, other) => one.number - other.number);
  return sorted.every((player, i) => player === roster[i])
    ? playbook
    : withTeam(playbook, { ...playbook.team, roster: sorted });
}

export type Depth = NonNullable<Team['depth']>;

/**
 * The depth chart with another number for a man, so that he keeps his place in it; as it is while another man wears the old number too.
 * Always from the chart as it was before the typing: on its way from 11 to 12 a number passes 1, which another man may wear.
 */
export function renumbered(
  depth: Depth | undefined,
  others: readonly Player[],
  from: number,
  to: number,
): Depth | undefined {
  if (others.some(({ number }) => number === from)) return depth;
  return mapDepth(depth, (numbers) => numbers.map((number) => (number === from ? to : number)));
}

/** The order of a spot with a man at a place in it, counted from 0; without him when `to` is undefined. */
export function orderWith(order: readonly number[], number: number, to: number | undefined): readonly number[] {
  const others = order.filter((each) => each !== number);
  return to === undefined ? others : [...others.slice(0, to), number, ...others.slice(to)];
}

/** Each spot's numbers anew; spots without any, and a chart without spots, are left out. */
function mapDepth(depth: Depth | undefined, change: (numbers: number[]) => number[]): Depth | undefined {
  const spots = Object.entries(depth ?? {})
    .map(([spot, numbers]) => [spot, change(numbers)] as const)
    .filter(([, numbers]) => numbers.length > 0);
  return spots.length === 0 ? undefined : Object.fromEntries(spots);
}

function withTeam(playbook: Playbook, team: Team): Playbook {
  return { ...playbook, team };
}

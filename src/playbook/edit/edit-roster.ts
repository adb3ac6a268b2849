import { limits } from '../limits.ts';
import { type Playbook, type Player, playerSchema, type Team } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, type Refused, refused } from './edit-result.ts';

/** Add a player at the end of the roster. */
export function addPlayer(playbook: Playbook, player: Player): PlaybookEdit {
  const { team } = playbook;
  if (team.roster.length >= limits.players)
    return refused(`A roster holds at most ${limits.players} players. Take one out first.`);
  const refusal = playerRefusal(player) ?? numberRefusal(team, player);
  if (refusal !== undefined) return refusal;
  return withTeam(playbook, { ...team, roster: [...team.roster, player] });
}

/** Put another description in the place of a player's. With another number the depth chart follows him. */
export function changePlayer(playbook: Playbook, number: number, player: Player): PlaybookEdit {
  const { team } = playbook;
  const before = playerOf(team, number);
  if (before === undefined) return nobody(number);
  const refusal = playerRefusal(player) ?? numberRefusal(team, player, before);
  if (refusal !== undefined) return refusal;
  if (samePlayer(before, player)) return editedPlaybook(playbook);
  const roster = team.roster.map((each) => (each === before ? player : each));
  const follow = (numbers: readonly number[]) => numbers.map((each) => (each === number ? player.number : each));
  if (player.number !== number) return withTeam(playbook, withDepth({ ...team, roster }, follow));
  if (player.crosse !== 'goalkeeper') return withTeam(playbook, { ...team, roster });
  const left = withDepth({ ...team, roster }, (numbers) => numbers.filter((each) => each !== number));
  return withTeam(playbook, left, depthLost(team, number, player.name));
}

/** Take a player off the roster and out of the depth chart. */
export function removePlayer(playbook: Playbook, number: number): PlaybookEdit {
  const { team } = playbook;
  const player = playerOf(team, number);
  if (player === undefined) return nobody(number);
  const roster = team.roster.filter((each) => each !== player);
  const left = withDepth({ ...team, roster }, (numbers) => numbers.filter((each) => each !== number));
  return withTeam(playbook, left, depthLost(team, number, player.name));
}

/** Leave a player out for now, or have him back. */
export function setAbsent(playbook: Playbook, number: number, absent: boolean): PlaybookEdit {
  const player = playerOf(playbook.team, number);
  if (player === undefined) return nobody(number);
  if ((player.absent === true) === absent) return editedPlaybook(playbook);
  const { absent: _, ...present } = player;
  return changePlayer(playbook, number, absent ? { ...present, absent } : present);
}

/** Move a player to another place in the list. */
export function movePlayer(playbook: Playbook, number: number, to: number): PlaybookEdit {
  const { team } = playbook;
  const player = playerOf(team, number);
  if (player === undefined) return nobody(number);
  const others = team.roster.filter((each) => each !== player);
  const place = Math.max(0, Math.min(others.length, to));
  return withTeam(playbook, { ...team, roster: [...others.slice(0, place), player, ...others.slice(place)] });
}

/** Whom the coach wants at a spot, best first, by number; nobody in particular for an empty list. */
export function setDepth(playbook: Playbook, spot: string, numbers: readonly number[]): PlaybookEdit {
  const { team } = playbook;
  const wanted = [...new Set(numbers)];
  for (const number of wanted) {
    const player = playerOf(team, number);
    if (player === undefined) return refused(`Nobody on the roster wears ${number}.`);
    if (player.crosse === 'goalkeeper') return refused(`${player.name} is the goalkeeper.`);
  }
  const before = team.depth?.[spot] ?? [];
  if (before.length === wanted.length && before.every((number, i) => number === wanted[i]))
    return editedPlaybook(playbook);
  const { [spot]: _, ...others } = team.depth ?? {};
  return withTeam(playbook, emptied(team, wanted.length === 0 ? others : { ...others, [spot]: wanted }));
}

/**
 * Take in players who were read from a table. `add` goes by number: who is known keeps what the table does not say of him; `replace` makes
 * them the whole roster.
 */
export function takeInPlayers(
  playbook: Playbook,
  players: readonly Player[],
  how: 'add' | 'replace' = 'add',
): PlaybookEdit {
  const { team } = playbook;
  const twice = players.find((player, i) => players.findIndex((each) => each.number === player.number) < i);
  if (twice !== undefined) return refused(`Number ${twice.number} is in the table twice.`);
  const known = new Map(how === 'replace' ? [] : team.roster.map((player) => [player.number, player] as const));
  const merged = players.map((player) => {
    const before = known.get(player.number);
    const after = before === undefined ? player : mergePlayer(before, player);
    return before !== undefined && samePlayer(before, after) ? before : after;
  });
  const refusal = merged.map(playerRefusal).find((each) => each !== undefined);
  if (refusal !== undefined) return refusal;
  const fresh = merged.filter((player) => !known.has(player.number));
  const stay = (player: Player) => merged.find((each) => each.number === player.number) ?? player;
  const roster = how === 'replace' ? merged : [...team.roster.map(stay), ...fresh];
  if (roster.length > limits.players) return refused(`A roster holds at most ${limits.players} players.`);
  const field = new Set(roster.flatMap((player) => (player.crosse === 'goalkeeper' ? [] : [player.number])));
  const left = withDepth({ ...team, roster }, (numbers) => numbers.filter((number) => field.has(number)));
  return withTeam(playbook, left);
}

function mergePlayer(before: Player, after: Player): Player {
  return {
    ...before,
    ...after,
    ...((before.grades ?? after.grades) && { grades: { ...before.grades, ...after.grades } }),
    ...((before.measured ?? after.measured) && { measured: { ...before.measured, ...after.measured } }),
  };
}

function playerRefusal(player: Player): Refused | undefined {
  const { success, error } = playerSchema.safeParse(player);
  if (success) return undefined;
  const [field] = error.issues[0]?.path ?? [];
  switch (field) {
    case 'number':
      return refused('A number is a whole number from 0 to 999.');
    case 'name':
      return refused(`A player needs a name of at most ${limits.name} letters.`);
    case 'grades':
      return refused(`A grade of ${player.name} is not between 1 and 5.`);
    case 'measured':
      return refused(`A measurement of ${player.name} is no number that can be right.`);
    default:
      return refused(`${String(field ?? 'Something')} of ${player.name} cannot be kept like this.`);
  }
}

function numberRefusal(team: Team, player: Player, except?: Player): Refused | undefined {
  const other = team.roster.find((each) => each !== except && each.number === player.number);
  return other === undefined ? undefined : refused(`${other.name} wears ${player.number} already.`);
}

function depthLost(team: Team, number: number, name: string): readonly string[] {
  const spots = Object.entries(team.depth ?? {}).flatMap(([spot, numbers]) => (numbers.includes(number) ? [spot] : []));
  return spots.length === 0 ? [] : [`${name} is out of the depth chart at ${spots.join(', ')}.`];
}

function withDepth(team: Team, change: (numbers: readonly number[]) => number[]): Team {
  if (team.depth === undefined) return team;
  const entries = Object.entries(team.depth).map(([spot, numbers]) => {
    const changed = change(numbers);
    const same = changed.length === numbers.length && changed.every((number, i) => number === numbers[i]);
    return [spot, same ? numbers : changed] as const;
  });
  if (entries.every(([spot, numbers]) => numbers === team.depth![spot])) return team;
  return emptied(team, Object.fromEntries(entries.filter(([, numbers]) => numbers.length > 0)));
}

function emptied(team: Team, depth: NonNullable<Team['depth']>): Team {
  if (Object.keys(depth).length > 0) return { ...team, depth };
  const { depth: _, ...rest } = team;
  return rest;
}

function withTeam(playbook: Playbook, team: Team, also: readonly string[] = []): PlaybookEdit {
  return editedPlaybook(team === playbook.team ? playbook : { ...playbook, team }, also);
}

function playerOf(team: Team, number: number): Player | undefined {
  return team.roster.find((player) => player.number === number);
}

/** Players are plain data in one order of fields only by chance: compared by what they hold. */
function samePlayer(one: Player, other: Player): boolean {
  return sorted(one) === sorted(other);
}

function sorted(value: unknown): string {
  return JSON.stringify(value, (_, part) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

function nobody(number: number): Refused {
  return refused(`Nobody on the roster wears ${number} any more.`);
}

import { type Playbook, type Player, sameValue, withoutNames } from '../../playbook/index.ts';

/** Whether a file has numbers in place of its players' names, as one that was saved to be shared. */
export function hasNumbersForNames({ team }: Playbook): boolean {
  return team.roster.length > 0 && team.roster.every(isNameless);
}

/**
 * A copy with numbers in place of names, with the names of the playbook that it was made from. What was not changed in the copy is taken over as it
 * was; a player who was changed gets his name and notes back. Texts that were changed keep the numbers. A copy that has names stays as it is.
 */
export function withNamesBack(copy: Playbook, named: Playbook): Playbook {
  if (!copy.team.roster.some(isNameless)) return copy;
  const hidden = withoutNames(named);
  const { roster: hiddenRoster, ...hiddenHead } = hidden.team;
  const { roster: namedRoster, ...namedHead } = named.team;
  const { roster, ...head } = copy.team;
  const list = <T extends { readonly id: string }>(
    parts: readonly T[] | undefined,
    without: readonly T[] | undefined,
    original: readonly T[] | undefined,
  ): T[] | undefined => parts?.map((part) => unhidden(part, without, original, ({ id }) => id));
  const lists = {
    sets: list(copy.sets, hidden.sets, named.sets),
    schemes: list(copy.schemes, hidden.schemes, named.schemes),
    opponents: list(copy.opponents, hidden.opponents, named.opponents),
    practices: list(copy.practices, hidden.practices, named.practices),
    quizzes: list(copy.quizzes, hidden.quizzes, named.quizzes),
    chances: list(copy.chances, hidden.chances, named.chances),
  };
  return {
    ...copy,
    team: {
      ...(sameValue(head, hiddenHead) ? namedHead : head),
      roster: roster.map((player) =>
        playerWithName(
          unhidden(player, hiddenRoster, namedRoster, ({ number }) => number),
          namedRoster,
        ),
      ),
    },
    plays: list(copy.plays, hidden.plays, named.plays) ?? [],
    ...Object.fromEntries(Object.entries(lists).filter(([, parts]) => parts !== undefined)),
    ...(copy.notes !== undefined && copy.notes === hidden.notes && named.notes !== undefined && { notes: named.notes }),
  };
}

function isNameless({ name, number }: Player): boolean {
  return name === `No. ${number}`;
}

function playerWithName(player: Player, named: readonly Player[]): Player {
  const owner = isNameless(player) ? named.find(({ number }) => number === player.number) : undefined;
  if (owner === undefined) return player;
  const notes = player.notes ?? owner.notes;
  return { ...player, name: owner.name, ...(notes !== undefined && { notes }) };
}

/** The original of a part that was not changed since its names were taken out. */
function unhidden<T>(
  part: T,
  without: readonly T[] | undefined,
  original: readonly T[] | undefined,
  keyOf: (part: T) => string | number,
): T {
  const index = (without ?? []).findIndex((one) => keyOf(one) === keyOf(part));
  return index >= 0 && sameValue(without![index], part) ? original![index]! : part;
}

import { oddReadings, type Playbook, type Player } from '../../playbook/index.ts';
import type { RosterColumn } from './roster-columns.ts';
import { levelWords } from './team-words.ts';

/** What is wrong in a cell of a man, as a sentence; by the column's id. */
export type RowProblems = ReadonlyMap<string, string>;

/** What is wrong with each man, in the order of the roster, in the columns that are shown and beyond them. */
export function rosterProblems(playbook: Playbook, columns: readonly RosterColumn[]): readonly RowProblems[] {
  const { roster } = playbook.team;
  return roster.map((player, index) => {
    const problems = new Map<string, string>();
    for (const column of columns) {
      if (column.kind !== 'text') continue;
      const read = column.read(column.print(player));
      if (read.kind === 'problem') problems.set(column.id, read.text);
    }
    const other = roster.find(({ number }, i) => i !== index && number === player.number);
    if (other !== undefined)
      problems.set('number', `${nameOf(other)} wears ${player.number} too. Give one of them another number.`);
    if (player.name.trim() === '') problems.set('name', 'He has no name yet: a first name or a short one will do.');
    for (const name of oddMeasurements(playbook, player))
      problems.set(`measured ${name}`, oddSentence(playbook, player));
    return problems;
  });
}

/** A man's name, or his number while he has none. */
export function nameOf({ name, number }: Player): string {
  return name.trim() === '' ? `number ${number}` : name;
}

function oddSentence({ team }: Playbook, player: Player): string {
  return `So far from what is usual at ${levelWords[player.level ?? team.level]} that it must be a slip or another unit. Look again.`;
}

// Asked for every row at each key: a man is looked at again only when he, or the level, is another.
const known = new WeakMap<object, { readonly level: string; readonly odd: readonly string[] }>();

function oddMeasurements(playbook: Playbook, player: Player): readonly string[] {
  const { measured } = player;
  if (measured === undefined) return [];
  const level = player.level ?? playbook.team.level;
  const before = known.get(measured);
  if (before?.level === level) return before.odd;
  const odd = oddReadings(playbook, { ...player, grades: undefined });
  known.set(measured, { level, odd });
  return odd;
}

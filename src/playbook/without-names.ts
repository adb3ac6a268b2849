import type { Playbook, Player } from './schema.ts';

/**
 * The playbook with jersey numbers in place of players' names: `No. 7`. Notes on players are left out, and where a name or a part of it stands in another text
 * (notes, names of plays, tags) the number stands instead. Ids stay, because other parts of the file go by them.
 */
export function withoutNames(playbook: Playbook): Playbook {
  const { roster } = playbook.team;
  const hidden = hideTexts({ ...playbook, team: { ...playbook.team, roster: [] } }, hider(roster));
  return { ...hidden, team: { ...hidden.team, roster: roster.map(nameless) } };
}

function nameless({ notes: _, ...player }: Player): Player {
  return { ...player, name: `No. ${player.number}` };
}

/** Puts numbers in place of names: the whole name where it stands, else a part. Whole words as they are written: "Will" goes, "will" stays. */
function hider(roster: readonly Player[]): (text: string) => string {
  const numbers = new Map<string, number>();
  const add = (word: string, number: number): void => {
    if (/\p{L}\p{L}/u.test(word) && !numbers.has(word)) numbers.set(word, number);
  };
  for (const { name, number } of roster) add(name.trim(), number);
  for (const { name, number } of roster) for (const part of name.split(/\s+/)) add(part, number);
  if (numbers.size === 0) return (text) => text;
  const words = [...numbers.keys()].sort((one, other) => other.length - one.length).map(literal);
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${words.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
  return (text) => text.replace(pattern, (word) => `No. ${numbers.get(word)}`);
}

/** A text as a pattern that matches only itself. */
function literal(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}

/** Every text of a field that is for people. */
function hideTexts<T>(value: T, hide: (text: string) => string, field = ''): T {
  if (typeof value === 'string') return (textFields.has(field) ? hide(value) : value) as T;
  if (Array.isArray(value)) return value.map((item) => hideTexts(item, hide, field)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, hideTexts(member, hide, name)])) as T;
}

const textFields: ReadonlySet<string> = new Set([
  'name',
  'notes',
  'tags',
  'note',
  'why',
  'leftOut',
  'keeperNotes',
  'game',
  'unit',
]);

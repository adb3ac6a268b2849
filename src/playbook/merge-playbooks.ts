import { chanceTitle } from './chance-title.ts';
import { limits } from './limits.ts';
import { type ListMerge, type MergedItem, mergeLists, mergeValues } from './merge-list.ts';
import type {
  Chance,
  Opponent,
  OwnSet,
  Playbook,
  PlayEntry,
  Player,
  Practice,
  QuizEntry,
  SchemeEntry,
  Settings,
  Team,
} from './schema.ts';

/** The parts of a playbook that are merged one by one: each as a whole, as one thing that somebody wrote. */
export type MergeKind =
  | 'play'
  | 'player'
  | 'team'
  | 'set'
  | 'scheme'
  | 'opponent'
  | 'practice'
  | 'quiz'
  | 'chance'
  | 'settings'
  | 'notes';

export type MergePart =
  | PlayEntry
  | Player
  | TeamHead
  | OwnSet
  | SchemeEntry
  | Opponent
  | Practice
  | QuizEntry
  | Chance
  | Settings
  | string;

/** The team without its players, who are parts of their own. */
export type TeamHead = Omit<Team, 'roster'>;

/** A part that both sides changed, each in its own way. */
export interface MergeConflict {
  readonly kind: MergeKind;
  /** Its id, a player's number, or the kind itself for what a playbook has only one of. With the kind it is one conflict's own. */
  readonly key: string;
  /** For people. */
  readonly name: string;
  /** Undefined where it was removed. */
  readonly mine: MergePart | undefined;
  readonly theirs: MergePart | undefined;
  /** What may be chosen. */
  readonly choices: readonly MergeChoice[];
}

/** `both` keeps mine, and theirs beside it as a copy under a new id. */
export type MergeChoice = 'mine' | 'theirs' | 'both';

export interface PlaybookMerge {
  /** With mine in every conflict for which nothing was chosen. */
  readonly merged: Playbook;
  readonly conflicts: readonly MergeConflict[];
}

/** Names a conflict in the choices: 'play lantern'. */
export function conflictId({ kind, key }: Pick<MergeConflict, 'kind' | 'key'>): string {
  return `${kind} ${key}`;
}

/**
 * Merges two copies of a playbook part by part. `base` is what both come from: then what only one side changed is taken from it. Without it, what only
 * one side has is taken. What both changed in different ways is a conflict, a removal against a change too; where nothing was chosen for it, mine stays.
 *
 * Pure: ask again with `choices`, by `conflictId`, to get the playbook that follows from them. A choice that a conflict does not offer counts as mine.
 */
export function mergePlaybooks(
  base: Playbook | undefined,
  mine: Playbook,
  theirs: Playbook,
  choices: ReadonlyMap<string, MergeChoice> = new Map(),
): PlaybookMerge {
  const conflicts: MergeConflict[] = [];
  const settle = (conflict: Omit<MergeConflict, 'choices'>): MergeChoice => {
    const offered = choicesFor(conflict);
    conflicts.push({ ...conflict, choices: offered });
    const chosen = choices.get(conflictId(conflict));
    return chosen !== undefined && offered.includes(chosen) ? chosen : 'mine';
  };
  const one = <T extends MergePart>(kind: MergeKind, read: (playbook: Playbook) => T | undefined): T | undefined => {
    const [left, right] = [read(mine), read(theirs)];
    const outcome = mergeValues(base && { value: read(base) }, left, right);
    const conflict = { kind, key: kind, name: kindNames[kind], mine: left, theirs: right };
    const taken = outcome === 'conflict' ? settle(conflict) : outcome;
    return taken === 'theirs' ? right : left;
  };
  const many = <T extends ListPart>(kind: MergeKind, read: (playbook: Playbook) => readonly T[] | undefined): T[] => {
    const merge = mergeLists(base && (read(base) ?? []), read(mine) ?? [], read(theirs) ?? [], nameOf);
    return assemble(merge, (item) => settle({ kind, key: item.key, name: titleOf(item), ...sides(item) }));
  };
  const optional = <T extends ListPart>(
    kind: MergeKind,
    list: 'sets' | 'schemes' | 'opponents' | 'practices' | 'quizzes' | 'chances',
  ): { [list: string]: T[] } => {
    const items = many<T>(kind, (playbook) => playbook[list] as readonly T[] | undefined);
    const has = (playbook: Playbook) => playbook[list] !== undefined;
    const taken = mergeValues(base && { value: has(base) }, has(mine), has(theirs)) === 'theirs' ? theirs : mine;
    return items.length > 0 || has(taken) ? { [list]: items } : {};
  };
  const head = one('team', teamHead)!;
  const roster = many<Player>('player', (playbook) => playbook.team.roster);
  const settings = one('settings', (playbook) => playbook.settings);
  const notes = one('notes', (playbook) => playbook.notes);
  const merged: Playbook = {
    format: mine.format,
    version: mine.version,
    team: { ...head, roster },
    ...optional<OwnSet>('set', 'sets'),
    plays: many<PlayEntry>('play', (playbook) => playbook.plays),
    ...optional<SchemeEntry>('scheme', 'schemes'),
    ...optional<Opponent>('opponent', 'opponents'),
    ...optional<Practice>('practice', 'practices'),
    ...optional<QuizEntry>('quiz', 'quizzes'),
    ...optional<Chance>('chance', 'chances'),
    ...(settings !== undefined && { settings }),
    ...(notes !== undefined && { notes }),
    ...copiesOf(mine, theirs),
  };
  return { merged, conflicts };
}

type ListPart = PlayEntry | Player | OwnSet | SchemeEntry | Opponent | Practice | QuizEntry | Chance;

const kindNames: Readonly<Record<MergeKind, string>> = {
  play: 'Play',
  player: 'Player',
  team: 'Team',
  set: 'Set',
  scheme: 'Scheme',
  opponent: 'Opponent',
  practice: 'Practice plan',
  quiz: 'Quiz',
  chance: 'Man-up',
  settings: 'Settings',
  notes: 'Notes',
};

function choicesFor({ kind, mine, theirs }: Omit<MergeConflict, 'choices'>): readonly MergeChoice[] {
  // Two players cannot wear one number, codes that come back go by the id of their quiz, and of the rest a playbook has only one.
  const hasId = ['play', 'set', 'scheme', 'opponent', 'practice', 'chance'].includes(kind);
  return hasId && mine !== undefined && theirs !== undefined ? ['mine', 'theirs', 'both'] : ['mine', 'theirs'];
}

function sides<T>({ mine, theirs }: MergedItem<T>): Pick<MergedItem<T>, 'mine' | 'theirs'> {
  return { mine, theirs };
}

function nameOf(part: ListPart): string {
  return 'number' in part ? String(part.number) : part.id;
}

function titleOf({ key, mine, theirs }: MergedItem<ListPart>): string {
  const part = mine ?? theirs;
  if (part === undefined) return key;
  return ('result' in part ? chanceTitle(part) : part.name) || key;
}

function teamHead({ team: { roster: _, ...head } }: Playbook): TeamHead {
  return head;
}

/** What is merged comes from all that either came from. */
function copiesOf(mine: Playbook, theirs: Playbook): Pick<Playbook, 'copies'> {
  if (mine.copies === undefined && theirs.copies === undefined) return {};
  return { copies: [...new Set([...(mine.copies ?? []), ...(theirs.copies ?? [])])].slice(-limits.copies) };
}

/** The merged list: what stays, in its order; a copy stands behind its original. */
function assemble<T extends ListPart>(merge: ListMerge<T>, settle: (item: MergedItem<T>) => MergeChoice): T[] {
  const item_byKey = new Map(merge.items.map((item) => [item.key, item]));
  const taken = merge.items.flatMap(({ mine, theirs }) => [mine, theirs]).filter((item) => item !== undefined);
  const ids = new Set(taken.map(nameOf));
  // In the order of the lists, not of the merge, so that conflicts come in an order that no choice changes.
  const choice_byKey = new Map(
    merge.items.map((item) => [item.key, item.outcome === 'conflict' ? settle(item) : item.outcome]),
  );
  return merge.order.flatMap((key) => {
    const { mine, theirs } = item_byKey.get(key)!;
    const choice = choice_byKey.get(key);
    const kept = choice === 'theirs' ? theirs : mine;
    if (choice === 'both' && kept !== undefined && theirs !== undefined) return [kept, copyOf(theirs, ids)];
    return kept === undefined ? [] : [kept];
  });
}

/** The same under an id that nobody has; `ids` gets it. */
function copyOf<T extends ListPart>(part: T, ids: Set<string>): T {
  if ('number' in part) return part;
  let count = 2;
  const idWith = (): string => `${part.id.slice(0, limits.id - 4)}-${count}`;
  while (ids.has(idWith())) count++;
  ids.add(idWith());
  if ('result' in part) return { ...part, id: idWith() };
  return { ...part, id: idWith(), name: `${part.name.slice(0, limits.name - 7)} (${count})` };
}

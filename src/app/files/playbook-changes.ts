import {
  type Chance,
  chanceTitle,
  type MergeKind,
  type MergePart,
  type Opponent,
  type OwnSet,
  type Playbook,
  type PlayEntry,
  type Player,
  type Practice,
  type QuizEntry,
  type SchemeEntry,
  sameValue,
} from '../../playbook/index.ts';
import { type Difference, differencesOf } from './difference.ts';
import { partFacts } from './part-facts.ts';

/** One part of a playbook that is another, or not there, in a second one. */
export interface PartChange {
  readonly kind: MergeKind;
  readonly key: string;
  /** For people. */
  readonly name: string;
  readonly before: MergePart | undefined;
  readonly after: MergePart | undefined;
}

export interface PlaybookChanges {
  readonly parts: readonly PartChange[];
  /** The plays that both have stand in another order. */
  readonly isReordered: boolean;
}

/** What changes from one playbook to another, part by part: team and settings, plays, players, then the rest. */
export function playbookChanges(before: Playbook, after: Playbook): PlaybookChanges {
  const parts = [
    ...single('team', 'Team', headOf(before), headOf(after)),
    ...listed<PlayEntry>('play', before.plays, after.plays),
    ...listed<Player>('player', before.team.roster, after.team.roster),
    ...listed<OwnSet>('set', before.sets, after.sets),
    ...listed<SchemeEntry>('scheme', before.schemes, after.schemes),
    ...listed<Opponent>('opponent', before.opponents, after.opponents),
    ...listed<Practice>('practice', before.practices, after.practices),
    ...listed<QuizEntry>('quiz', before.quizzes, after.quizzes),
    ...listed<Chance>('chance', before.chances, after.chances),
    ...single('settings', 'Settings', before.settings, after.settings),
    ...single('notes', 'Notes', before.notes, after.notes),
  ];
  return { parts, isReordered: isReordered(before.plays, after.plays) };
}

/** In a coach's words, where the two copies of a part differ. */
export function partDifferences(
  kind: MergeKind,
  before: { readonly part: MergePart | undefined; readonly playbook: Playbook },
  after: { readonly part: MergePart | undefined; readonly playbook: Playbook },
): readonly Difference[] {
  return differencesOf(partFacts(kind, before.part, before.playbook), partFacts(kind, after.part, after.playbook));
}

const kindWords: Readonly<Record<MergeKind, string>> = {
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

/** What a part is called on the page: `Play “Lantern”`, `Player #7 Ravi Lindqvist`, `Settings`. */
export function partTitle({ kind, key, name }: Pick<PartChange, 'kind' | 'key' | 'name'>): string {
  if (kind === 'team' || kind === 'settings' || kind === 'notes') return kindWords[kind];
  return kind === 'player' ? `Player #${key} ${name}`.trimEnd() : `${kindWords[kind]} “${name}”`;
}

type ListPart = PlayEntry | Player | OwnSet | SchemeEntry | Opponent | Practice | QuizEntry | Chance;

function headOf({ team: { roster: _, ...head } }: Playbook): Omit<Playbook['team'], 'roster'> {
  return head;
}

function single(
  kind: MergeKind,
  name: string,
  before: MergePart | undefined,
  after: MergePart | undefined,
): readonly PartChange[] {
  return sameValue(before, after) ? [] : [{ kind, key: kind, name, before, after }];
}

function listed<T extends ListPart>(
  kind: MergeKind,
  before: readonly T[] = [],
  after: readonly T[] = [],
): readonly PartChange[] {
  const [old, now] = [byKey(before), byKey(after)];
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((key) => {
    const [first, second] = [old.get(key), now.get(key)];
    if (sameValue(first, second)) return [];
    return [{ kind, key, name: titleOf(second ?? first) || key, before: first, after: second }];
  });
}

// While somebody types, an id or a number may be there twice: the second is told as one of its own.
function byKey<T extends ListPart>(parts: readonly T[]): ReadonlyMap<string, T> {
  const found = new Map<string, T>();
  for (const part of parts) {
    const name = keyOf(part);
    let key = name;
    for (let count = 2; found.has(key); count++) key = `${name} #${count}`;
    found.set(key, part);
  }
  return found;
}

function titleOf(part: ListPart | undefined): string {
  if (part === undefined) return '';
  return 'result' in part ? chanceTitle(part) : part.name;
}

function keyOf(part: ListPart): string {
  return 'number' in part ? String(part.number) : part.id;
}

function isReordered(before: readonly PlayEntry[], after: readonly PlayEntry[]): boolean {
  const [old, now] = [before.map(({ id }) => id), after.map(({ id }) => id)];
  const stayed = old.filter((id) => now.includes(id));
  return now.filter((id) => old.includes(id)).some((id, index) => id !== stayed[index]);
}

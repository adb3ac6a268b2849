import fc from 'fast-check';
import type { Playbook } from './schema.ts';

/** One change of a playbook, as somebody may make it; it keeps the identity of what it does not touch. */
export type Change = (playbook: Playbook) => Playbook;

const word = fc.constantFrom('Anchor', 'Buoy', 'Cove', 'Dune', '');
const at = fc.nat({ max: 5 });

type Plays = Playbook['plays'];
type Roster = Playbook['team']['roster'];

function withPlays(change: (plays: Plays) => Plays): Change {
  return (playbook) => ({ ...playbook, plays: change(playbook.plays) });
}

function withRoster(change: (roster: Roster) => Roster): Change {
  return (playbook) => ({ ...playbook, team: { ...playbook.team, roster: change(playbook.team.roster) } });
}

function replaced<T>(list: readonly T[], index: number, change: (item: T) => T): T[] {
  return list.map((item, i) => (list.length > 0 && i === index % list.length ? change(item) : item));
}

function removed<T>(list: readonly T[], index: number): T[] {
  return list.filter((_, i) => i !== index % Math.max(1, list.length));
}

function moved<T>(list: readonly T[], from: number, to: number): T[] {
  if (list.length === 0) return [];
  const item = list[from % list.length]!;
  const rest = removed(list, from);
  return [...rest.slice(0, to), item, ...rest.slice(to)];
}

function without<K extends keyof Playbook>(playbook: Playbook, key: K): Playbook {
  const { [key]: _, ...rest } = playbook;
  return rest as Playbook;
}

/** Any change of any part, among them the odd ones that are only made in passing: an id twice, an empty name, no list at all. */
export const change: fc.Arbitrary<Change> = fc.oneof(
  fc.tuple(at, word).map(([i, name]) => withPlays((plays) => replaced(plays, i, (play) => ({ ...play, name })))),
  fc.tuple(at, at).map(([i, n]) => withPlays((plays) => replaced(plays, i, (play) => ({ ...play, id: `id-${n}` })))),
  at.map((i) => withPlays((plays) => removed(plays, i))),
  fc.tuple(at, at).map(([from, to]) => withPlays((plays) => moved(plays, from, to))),
  fc
    .tuple(at, at)
    .map(([i, n]) =>
      withPlays((plays) => [
        ...plays.slice(0, i),
        ...plays.slice(0, 1).map((p) => ({ ...p, id: `new-${n}` })),
        ...plays.slice(i),
      ]),
    ),
  fc.constant(withPlays((plays) => [...plays, ...plays.slice(0, 1)])),
  fc.tuple(at, word).map(([i, name]) => withRoster((roster) => replaced(roster, i, (player) => ({ ...player, name })))),
  fc
    .tuple(at, fc.nat({ max: 99 }))
    .map(([i, number]) => withRoster((roster) => replaced(roster, i, (player) => ({ ...player, number })))),
  at.map((i) => withRoster((roster) => removed(roster, i))),
  fc.tuple(at, at).map(([from, to]) => withRoster((roster) => moved(roster, from, to))),
  fc.constant((playbook: Playbook) => without(playbook, 'quizzes')),
  fc.tuple(word, at).map(([name, number]) => (playbook: Playbook) => ({
    ...playbook,
    quizzes: [
      ...(playbook.quizzes ?? []),
      {
        id: name.toLowerCase() || 'q',
        name,
        play: 'lantern',
        questions: [{ carrier: 'X', scheme: 'jump', right: 'Feed C' }],
        results: [{ number, round: 1, answers: [{ asked: 1, right: 0 }] }],
      },
    ],
  })),
  fc.constant((playbook: Playbook) => without(playbook, 'chances')),
  fc
    .tuple(at, fc.constantFrom('goal' as const, 'saved' as const, 'expired' as const), word)
    .map(([n, result, notes]) => (playbook: Playbook) => ({
      ...playbook,
      chances: [...(playbook.chances ?? []), { id: `c-${n}`, side: 'ours' as const, result, opponent: 'gone', notes }],
    })),
  at.map((i) => (playbook: Playbook) => ({ ...playbook, chances: removed(playbook.chances ?? [], i) })),
  word.map((name) => (playbook: Playbook) => ({ ...playbook, team: { ...playbook.team, name } })),
  word.map((notes) => (playbook: Playbook) => ({ ...playbook, notes })),
  fc.constant((playbook: Playbook) => without(playbook, 'notes')),
  fc
    .integer({ min: 20, max: 90 })
    .map((penaltySeconds) => (playbook: Playbook) => ({ ...playbook, settings: { penaltySeconds } })),
  fc.constant((playbook: Playbook) => without(playbook, 'settings')),
  fc.constant((playbook: Playbook) => without(playbook, 'opponents')),
  fc.constant((playbook: Playbook) => ({ ...playbook, opponents: [] })),
  fc.constant((playbook: Playbook) => ({ ...playbook, chances: [] })),
  fc.constant((playbook: Playbook) => without(playbook, 'practices')),
  fc.tuple(word, at).map(([name, players]) => (playbook: Playbook) => ({
    ...playbook,
    practices: [
      ...(playbook.practices ?? []),
      {
        id: name.toLowerCase() || 'p',
        name,
        minutes: 20,
        players,
        plays: [],
        blocks: [{ kind: 'live' as const, minutes: 4 }],
      },
    ],
  })),
  word.map((name) => (playbook: Playbook) => ({
    ...playbook,
    opponents: [...(playbook.opponents ?? []), { id: name.toLowerCase() || 'x', name }],
  })),
);

export const changes = fc.array(change, { maxLength: 8 });

export function applyAll(playbook: Playbook, list: readonly Change[]): Playbook {
  return list.reduce((all, one) => one(all), playbook);
}

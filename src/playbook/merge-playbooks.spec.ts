import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { hasErrors } from './diagnostic.ts';
import { conflictId, type MergeChoice, mergePlaybooks } from './merge-playbooks.ts';
import { parsePlaybook } from './parse.ts';
import type { Playbook } from './schema.ts';
import { serializePlaybook } from './serialize.ts';

const [first, second, third] = demoPlaybook.plays as [Playbook['plays'][0], Playbook['plays'][0], Playbook['plays'][0]];
const withPlays = (plays: Playbook['plays'], more: Partial<Playbook> = {}): Playbook => ({
  ...demoPlaybook,
  ...more,
  plays,
});
const renamed = (play: Playbook['plays'][0], name: string) => ({ ...play, name });
const fresh = { ...first, id: 'fresh', name: 'Fresh' };

/** Ids of the merged plays with names that differ from the demo's, then the conflicts. */
function outcome(
  base: Playbook | undefined,
  mine: Playbook,
  theirs: Playbook,
  choices: Record<string, MergeChoice> = {},
) {
  const { merged, conflicts } = mergePlaybooks(base, mine, theirs, new Map(Object.entries(choices)));
  const plays = merged.plays.map(({ id, name }) =>
    name === demoPlaybook.plays.find((play) => play.id === id)?.name ? id : `${id}=${name}`,
  );
  return `${plays.join(' ')} | ${conflicts.map(conflictId).join(', ')}`;
}

const [a, b, c] = [first.id, second.id, third.id];

describe('plays', () => {
  test.each<[string, Playbook['plays'], Playbook['plays'], string]>([
    [
      'each changed another',
      [renamed(first, 'M'), second, third],
      [first, renamed(second, 'T'), third],
      `${a}=M ${b}=T ${c} | `,
    ],
    [
      'both changed one alike',
      [renamed(first, 'M'), second, third],
      [renamed(first, 'M'), second, third],
      `${a}=M ${b} ${c} | `,
    ],
    [
      'both changed one',
      [renamed(first, 'M'), second, third],
      [renamed(first, 'T'), second, third],
      `${a}=M ${b} ${c} | play ${a}`,
    ],
    ['one removed what the other left', [second, third], [first, second, third], `${b} ${c} | `],
    [
      'one removed what the other changed',
      [second, third],
      [renamed(first, 'T'), second, third],
      `${b} ${c} | play ${a}`,
    ],
    [
      'the other removed what one changed',
      [renamed(first, 'M'), second, third],
      [second, third],
      `${a}=M ${b} ${c} | play ${a}`,
    ],
    ['both removed', [second, third], [second, third], `${b} ${c} | `],
    [
      'each added one of the same id',
      [first, second, third, fresh],
      [renamed(fresh, 'Other'), first, second, third],
      `fresh=Fresh ${a} ${b} ${c} | play fresh`,
    ],
    [
      'the other added one in the middle',
      [renamed(first, 'M'), second, third],
      [first, fresh, second, third],
      `${a}=M fresh=Fresh ${b} ${c} | `,
    ],
    [
      'the other put them in order',
      [renamed(first, 'M'), second, third],
      [third, second, first],
      `${c} ${b} ${a}=M | `,
    ],
    ['both put them in order', [third, first, second], [second, first, third, fresh], `${c} fresh=Fresh ${a} ${b} | `],
    ['one left all, the other removed all', [first, second, third], [], ' | '],
  ])('%s', (_, mine, theirs, expected) => {
    expect(outcome(demoPlaybook, withPlays(mine), withPlays(theirs))).toBe(expected);
  });

  test.each<[MergeChoice, string]>([
    ['mine', `${a}=M ${b} ${c} | play ${a}`],
    ['theirs', `${a}=T ${b} ${c} | play ${a}`],
    ['both', `${a}=M ${a}-2=T (2) ${b} ${c} | play ${a}`],
  ])('in a conflict %s can be chosen', (choice, expected) => {
    const mine = withPlays([renamed(first, 'M'), second, third]);
    const theirs = withPlays([renamed(first, 'T'), second, third]);
    expect(outcome(demoPlaybook, mine, theirs, { [`play ${a}`]: choice })).toBe(expected);
  });

  test('a copy gets an id that nobody has', () => {
    const taken = { ...fresh, id: `${a}-2`, name: 'Taken' };
    const mine = withPlays([renamed(first, 'M'), taken]);
    const theirs = withPlays([renamed(first, 'T')]);
    expect(outcome(withPlays([first]), mine, theirs, { [`play ${a}`]: 'both' })).toBe(
      `${a}=M ${a}-3=T (3) ${a}-2=Taken | play ${a}`,
    );
  });

  test('a removal can be chosen against a change', () => {
    const theirs = withPlays([second, third]);
    const mine = withPlays([renamed(first, 'M'), second, third]);
    expect(outcome(demoPlaybook, mine, theirs, { [`play ${a}`]: 'theirs' })).toBe(`${b} ${c} | play ${a}`);
    const back = outcome(demoPlaybook, theirs, mine, { [`play ${a}`]: 'theirs' });
    expect(back).toBe(`${a}=M ${b} ${c} | play ${a}`);
    expect(outcome(demoPlaybook, theirs, mine, { [`play ${a}`]: 'both' })).toBe(`${b} ${c} | play ${a}`);
  });
});

describe('without a base', () => {
  test.each<[string, Playbook['plays'], Playbook['plays'], string]>([
    ['what only one has is taken', [first], [second, third], `${a} ${b} ${c} | `],
    ['what differs is a conflict', [renamed(first, 'M')], [first], `${a}=M | play ${a}`],
  ])('%s', (_, mine, theirs, expected) => {
    expect(outcome(undefined, withPlays(mine), withPlays(theirs))).toBe(expected);
  });
});

describe('the other parts', () => {
  const [player, ...others] = demoPlaybook.team.roster as [Playbook['team']['roster'][0]];
  const team = (change: Partial<Playbook['team']>): Playbook => ({
    ...demoPlaybook,
    team: { ...demoPlaybook.team, ...change },
  });

  test.each<[string, Playbook, Playbook, readonly string[]]>([
    [
      'a player',
      team({ roster: [{ ...player, name: 'M' }, ...others] }),
      team({ roster: [{ ...player, name: 'T' }, ...others] }),
      [`player ${player.number}`],
    ],
    [
      'the team, and a player beside it',
      team({ name: 'M' }),
      team({ name: 'T', roster: [{ ...player, name: 'T' }, ...others] }),
      ['team team'],
    ],
    [
      'settings',
      { ...demoPlaybook, settings: { penaltySeconds: 30 } },
      { ...demoPlaybook, settings: { penaltySeconds: 45 } },
      ['settings settings'],
    ],
    ['notes', { ...demoPlaybook, notes: 'M' }, { ...demoPlaybook, notes: 'T' }, ['notes notes']],
    [
      'sets',
      { ...demoPlaybook, sets: [{ id: 's', name: 'M', spots: {} }] },
      { ...demoPlaybook, sets: [{ id: 's', name: 'T', spots: {} }] },
      ['set s'],
    ],
    [
      'opponents that both sides added',
      { ...demoPlaybook, opponents: [{ id: 'o', name: 'M' }] },
      { ...demoPlaybook, opponents: [{ id: 'o', name: 'T' }] },
      ['opponent o'],
    ],
  ])('%s', (_, mine, theirs, expected) => {
    const { conflicts } = mergePlaybooks(demoPlaybook, mine, theirs);
    expect(conflicts.map(conflictId)).toEqual(expected);
    const all = new Map(conflicts.map((conflict) => [conflictId(conflict), 'theirs' as const]));
    expect(mergePlaybooks(demoPlaybook, mine, theirs, all).merged).toEqual(theirs);
  });

  test('what comes of two sound playbooks can be read again', () => {
    const mine = team({ name: 'M', roster: [{ ...player, name: 'M' }, ...others] });
    const theirs = withPlays([renamed(first, 'T'), second, fresh]);
    const { merged } = mergePlaybooks(demoPlaybook, mine, theirs);
    const { value, diagnostics } = parsePlaybook(serializePlaybook(merged));
    expect(hasErrors(diagnostics)).toBe(false);
    expect(value).toEqual(merged);
  });
});

describe('man-ups that were played', () => {
  const chance = (id: string, result: 'goal' | 'saved' | 'wide' = 'goal') => ({
    id,
    side: 'ours' as const,
    result,
    date: '2026-03-14',
  });
  const base = { ...demoPlaybook, chances: [chance('a')] };

  test('that each wrote down are both kept', () => {
    const mine = { ...base, chances: [chance('a'), chance('b')] };
    const theirs = { ...base, chances: [chance('a'), chance('c')] };
    const { merged, conflicts } = mergePlaybooks(base, mine, theirs);
    expect(merged.chances!.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect(conflicts).toEqual([]);
  });

  test('of which both say something else are asked for by what they were, and may both stay', () => {
    const mine = { ...base, chances: [chance('a', 'saved')] };
    const theirs = { ...base, chances: [chance('a', 'wide')] };
    const { conflicts } = mergePlaybooks(base, mine, theirs);
    expect(conflicts.map(({ kind, name, choices }) => [kind, name, choices])).toEqual([
      ['chance', '2026-03-14, ours: saved', ['mine', 'theirs', 'both']],
    ]);
    const { merged } = mergePlaybooks(base, mine, theirs, new Map([['chance a', 'both']]));
    expect(merged.chances).toEqual([chance('a', 'saved'), { ...chance('a', 'wide'), id: 'a-2' }]);
  });
});

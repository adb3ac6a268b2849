import { describe, expect, test } from 'vitest';
import { demoPlaybook, type MergeKind, type Playbook, type PlayEntry, type Player } from '../../playbook/index.ts';
import { partDifferences, partTitle, playbookChanges } from './playbook-changes.ts';

const play = (change: (play: PlayEntry) => PlayEntry): Playbook => ({
  ...demoPlaybook,
  plays: demoPlaybook.plays.map((one, index) => (index === 0 ? change(one) : one)),
});
const player = (change: (player: Player) => Player): Playbook => ({
  ...demoPlaybook,
  team: { ...demoPlaybook.team, roster: demoPlaybook.team.roster.map((one) => (one.number === 7 ? change(one) : one)) },
});
const beat = (id: string, change: (one: PlayEntry['beats'][number]) => PlayEntry['beats'][number]): Playbook =>
  play((one) => ({ ...one, beats: one.beats.map((each) => (each.id === id ? change(each) : each)) }));

/** Each difference as one line: what, what only the demo says, what only the other says. */
function told(after: Playbook): readonly string[] {
  return playbookChanges(demoPlaybook, after).parts.flatMap((change) =>
    partDifferences(
      change.kind,
      { part: change.before, playbook: demoPlaybook },
      { part: change.after, playbook: after },
    ).map(({ what, before, after: now }) => `${what}: ${before.join(' / ')} > ${now.join(' / ')}`),
  );
}

describe('what differs between two copies, in words', () => {
  test.each<[string, Playbook, readonly string[]]>([
    ['nothing', structuredClone(demoPlaybook), []],
    ['a name', play((one) => ({ ...one, name: 'Torch' })), ['Name: Lantern > Torch']],
    ['a place', play((one) => ({ ...one, spots: { X: [1, -6.5] } })), ['Place of X: 0, −6 > 1, −6.5']],
    [
      'where a man goes',
      beat('down', (one) => ({ ...one, do: ['TL pass WL', 'C cut to -3,6'] })),
      ['Step “down”: C cuts to −2, 6 > C cuts to −3, 6'],
    ],
    [
      'a man who waits, and one who fills a place',
      beat('behind', (one) => ({ ...one, do: ['WL pass X', 'TL replace to WL', 'WR sneak via 7,2 to 6,3'] })),
      [
        'Step “behind”: TL fills the empty place at −5, 15 / WR sneaks in to 6, 3 when nobody looks > TL fills the empty place at WL / WR sneaks in by 7, 2 to 6, 3',
      ],
    ],
    [
      'what begins a step',
      beat('look', (one) => ({ ...one, on: 'call behind + 1.5' })),
      ['Step “look” begins: when X catches > 1.5 s after "behind" begins'],
    ],
    [
      'a step more',
      play((one) => ({ ...one, beats: [...one.beats, { id: 'again', on: 'catch TL', do: ['TL shoot'] }] })),
      ['Steps:  > “again”', 'Step “again” begins:  > when TL catches', 'Step “again”:  > TL shoots'],
    ],
    [
      'reads in another order',
      play((one) => ({ ...one, reads: [...one.reads!].reverse().slice(0, 2) })),
      [
        "Reads, in order: in “behind”, if WL is free, WL shoots / in “finish”, if WR is open and WR's man has left him, X feeds WR > ",
      ],
    ],
    [
      'a phrase that is half typed',
      beat('down', (one) => ({ ...one, do: ['TL pass WL', 'C cut to'] })),
      ['Step “down”: C cuts to −2, 6 > C cut to'],
    ],
    [
      'the last ten seconds',
      play((one) => ({ ...one, lastTen: { reads: one.lastTen!.reads! } })),
      [
        'Last ten seconds: steps: “pinch” > ',
        'Last ten seconds: step “pinch” begins: when the set is up > ',
        'Last ten seconds: step “pinch”: TR steps in, ready to shoot, at 4, 11 / TL steps in, ready to shoot, at −4, 11 / WL cuts to −7, 4 / C cuts to 2, 5 > ',
      ],
    ],
    [
      'a player',
      player((one) => ({ ...one, hand: 'both', grades: { ...one.grades, shoot: 4 }, absent: true })),
      ['Hand: left > both', 'Shooting, grade: 5 > 4', 'Absent:  > yes'],
    ],
    [
      'the level',
      { ...demoPlaybook, team: { ...demoPlaybook.team, level: 'highSchool' } },
      ['Level: 14U > High school'],
    ],
    [
      'settings',
      { ...demoPlaybook, settings: { ...demoPlaybook.settings, rules: { 'penalties.goalReleases': false } } },
      ['Rule penalties.goalReleases:  > no'],
    ],
  ])('%s', (_, after, expected) => {
    expect(told(after)).toEqual(expected);
  });

  test('says which parts came, went and changed', () => {
    const after: Playbook = {
      ...demoPlaybook,
      plays: [{ ...demoPlaybook.plays[1]!, id: 'new', name: 'New' }, ...demoPlaybook.plays.slice(1)],
      opponents: [],
    };
    const { parts, isReordered } = playbookChanges(demoPlaybook, after);
    const news = parts.map(
      (part) => `${partTitle(part)} ${part.before === undefined ? '+' : part.after === undefined ? '-' : '~'}`,
    );
    expect(news).toEqual([
      'Play “New” +',
      'Play “Lantern” -',
      ...demoPlaybook.opponents!.map(({ name }) => `Opponent “${name}” -`),
    ]);
    expect(isReordered).toBe(false);
  });

  test('says that plays stand in another order', () => {
    const after = { ...demoPlaybook, plays: [...demoPlaybook.plays].reverse() };
    expect(playbookChanges(demoPlaybook, after)).toEqual({ parts: [], isReordered: true });
  });

  test('a number that is there twice is two players', () => {
    const roster = [...demoPlaybook.team.roster, { number: 7, name: 'Second', hand: 'right' as const }];
    const { parts } = playbookChanges(demoPlaybook, { ...demoPlaybook, team: { ...demoPlaybook.team, roster } });
    expect(parts.map(partTitle)).toEqual(['Player #7 #2 Second']);
  });

  test.each<[MergeKind, string]>([
    ['play', 'Play “Lantern”'],
    ['player', 'Player #lantern Lantern'],
    ['team', 'Team'],
    ['notes', 'Notes'],
  ])('a part of kind %s has its title', (kind, title) => {
    expect(partTitle({ kind, key: 'lantern', name: 'Lantern' })).toBe(title);
  });
});

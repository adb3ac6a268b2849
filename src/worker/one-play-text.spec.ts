import { describe, expect, it } from 'vitest';
import { compileChance, createChanceState, runTrials } from '../engine/index.ts';
import { demoPlaybook, type Playbook, parsePlaybook } from '../playbook/index.ts';
import { buildMatchup, type MatchupChoice, manDownSchemeIds } from './build-matchup.ts';
import { onePlayText } from './one-play-text.ts';

const ownScheme = {
  id: 'theirs',
  name: 'Theirs',
  men: { a: [0, 12], b: [-6, 8], c: [6, 8], d: [-3, 3], e: [3, 3] } as Record<string, [number, number]>,
  rows: [
    { ball: 'FAR', do: ['a ball', 'b man L', 'c man R', 'd man LL', 'e man RR'] },
    { ball: 'TR', do: ['a ball', 'b man TL', 'c man WR', 'd man WL', 'e man C'] },
  ],
};
const ownSet = {
  id: 'wide',
  name: 'Wide',
  spots: Object.fromEntries(
    Object.entries({ FAR: [0, 16], L: [-12, 10], R: [12, 10], LL: [-9, 3], RR: [9, 3], C: [0, 5] }).map(([id, at]) => [
      id,
      { at: at as [number, number] },
    ]),
  ),
};
const full: Playbook = { ...demoPlaybook, sets: [ownSet], schemes: [...(demoPlaybook.schemes ?? []), ownScheme] };
const [opponent] = demoPlaybook.opponents ?? [];

function tally(playbook: Playbook, choice: MatchupChoice) {
  const built = buildMatchup(playbook, choice);
  if (built.kind === 'refused') throw new Error(built.reason);
  const model = compileChance(built.matchup, 7);
  return runTrials(model, createChanceState(model), 0, 4);
}
function reduced(playbook: Playbook, choice: { play: string; scheme: string; opponent?: string }): Playbook {
  const { value, diagnostics } = parsePlaybook(onePlayText(playbook, choice));
  if (value === undefined) throw new Error(diagnostics.map(({ message }) => message).join(' '));
  return value;
}

describe('the text of one play', () => {
  const schemes = manDownSchemeIds(full);
  it.each(schemes)('plays against %s as the whole playbook does', (scheme) => {
    for (const { id: play } of demoPlaybook.plays) {
      const choice = { play, scheme, side: 'right', penalty: 30, level: null } as const;
      expect(tally(reduced(full, choice), choice)).toEqual(tally(full, choice));
    }
  });

  it('plays an opponent as well as he plays, and his goalkeeper as he was seen', () => {
    const keeper = Array.from({ length: 60 }, (_, at) => ({
      at: [at % 2 ? 2 : -2, 5] as [number, number],
      result: at % 2 ? ('goal' as const) : ('saved' as const),
    }));
    const loose = { ...opponent!, discipline: { all: 'loose' as const }, keeper };
    const playbook: Playbook = { ...full, opponents: [loose] };
    const choice = {
      play: 'lantern',
      scheme: 'jump',
      opponent: loose.id,
      side: 'left',
      penalty: 30,
      level: null,
    } as const;
    expect(tally(reduced(playbook, choice), choice)).toEqual(tally(playbook, choice));
  });

  const lantern = { play: 'lantern', scheme: 'jump' };
  const [first, ...others] = demoPlaybook.plays;
  const { roster } = demoPlaybook.team;
  it.each<[string, Playbook]>([
    ['other plays', { ...full, plays: [first!] }],
    ['half of another play', { ...full, plays: [first!, { ...others[0]!, beats: [] }] }],
    [
      'names and notes',
      {
        ...full,
        notes: 'x',
        team: { ...full.team, name: 'Us', roster: roster.map((one) => ({ ...one, name: 'Anyone', notes: 'x' })) },
      },
    ],
    [
      'what the play is called',
      { ...full, plays: [{ ...first!, name: 'Lamp', notes: 'x', tags: ['x'], archived: true }] },
    ],
    ['own schemes and sets that are not asked about', { ...full, sets: [], schemes: [] }],
    ['opponents who are not asked about', { ...full, opponents: [] }],
  ])('does not depend on %s', (_, playbook) => {
    expect(onePlayText(playbook, lantern)).toBe(onePlayText(full, lantern));
  });

  it.each<[string, Playbook]>([
    ['where a man stands', { ...full, plays: [{ ...first!, spots: { ...first!.spots, TR: [8, 12] } }, ...others] }],
    [
      'who is there',
      { ...full, team: { ...full.team, roster: roster.map((one, at) => (at === 1 ? { ...one, absent: true } : one)) } },
    ],
    ['the rules', { ...full, settings: { ...full.settings, penaltySeconds: 45 } }],
  ])('depends on %s', (_, playbook) => {
    expect(onePlayText(playbook, lantern)).not.toBe(onePlayText(full, lantern));
  });

  it('names nobody', () => {
    const text = onePlayText(full, lantern);
    for (const { name } of roster) expect(text).not.toContain(name);
  });

  it('keeps a depth chart only for spots that are left', () => {
    const field = roster.filter(({ crosse }) => crosse !== 'goalkeeper');
    const depth = { FAR: [field[0]!.number], TR: [field[1]!.number] };
    const playbook: Playbook = { ...full, team: { ...full.team, depth } };
    expect(reduced(playbook, lantern).team.depth).toEqual({ TR: depth.TR });
    expect(reduced(playbook, { play: 'lantern', scheme: 'theirs' }).team.depth).toEqual(depth);
  });
});

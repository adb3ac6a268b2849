import { describe, expect, it } from 'vitest';
import { createAthlete } from '../engine/index.ts';
import { demoPlaybook, type Playbook, toAthlete } from '../playbook/index.ts';
import { buildMatchup } from './build-matchup.ts';

const [play] = demoPlaybook.plays;
/** Everybody of one level but the first man, who plays above his team. */
const playbook: Playbook = {
  ...demoPlaybook,
  team: {
    ...demoPlaybook.team,
    level: '12U',
    roster: demoPlaybook.team.roster.map(({ measured: _, ...player }, i) =>
      i === 1 ? { ...player, level: 'college' as const } : player,
    ),
  },
};

function six(level: '14U' | null) {
  const choice = { play: play!.id, scheme: 'box-zone', side: 'right', penalty: null, level } as const;
  const built = buildMatchup(playbook, choice);
  if (built.kind === 'refused') throw new Error(built.reason);
  return built.players.map((player, i) => ({ player, athlete: built.matchup.six[i]! }));
}

describe('a player with a level of his own', () => {
  it('plays at it, and the others at that of the team', () => {
    const levels = six(null).map(({ player, athlete }) => {
      const alike = (['12U', 'college'] as const).filter(
        (level) => createAthlete({ ...toAthlete(playbook, player), level }).topSpeed === athlete.topSpeed,
      );
      return [player.level ?? 'team', ...alike];
    });
    expect(levels.filter(([own]) => own === 'college')).toEqual([['college', 'college']]);
    expect(levels.filter(([own]) => own === 'team')).toHaveLength(5);
    for (const [own, alike] of levels) if (own === 'team') expect(alike).toBe('12U');
  });

  it('plays at the level of the test when one is asked for, like everybody', () => {
    for (const { player, athlete } of six('14U')) {
      expect(athlete.topSpeed).toBe(createAthlete({ ...toAthlete(playbook, player), level: '14U' }).topSpeed);
    }
  });
});

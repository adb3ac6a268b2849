import { describe, expect, test } from 'vitest';
import { demoPlaybook, withoutNames } from '../../playbook/index.ts';
import { idsWithNames } from './ids-with-names.ts';
import { hasNumbersForNames, withNamesBack } from './names-back.ts';

const hidden = withoutNames(demoPlaybook);

describe('a copy with numbers in place of names', () => {
  test('is known as one', () => {
    expect(hasNumbersForNames(hidden)).toBe(true);
    expect(hasNumbersForNames(demoPlaybook)).toBe(false);
    expect(hasNumbersForNames({ ...hidden, team: { ...hidden.team, roster: [] } })).toBe(false);
  });

  test('gets its names and notes back whole when nothing was changed', () => {
    expect(withNamesBack(hidden, demoPlaybook)).toEqual(demoPlaybook);
  });

  test('keeps what was changed in it, under the names', () => {
    const roster = hidden.team.roster.map((player) =>
      player.number === 25 ? { ...player, hand: 'left' as const } : player,
    );
    const added = { number: 77, name: 'No. 77', hand: 'left' as const };
    const copy = { ...hidden, team: { ...hidden.team, roster: [...roster, added] } };
    const back = withNamesBack(copy, demoPlaybook);
    const known = demoPlaybook.team.roster.find(({ number }) => number === 25);
    expect(back.team.roster.find(({ number }) => number === 25)).toEqual({ ...known, hand: 'left' });
    expect(back.team.roster.at(-1)).toEqual(added);
    expect(back.plays).toEqual(demoPlaybook.plays);
  });

  test('takes nothing from a playbook of other players', () => {
    const other = { ...demoPlaybook, team: { ...demoPlaybook.team, roster: [] }, plays: [], opponents: [] };
    expect(withNamesBack(hidden, other)).toEqual(hidden);
  });
});

test('a short name with a part of a player’s name is told', () => {
  const [lantern, ...others] = demoPlaybook.plays;
  const plays = [{ ...lantern!, id: 'teo-special' }, ...others];
  expect(idsWithNames(demoPlaybook)).toEqual([]);
  expect(idsWithNames({ ...demoPlaybook, plays })).toEqual(['teo-special']);
});

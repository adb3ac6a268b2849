import { describe, expect, it } from 'vitest';
import { demoPlaybook, limits, type Playbook, type Player } from '../../playbook/index.ts';
import { editPlayer, newPlayer, orderWith, removePlayer, renumbered, sortByNumber } from './roster-edits.ts';

const man = (number: number, name = `Man ${number}`): Player => ({ number, name, hand: 'right' });
const withMen = (...roster: Player[]): Playbook => ({ ...demoPlaybook, team: { ...demoPlaybook.team, roster } });

describe('a change of a man', () => {
  it('leaves the others as they were', () => {
    const before = withMen(man(1), man(2));
    const after = editPlayer(before, 1, (player) => ({ ...player, name: 'Noel' }));
    expect(after.team.roster[0]).toBe(before.team.roster[0]);
    expect(after.team.roster[1]).toEqual({ ...man(2), name: 'Noel' });
    expect(after.plays).toBe(before.plays);
  });

  it('that changes nothing gives the playbook itself', () => {
    const before = withMen(man(1));
    expect(editPlayer(before, 0, (player) => player)).toBe(before);
  });

  it('in the empty row adds one who wears the lowest free number', () => {
    const after = editPlayer(withMen(man(1), man(2), man(4)), 3, (player) => ({ ...player, name: 'Noel' }));
    expect(after.team.roster[3]).toEqual({ number: 3, name: 'Noel', hand: 'right' });
  });

  it('adds nobody to a full roster', () => {
    const full = withMen(...Array.from({ length: limits.players }, (_, i) => man(i)));
    expect(editPlayer(full, limits.players, (player) => ({ ...player }))).toBe(full);
  });
});

describe('a man who is taken out', () => {
  it('leaves the depth order too', () => {
    const after = removePlayer(
      demoPlaybook,
      demoPlaybook.team.roster.findIndex(({ number }) => number === 4),
    );
    expect(after.team.depth).toEqual({ X: [19] });
  });

  it('leaves it to the other who wears his number', () => {
    const before = withMen(man(4), man(4, 'Twin'));
    expect(removePlayer(before, 1).team).toMatchObject({ depth: demoPlaybook.team.depth, roster: [man(4)] });
  });

  it('takes an order that is empty then with him', () => {
    const before = { ...demoPlaybook, team: { ...demoPlaybook.team, roster: [man(4)], depth: { X: [4] } } };
    expect(removePlayer(before, 0).team).not.toHaveProperty('depth');
  });

  it('who is not there changes nothing', () => {
    expect(removePlayer(demoPlaybook, 99)).toBe(demoPlaybook);
  });
});

describe('a number in the depth order', () => {
  it('follows its man', () => {
    expect(renumbered({ X: [4, 19], C: [16] }, [man(19), man(16)], 4, 40)).toEqual({ X: [40, 19], C: [16] });
  });

  it('stays while another man wears it too', () => {
    const depth = { X: [4] };
    expect(renumbered(depth, [man(4)], 4, 40)).toBe(depth);
  });
});

describe('an order', () => {
  it.each([
    [[1, 2, 3], 3, 0, [3, 1, 2]],
    [[1, 2, 3], 1, 1, [2, 1, 3]],
    [[1, 2, 3], 2, undefined, [1, 3]],
    [[1, 2], 9, 2, [1, 2, 9]],
    [[], 9, 0, [9]],
  ])('%j with %i at %s is %j', (order, number, to, expected) => {
    expect(orderWith(order, number, to)).toEqual(expected);
  });
});

describe('the roster by number', () => {
  it('keeps those in order who wear the same one', () => {
    const after = sortByNumber(withMen(man(9), man(4), man(4, 'Twin'), man(1)));
    expect(after.team.roster.map(({ name }) => name)).toEqual(['Man 1', 'Man 4', 'Twin', 'Man 9']);
  });

  it('is the same playbook when it is so already', () => {
    const before = withMen(man(1), man(4));
    expect(sortByNumber(before)).toBe(before);
  });
});

it('a new man wears what nobody wears', () => {
  expect(newPlayer([man(1), man(3)]).number).toBe(2);
  expect(newPlayer([]).number).toBe(1);
});

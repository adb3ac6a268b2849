import { describe, expect, it } from 'vitest';
import { demoPlaybook, parsePlaybook, serializePlaybook, type Team } from '../../playbook/index.ts';
import { withStandIns } from './stand-ins.ts';

const { team } = demoPlaybook;
const field = team.roster.filter(({ crosse }) => crosse !== 'goalkeeper');
const keepers = team.roster.filter(({ crosse }) => crosse === 'goalkeeper');

function problemsOf(of: Team): readonly string[] {
  const { diagnostics } = parsePlaybook(serializePlaybook({ ...demoPlaybook, team: of, opponents: [] }));
  return diagnostics.map(({ code }) => code).filter((code) => code === 'roster-short' || code === 'keeper-missing');
}

describe('withStandIns', () => {
  it('leaves a team alone that can be put on the field', () => {
    expect(withStandIns(team)).toEqual({ team, standIns: 0 });
    expect(withStandIns(team).team).toBe(team);
  });

  it.each([
    { has: 'nobody', roster: [], standIns: 6 },
    { has: 'a keeper', roster: keepers, standIns: 6 },
    { has: 'four and a keeper', roster: [...field.slice(0, 4), ...keepers], standIns: 2 },
    { has: 'six and no keeper', roster: field.slice(0, 6), standIns: 0 },
    {
      has: 'six of whom one is away',
      roster: field.slice(0, 6).map((man, at) => ({ ...man, absent: at === 2 })),
      standIns: 1,
    },
    {
      has: 'the highest numbers',
      roster: [
        { ...field[0]!, number: 999 },
        { ...field[1]!, number: 998 },
      ],
      standIns: 4,
    },
  ])('makes a whole unit of a team that has $has', ({ roster, standIns }) => {
    const without: Team = { ...team, roster, depth: {} };
    const made = withStandIns(without);
    expect(made.standIns).toBe(standIns);
    expect(made.team.roster.slice(0, roster.length)).toEqual(roster);
    expect(problemsOf(made.team)).toEqual([]);
    expect(new Set(made.team.roster.map(({ number }) => number)).size).toBe(made.team.roster.length);
  });
});

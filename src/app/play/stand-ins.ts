import type { Player, Team } from '../../playbook/index.ts';

/** Men of the offense in a man-up unit. */
const unitSize = 6;

/** A team that can be put on the field, and how many of its men are not its own. */
export interface ManagedTeam {
  readonly team: Team;
  readonly standIns: number;
}

/**
 * The team with usual men of its level in place of those who are missing for a unit, so that a play can be tried before there is a
 * roster, and while half the team is away. They are nowhere kept. The same team when it is enough.
 */
export function withStandIns(team: Team): ManagedTeam {
  const isField = (player: Player): boolean => player.crosse !== 'goalkeeper' && player.absent !== true;
  const standIns = Math.max(0, unitSize - team.roster.filter(isField).length);
  const hasKeeper = team.roster.some((player) => player.crosse === 'goalkeeper');
  if (standIns === 0 && hasKeeper) return { team, standIns };
  const numbers = freeNumbers(team, standIns + 1);
  const men = numbers.map((number, index): Player => {
    const man = { number, name: `stand-in ${index + 1}`, hand: 'right' } as const;
    return index < standIns ? man : { ...man, crosse: 'goalkeeper' };
  });
  return { team: { ...team, roster: [...team.roster, ...(hasKeeper ? men.slice(0, standIns) : men)] }, standIns };
}

// From the highest down: those are the last that a team gives to anybody.
function freeNumbers({ roster }: Team, count: number): readonly number[] {
  const worn = new Set(roster.map(({ number }) => number));
  return Array.from({ length: highestNumber + 1 }, (_, index) => highestNumber - index)
    .filter((number) => !worn.has(number))
    .slice(0, count);
}

const highestNumber = 999;

import { schemeList, sets } from '../engine/index.ts';
import {
  everyDefender,
  type Opponent,
  type Playbook,
  type PlayEntry,
  type Player,
  type SchemeEntry,
} from '../playbook/index.ts';

/**
 * The text of a playbook in which only what one matchup depends on is left: the team, the play, and the own scheme and the opponent that are
 * asked about. So a play is tried while others are half written, small messages say what changed, and an edit that changes no trial (a name, a note, another play)
 * is seen to change none. Players go by their numbers.
 */
export function onePlayText(playbook: Playbook, choice: { play: string; scheme: string; opponent?: string }): string {
  const scheme = playbook.schemes?.find(({ id }) => id === choice.scheme);
  const play = playbook.plays.find(({ id }) => id === choice.play);
  // The rows of an own scheme may name spots of any set.
  const ownSets = (playbook.sets ?? []).filter(({ id }) => scheme !== undefined || id === play?.set);
  const opponent = playbook.opponents?.find(({ id }) => id === choice.opponent);
  const { format, version, settings } = playbook;
  const reduced: Playbook = {
    format,
    version,
    team: teamOf(playbook, ownSets),
    plays: play === undefined ? [] : [playOf(play)],
    ...(ownSets.length > 0 && { sets: ownSets.map(({ notes: _, ...set }) => set) }),
    ...(scheme && { schemes: [scheme] }),
    ...(opponent && { opponents: [opponentOf(opponent, scheme)] }),
    ...(settings && { settings }),
  };
  return JSON.stringify(reduced);
}

function teamOf({ team }: Playbook, ownSets: NonNullable<Playbook['sets']>): Playbook['team'] {
  const { notes: _, depth, ...rest } = team;
  const spots = new Set([
    ...Object.values(sets).flatMap((set) => set.spots.map(({ id }) => id)),
    ...ownSets.flatMap((set) => Object.keys(set.spots)),
  ]);
  const kept = Object.entries(depth ?? {}).filter(([spot]) => spots.has(spot));
  return {
    ...rest,
    name: 'team',
    roster: team.roster.map(playerOf),
    ...(kept.length > 0 && { depth: Object.fromEntries(kept) }),
  };
}

function playerOf({ notes: _, role: __, ...player }: Player): Player {
  return { ...player, name: `number ${player.number}` };
}

function playOf({ notes: _, tags: __, archived: ___, ...play }: PlayEntry): PlayEntry {
  return { ...play, name: play.id };
}

/**
 * How often he plays which scheme is not asked here: he may play any that is left. What is said of men whom none of these has (of another own
 * scheme) is no part of this matchup, and would be a fault in the reduced playbook.
 */
function opponentOf({ id, discipline, keeper }: Opponent, own: SchemeEntry | undefined): Opponent {
  const schemes = [...schemeList.map((scheme) => scheme.id), ...(own === undefined ? [] : [own.id])];
  const men = new Set([
    everyDefender,
    ...schemeList.flatMap((scheme) => scheme.names),
    ...Object.keys(own === undefined ? {} : own.men),
  ]);
  const said = Object.entries(discipline ?? {}).filter(([man]) => men.has(man));
  return {
    id,
    name: id,
    schemes: Object.fromEntries(schemes.map((scheme) => [scheme, 1])),
    ...(said.length > 0 && { discipline: Object.fromEntries(said) }),
    ...(keeper && { keeper }),
  };
}

import {
  type DisciplineName,
  type Level,
  type Movement,
  movementsOf,
  type SchemeInQuestion,
} from '../../engine/index.ts';
import { everyDefender, type Opponent, type Playbook, toEnginePlay, toEngineScheme } from '../../playbook/index.ts';
import type { TrialSetup } from '../../worker/index.ts';
import { expectedSchemes } from './expected-schemes.ts';
import { schemesBefore, withoutMarked } from './schemes-before.ts';

/** Which schemes may be played against which play of ours: what belief, probe and ticks are about. */
export interface ScoutQuestion {
  /** The play whose set is on the field; its first man with the ball begins the probes. */
  readonly play: string;
  readonly side: 'left' | 'right';
  /** The team's own when `null`. */
  readonly level: Level | null;
  /** Each with how likely it is beforehand, beside the others. */
  readonly schemes: readonly ScoutedScheme[];
  /** Man-ups that those weights count by their names already, by scheme; none when absent. */
  readonly counted?: Readonly<Record<string, number>>;
}

export interface ScoutedScheme {
  readonly id: string;
  readonly weight: number;
  /** How well they are said to play it. */
  readonly discipline?: DisciplineName;
}

/** Men of an ordinary man-down unit. */
const usualMen = 5;

/**
 * The schemes of five men, built in and the coach's own, with how likely each is now and how well it is played: by the opponent's entry where it says so, else as is usual
 * at the level. For what is to be run against him: marks that were taken count in his entry.
 */
export function usualScoutSchemes(playbook: Playbook, opponent?: Opponent): readonly ScoutedScheme[] {
  return withDiscipline(expectedSchemes(playbook, opponent, usualMen), opponent);
}

/** The same before any marks and ticks: for weighing them, so that none counts twice. */
export function scoutSchemesBefore(playbook: Playbook, opponent?: Opponent): readonly ScoutedScheme[] {
  return withDiscipline(schemesBefore(playbook, opponent, usualMen), opponent);
}

/** What is weighed before any marks, and the man-ups that are counted in it by their names. */
export function scoutedBefore(playbook: Playbook, opponent?: Opponent): Pick<ScoutQuestion, 'schemes' | 'counted'> {
  const counted = opponent && withoutMarked(playbook, opponent).counted;
  return { schemes: scoutSchemesBefore(playbook, opponent), ...(counted && { counted }) };
}

function withDiscipline(
  weights: Readonly<Record<string, number>>,
  opponent: Opponent | undefined,
): readonly ScoutedScheme[] {
  const discipline = opponent?.discipline?.[everyDefender];
  return Object.entries(weights).map(([id, weight]) => ({
    id,
    weight,
    ...(discipline && { discipline }),
  }));
}

/** The schemes as the engine takes them. RangeError for one that the playbook does not know. */
export function schemesInQuestion(playbook: Playbook, { play, schemes }: ScoutQuestion): readonly SchemeInQuestion[] {
  const written = toEnginePlay(playbook, play);
  return schemes.map(({ id, ...rest }) => {
    const scheme = toEngineScheme(playbook, id, written);
    if (scheme === undefined) throw new RangeError(`unknown scheme: ${id}`);
    return { scheme, ...rest };
  });
}

/** The movements that the play's set allows, begun by the man who begins the play. */
export function movementsOfPlay(playbook: Playbook, { play, side, level }: ScoutQuestion): readonly Movement[] {
  const { spots, start } = toEnginePlay(playbook, play, side);
  return movementsOf(
    spots.map(({ at }) => at),
    spots.findIndex(({ id }) => id === start.ball),
    level ?? playbook.team.level,
  );
}

/** The setup that threads are asked with: one play, and every own scheme with the sets that its rows may name. */
export function scoutSetup(playbook: Playbook, { play, side, level, schemes }: ScoutQuestion, seed = 1): TrialSetup {
  const { format, version, team, sets, schemes: own, settings } = playbook;
  const asked = (own ?? []).filter(({ id }) => schemes.some((one) => one.id === id));
  const reduced: Playbook = {
    format,
    version,
    team: { ...team, roster: team.roster.map((player) => ({ ...player, name: `number ${player.number}` })) },
    plays: playbook.plays.filter(({ id }) => id === play),
    ...(sets && { sets }),
    ...(asked.length > 0 && { schemes: asked }),
    ...(settings && { settings }),
  };
  return { document: JSON.stringify(reduced), play, scheme: schemes[0]!.id, side, penalty: null, level, seed };
}

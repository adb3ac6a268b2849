import {
  type Level,
  type Movement,
  movementsOf,
  type SchemeInQuestion,
  usualSchemeWeight,
} from '../../engine/index.ts';
import { type Opponent, type Playbook, toEnginePlay, toEngineScheme } from '../../playbook/index.ts';
import { manDownSchemeIds, type TrialSetup } from '../../worker/index.ts';

/** Which schemes may be played against which play of ours: what belief, probe and ticks are about. */
export interface ScoutQuestion {
  /** The play whose set is on the field; its first man with the ball begins the probes. */
  readonly play: string;
  readonly side: 'left' | 'right';
  /** The team's own when `null`. */
  readonly level: Level | null;
  /** Each with how likely it is beforehand, beside the others. */
  readonly schemes: readonly ScoutedScheme[];
}

export interface ScoutedScheme {
  readonly id: string;
  readonly weight: number;
}

/** Men of an ordinary man-down unit. */
const usualMen = 5;

/**
 * What is left for schemes that nobody wrote down for an opponent, all together: whoever watched them may be wrong, and teams learn new ones (assumption). Share.
 */
const unwritten = 0.15;

/**
 * The schemes of five men, built in and the coach's own, with how likely each is beforehand: by the opponent's entry where it says so, with a little left for the
 * others; else as is usual at the level. Who asks may change every weight.
 */
export function usualScoutSchemes(playbook: Playbook, opponent?: Opponent): readonly ScoutedScheme[] {
  const ids = manDownSchemeIds(playbook).filter(
    (id) => toEngineScheme(playbook, id, { spots: [] })?.defenders === usualMen,
  );
  const usual = ids.map((id) => ({ id, weight: usualSchemeWeight(playbook.team.level, id) }));
  const written = ids.reduce((sum, id) => sum + (opponent?.schemes?.[id] ?? 0), 0);
  if (written === 0) return usual;
  const others = usual.filter(({ id }) => opponent?.schemes?.[id] === undefined);
  const left = others.length === 0 ? 0 : unwritten;
  const allOthers = others.reduce((sum, { weight }) => sum + weight, 0);
  return usual.map(({ id, weight }) => {
    const said = opponent?.schemes?.[id];
    return { id, weight: said === undefined ? (left * weight) / allOthers : ((1 - left) * said) / written };
  });
}

/** The schemes as the engine takes them. RangeError for one that the playbook does not know. */
export function schemesInQuestion(playbook: Playbook, { play, schemes }: ScoutQuestion): readonly SchemeInQuestion[] {
  const written = toEnginePlay(playbook, play);
  return schemes.map(({ id, weight }) => {
    const scheme = toEngineScheme(playbook, id, written);
    if (scheme === undefined) throw new RangeError(`unknown scheme: ${id}`);
    return { scheme, weight };
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

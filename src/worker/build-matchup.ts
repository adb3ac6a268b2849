import {
  type Athlete,
  type AthleteDescription,
  betterAthlete,
  createAthlete,
  createKeeper,
  type Discipline,
  disciplines,
  type GradedSkill,
  type Keeper,
  type Level,
  levelDiscipline,
  type Matchup,
  mirrorDefenderName,
  type Scheme,
  schemeById,
  schemeList,
} from '../engine/index.ts';
import {
  keeperCoverOf,
  lineUpFor,
  type Opponent,
  type Playbook,
  type Player,
  ruleCodeOf,
  starOf,
  toAthlete,
  toEnginePlay,
  toEngineScheme,
  whyNoScheme,
} from '../playbook/index.ts';

/** What is tried: one play of a playbook from one side against one scheme. */
export interface MatchupChoice {
  readonly play: string;
  readonly scheme: string;
  /** The opponent of the playbook who plays it, by whose discipline it is played; by that of the level when absent. */
  readonly opponent?: string;
  readonly side: 'left' | 'right';
  /** Seconds of penalty; the playbook's own when `null`. */
  readonly penalty: number | null;
  /** Level both sides play at, every man of them; the team's own, and a player's where he has one, when `null`. */
  readonly level: Level | null;
  /** Who has practised what since; nothing when absent. It moves nobody to another spot, and whom a scheme shuts off stays the same. */
  readonly practised?: Practised;
}

/** One of the six (offense index) or all of them, one grade better in a skill, or as much of it as leads to the best. */
export interface Practised {
  readonly man: number | 'all';
  readonly skill: GradedSkill;
}

export type BuiltMatchup =
  | { readonly kind: 'built'; readonly matchup: Matchup; readonly players: readonly Player[] }
  /** A plain sentence: what is missing. */
  | { readonly kind: 'refused'; readonly reason: string };

/** The ids of all schemes that a playbook can be tested against: the built-in ones, then its own. */
export function schemeIds(playbook: Playbook): readonly string[] {
  return [
    ...new Set([...schemeList.map((scheme) => scheme.id), ...(playbook.schemes ?? []).map((scheme) => scheme.id)]),
  ];
}

/** The same without those for even sides, which are for a flag-down chance: the schemes of a unit that is short of men. */
export function manDownSchemeIds(playbook: Playbook): readonly string[] {
  return schemeIds(playbook).filter((id) => {
    const own = playbook.schemes?.find((scheme) => scheme.id === id);
    const men = own === undefined ? schemeById(id)?.defenders : Object.keys(own.men).length;
    return men !== undefined && men < evenSides;
  });
}

/** Field defenders when nobody is in the box. */
const evenSides = 6;

/** The penalty that is played when nobody names one, s: the playbook's, or that of a technical foul. */
export function penaltyOf(playbook: Playbook): number {
  return playbook.settings?.penaltySeconds ?? ruleCodeOf(playbook).penalties.technical.value;
}

/**
 * Puts the team's best six for this side on the field against a scheme played by men of the same level.
 * On the left side the whole chance is mirrored but for the players' hands: that is what makes the sides differ.
 */
export function buildMatchup(playbook: Playbook, choice: MatchupChoice): BuiltMatchup {
  if (!playbook.plays.some((play) => play.id === choice.play)) return refused(`unknown play: ${choice.play}`);
  // The scheme's rows name places of the play as written; `sense` turns the whole of it over.
  const written = toEnginePlay(playbook, choice.play);
  const scheme = toEngineScheme(playbook, choice.scheme, written);
  if (scheme === undefined) return refused(whyNoScheme(playbook, choice.scheme, written));
  const opponent = playbook.opponents?.find((one) => one.id === choice.opponent);
  if (choice.opponent !== undefined && opponent === undefined) return refused(`unknown opponent: ${choice.opponent}`);
  const play = toEnginePlay(playbook, choice.play, choice.side);
  const { players } = lineUpFor(playbook, play);
  if (players.length < play.spots.length) {
    return refused(`${playbook.team.name} has too few field players for ${play.name}: six must be there`);
  }
  const level = choice.level ?? playbook.team.level;
  const defenders = scheme.names.map((_, index) => defender(level, scheme.shortSticks.includes(index)));
  const penalty = choice.penalty ?? penaltyOf(playbook);
  const code = ruleCodeOf({ ...playbook, team: { ...playbook.team, level } });
  return {
    kind: 'built',
    players,
    matchup: {
      play,
      six: players.map((player, man) => playing(describedMan(playbook, player, choice.level), man, choice.practised)),
      scheme,
      defenders,
      discipline: disciplineOf(scheme, opponent, level, choice.side),
      keeper: keeperOf(opponent, level),
      ...(scheme.defenders < evenSides && { released: defender(level, false) }),
      penalty: {
        seconds: penalty,
        releasable: code.penalties.goalReleases.value,
        start: scheme.defenders < evenSides ? 'restart' : 'flagDown',
        shotClock: code.shotClock.value?.afterPenalty.atOrBelow ?? null,
      },
      sense: choice.side === 'left' ? -1 : 1,
      star: starOf(playbook, play, players),
    },
  };
}

/** A player of the team as he plays when both sides play at this level; at his own, else the team's, when it is `null`. */
export function describedMan(playbook: Playbook, player: Player, level: Level | null): AthleteDescription {
  return { ...toAthlete(playbook, player), level: level ?? player.level ?? playbook.team.level };
}

/** Their goalkeeper: of the level, with the habits that the shots marked on him show. They are as the shooter sees them, so they stay when the play is turned over. */
function keeperOf(opponent: Opponent | undefined, level: Level): Keeper {
  const cover = opponent && keeperCoverOf(opponent);
  return { ...createKeeper({ level }), ...(cover && { cover }) };
}

function playing(description: AthleteDescription, man: number, practised: Practised | undefined): Athlete {
  if (practised === undefined || (practised.man !== 'all' && practised.man !== man)) return createAthlete(description);
  return betterAthlete(description, practised.skill).athlete;
}

/**
 * How well each man plays his part: as the opponent's entry says of him, of all, or as is usual at the level. The entry names men as the
 * reader sees them, so on the left side its "tr" is the scheme's "tl".
 */
function disciplineOf(
  scheme: Scheme,
  opponent: Opponent | undefined,
  level: Level,
  side: 'left' | 'right',
): readonly Discipline[] {
  const said = opponent?.discipline ?? {};
  return scheme.names.map((name) => {
    const other = mirrorDefenderName(name);
    const seen = side === 'left' && scheme.names.includes(other) ? other : name;
    return disciplines[said[seen] ?? said.all ?? levelDiscipline[level]];
  });
}

function defender(level: Level, short: boolean): Athlete {
  return createAthlete({ level, hand: 'right', crosse: short ? 'short' : 'pole' });
}

function refused(reason: string): BuiltMatchup {
  return { kind: 'refused', reason };
}

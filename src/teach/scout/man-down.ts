import {
  type DisciplineName,
  defaultStopRule,
  estimateGoals,
  type Interval,
  type Level,
  type LookReport,
  levelDiscipline,
  reportScheme,
} from '../../engine/index.ts';
import {
  type Playbook,
  type PlayEntry,
  type Player,
  setAlone,
  setAloneId,
  toEnginePlay,
} from '../../playbook/index.ts';
import {
  buildMatchup,
  castOf,
  type Effort,
  type MeasureOptions,
  measureMatchups,
  type TrialPool,
  type TrialSetup,
} from '../../worker/index.ts';

/** How good one of theirs is, from 1 to 5: as a coach grades his own. */
export type TheirGrades = NonNullable<Player['grades']>;

/** Their man-up unit, and what we may play against it. */
export interface ManDownQuestion {
  /** A play of the playbook whose set they stand in. */
  readonly play: string;
  /** Whether they run that play, or only stand in its set and take what opens. */
  readonly runs: 'play' | 'set';
  readonly side: 'left' | 'right';
  /** The level of both sides; the team's own when `null`. */
  readonly level: Level | null;
  /** What is known of their shooters and feeders, by spot; usual men of the level where nothing is said. */
  readonly grades?: Readonly<Record<string, TheirGrades>>;
  /** How well we play our schemes; as is usual at the level when absent. */
  readonly discipline?: DisciplineName;
  /** Schemes of ours. */
  readonly schemes: readonly string[];
  readonly penalty: number | null;
  readonly seed: number;
  /** Man-ups against each; enough for a page when absent. */
  readonly trials?: number;
}

/** What one scheme of ours concedes to them. */
export interface SchemeConcedes {
  readonly scheme: string;
  /** Goals a man-up. */
  readonly goals: Interval;
  /** Where it breaks: what opens for them, best first, with who left it. */
  readonly looks: readonly LookReport[];
  readonly trials: number;
}

/** Enough for 0.03 either way, and for what opens to be named. */
const usualTrials = 300;
const watched = 60;
const valued = { looks: 6, perLook: 60 } as const;

/** Our side of the playbook turned over: their six play ours. */
const us = 'us';

/** What each scheme of ours concedes, least first. Rejects with a `RefusedSetup` as any question to the threads. */
export async function manDownAnswers(
  pool: TrialPool,
  playbook: Playbook,
  question: ManDownQuestion,
  options: MeasureOptions = {},
): Promise<readonly SchemeConcedes[]> {
  const { schemes, side, level, penalty, seed, trials = usualTrials } = question;
  const theirs = theirPlaybook(playbook, question);
  const [{ id: play }] = theirs.plays as [PlayEntry];
  const document = JSON.stringify(theirs);
  const setups: readonly TrialSetup[] = schemes.map((scheme) => ({
    document,
    play,
    scheme,
    opponent: us,
    side,
    penalty,
    level,
    seed,
  }));
  const effort: Effort = {
    rule: { ...defaultStopRule, least: trials, most: trials, halfWidth: 0 },
    watched: Math.min(watched, trials),
    ...valued,
  };
  const measured = await measureMatchups(pool, setups, effort, options);
  return measured
    .map(({ tally, ...found }, at) => {
      const built = buildMatchup(theirs, setups[at]!);
      if (built.kind === 'refused') throw new RangeError(built.reason);
      const { looks } = reportScheme(castOf(built.matchup, built.players), tally, found);
      return { scheme: schemes[at]!, goals: estimateGoals([tally]), looks, trials: tally.to - tally.from };
    })
    .sort((one, other) => one.goals.mean - other.goals.mean);
}

/** A playbook in which they are the team: six men at their spots, one play, our schemes, and us as the opponent who plays them. */
export function theirPlaybook(playbook: Playbook, question: ManDownQuestion): Playbook {
  const { format, version, sets, schemes, settings, team } = playbook;
  const entry = playbook.plays.find(({ id }) => id === question.play);
  if (entry === undefined) throw new RangeError(`unknown play: ${question.play}`);
  const { spots } = toEnginePlay(playbook, question.play, question.side);
  const level = question.level ?? team.level;
  const roster = spots.map(({ id, hand }, at): Player => {
    const grades = question.grades?.[id];
    return { number: at + 1, name: id, hand: hand === 'either' ? 'both' : hand, ...(grades && { grades }) };
  });
  const asked = (schemes ?? []).filter(({ id }) => question.schemes.includes(id));
  const discipline = question.discipline ?? levelDiscipline[level];
  return {
    format,
    version,
    team: {
      name: 'Them',
      level,
      ...(team.ruleCode && { ruleCode: team.ruleCode }),
      roster,
      depth: Object.fromEntries(spots.map(({ id }, at) => [id, [at + 1]])),
    },
    ...(sets && { sets }),
    plays: [question.runs === 'set' ? setAlone(entry) : entry],
    ...(asked.length > 0 && { schemes: asked }),
    opponents: [
      {
        id: us,
        name: 'Us',
        schemes: Object.fromEntries(question.schemes.map((scheme) => [scheme, 1])),
        discipline: { all: discipline },
      },
    ],
    ...(settings && { settings }),
  };
}

/** The id of what they run, for who asks the threads about it himself. */
export function theirPlayId({ play, runs }: Pick<ManDownQuestion, 'play' | 'runs'>): string {
  return runs === 'set' ? setAloneId : play;
}

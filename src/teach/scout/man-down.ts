import {
  type DisciplineName,
  defaultStopRule,
  dutyNames,
  estimateGoals,
  type Interval,
  type Level,
  levelDiscipline,
  mirrorDefenderName,
} from '../../engine/index.ts';
import { type Playbook, type Player, setAloneId, toEnginePlay } from '../../playbook/index.ts';
import type { ConcededBreak } from '../../render/index.ts';
import {
  type Effort,
  expectKind,
  type MeasureOptions,
  measureMatchups,
  type TrialPool,
  type TrialSetup,
  type WorkerAnswer,
} from '../../worker/index.ts';

import { theirSwing } from './their-swing.ts';

/** How good one of theirs is, from 1 to 5: as a coach grades his own. */
export type TheirGrades = NonNullable<Player['grades']>;

/** Their man-up unit, and what we may play against it. */
export interface ManDownQuestion {
  /** A play of the playbook whose set they stand in. */
  readonly play: string;
  /** Whether they run that play, or only send the ball round its set and take what opens. */
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
  /** Where it breaks: the shots that it gives up, what costs most first, and who should have been there. */
  readonly breaks: readonly ConcededBreak[];
  readonly trials: number;
}

/** Enough for 0.03 either way, and for what breaks to be named. */
const usualTrials = 300;
/** Man-ups whose shots are looked at one by one. */
const looked = 120;

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
  const document = JSON.stringify(theirs);
  const play = theirPlayId(question);
  const setups = schemes.map(
    (scheme): TrialSetup => ({ document, play, scheme, opponent: us, side, penalty, level, seed }),
  );
  const effort: Effort = {
    rule: { ...defaultStopRule, least: trials, most: trials, halfWidth: 0 },
    ...{ watched: 0, looks: 0, perLook: 0 },
  };
  const measured = await measureMatchups(pool, setups, effort, options);
  const range = { from: 0, to: Math.min(looked, trials) };
  options.onPlan?.(setups.length);
  const answers = await pool.answer(
    setups.map((setup) => ({ kind: 'conceded', setup, range }) as const),
    options,
  );
  return measured
    .map(({ tally }, at) => ({
      scheme: schemes[at]!,
      goals: estimateGoals([tally]),
      breaks: breaksOf(expectKind(answers[at]!, 'conceded'), range.to),
      trials: tally.to - tally.from,
    }))
    .sort((one, other) => one.goals.mean - other.goals.mean);
}

function breaksOf(
  { cast, shots }: Extract<WorkerAnswer, { kind: 'conceded' }>,
  trials: number,
): readonly ConcededBreak[] {
  const { play, scheme, sense } = cast;
  const spot = (man: number): string => play.spots[man]!.id;
  return shots.map(({ from, to, shots: count, goals, leftBy }) => ({
    from: from < 0 ? null : spot(from),
    to: spot(to),
    shots: count / trials,
    goals: goals / trials,
    leftBy: {
      defender: leftBy.defender < 0 ? null : seenName(scheme.names, leftBy.defender, sense),
      duty: dutyNames[leftBy.duty] ?? '',
      lateBy: leftBy.lateBy,
    },
  }));
}

/** On the left side the man called tr stands on the left: he goes by the name of his place. */
function seenName(names: readonly string[], defender: number, sense: 1 | -1): string {
  const other = mirrorDefenderName(names[defender]!);
  return sense < 0 && names.includes(other) ? other : names[defender]!;
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
    plays: [question.runs === 'set' ? theirSwing(entry, toEnginePlay(playbook, question.play).spots) : entry],
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

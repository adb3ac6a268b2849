import {
  cardOfList,
  defaultStopRule,
  estimateGoals,
  type Interval,
  type Level,
  type Play,
  type Read,
  readsOfCard,
  type SpotId,
} from '../../engine/index.ts';
import { type Playbook, toEnginePlay } from '../../playbook/index.ts';
import {
  type Effort,
  expectKind,
  type MeasureOptions,
  measureMatchups,
  onePlayText,
  type ReadsEffort,
  type ReadsStudy,
  readsEffort,
  studyReads,
  type TrialPool,
  type TrialSetup,
} from '../../worker/index.ts';
import { byWorth, type LookWorth, lookWorths, worthyLooks } from './look-worth.ts';
import { type PartStand, partStand } from './part-stand.ts';

/** Against what, and how, the plays of a practice are tried. */
export interface PracticeQuestion {
  readonly plays: readonly string[];
  /** Other plays that may be named where nothing that these teach is worth reps; none when absent. */
  readonly others?: readonly string[];
  /** Schemes with how likely each is, above 0. */
  readonly schemes: readonly { readonly id: string; readonly weight: number }[];
  readonly opponent?: string;
  readonly side: 'left' | 'right';
  readonly penalty: number | null;
  readonly level: Level | null;
  readonly seed: number;
}

/** How much is simulated for it. */
export interface PracticeFindEffort {
  /** Man-ups against each scheme that are counted, and that are watched for looks. */
  readonly trials: number;
  readonly watched: number;
  /** Man-ups that reads are studied in, shared among the schemes, and as many others; 0 leaves reads out. */
  readonly studied: number;
}

/** The usual effort: some seconds, half of them for the reads. */
export const usualPracticeEffort: PracticeFindEffort = { trials: 150, watched: 100, studied: 120 };

/** What was found out about one play. */
export interface PlayFindings {
  readonly play: string;
  /** Goals a man-up over the schemes, by their weights. */
  readonly goals: Interval;
  /** Each look that it teaches. */
  readonly looks: readonly LookWorth[];
  /** The one read that it does not teach and that would surely earn most; `null` when none surely earns anything, or nobody asked. */
  readonly newRead: NewRead | null;
  /** Where nothing that it teaches is worth reps: the other play of the playbook that has most to drill against the same schemes; `null` when none has, or it was not needed. */
  readonly instead: InsteadPlay | null;
  /** How the worthiest of them come open, each against the scheme where it carries most, in the order of their worth. */
  readonly stands: readonly LookStand[];
}

/** How one look of a play came open. */
export interface LookStand {
  readonly play: string;
  readonly from: SpotId;
  readonly to: SpotId;
  readonly stand: PartStand;
}

/** Another play, and the look of it that carries most; `null` where it only makes more in all. */
export interface InsteadPlay {
  readonly play: string;
  readonly name: string;
  readonly goals: Interval;
  readonly look: LookWorth | null;
}

export interface NewRead {
  readonly read: Read;
  /** Goals a man-up over going on with the play. */
  readonly gain: Interval;
}

/**
 * What is worth practising in some plays, asked of the threads: which of their looks carry the goals against the schemes that are expected, and what the reads are
 * worth. The same question and effort give the same answer for any number of threads. Rejects with a `RefusedSetup` when something is named that the
 * playbook does not have.
 */
export async function findPractice(
  pool: TrialPool,
  playbook: Playbook,
  question: PracticeQuestion,
  effort: PracticeFindEffort = usualPracticeEffort,
  options: MeasureOptions = {},
): Promise<readonly PlayFindings[]> {
  const findings: PlayFindings[] = [];
  for (const id of question.plays) findings.push(await findPlay(pool, playbook, id, question, effort, options));
  if (findings.every(({ looks }) => worthyLooks(looks).length > 0)) return findings;
  const others = await findOthers(pool, playbook, question, effort, options);
  return findings.map((one) => (worthyLooks(one.looks).length > 0 ? one : { ...one, instead: insteadOf(one, others) }));
}

/** What is named in place of another play carries at least so much, because it is not asked what its read costs. Goals a man-up. */
const worthNaming = 0.03;

/** The play whose best look carries most; where none carries enough the one that makes most, if it surely makes more. */
function insteadOf({ goals }: PlayFindings, others: readonly FoundLooks[]): InsteadPlay | null {
  const byLook = others
    .flatMap((one) =>
      worthyLooks(one.looks)
        .slice(0, 1)
        .map((look) => ({ ...one, look })),
    )
    .filter(({ look }) => look.carries.low >= worthNaming)
    .sort((a, b) => b.look.carries.mean - a.look.carries.mean);
  const byGoals = others
    .filter((one) => one.goals.low > goals.mean)
    .map((one) => ({ ...one, look: null }))
    .sort((a, b) => b.goals.mean - a.goals.mean);
  const [best] = [...byLook, ...byGoals];
  return best === undefined ? null : { play: best.play.id, name: best.play.name, goals: best.goals, look: best.look };
}

/** Other plays that are looked at, at most: each takes about as long as the first. */
const mostOthers = 4;

async function findOthers(
  pool: TrialPool,
  playbook: Playbook,
  question: PracticeQuestion,
  effort: PracticeFindEffort,
  options: MeasureOptions,
): Promise<readonly FoundLooks[]> {
  const found: FoundLooks[] = [];
  for (const id of (question.others ?? []).slice(0, mostOthers))
    found.push(await findLooks(pool, playbook, id, question, effort, options));
  return found;
}

interface FoundLooks {
  readonly play: Play;
  readonly setups: readonly TrialSetup[];
  readonly goals: Interval;
  readonly looks: readonly LookWorth[];
}

async function findLooks(
  pool: TrialPool,
  playbook: Playbook,
  id: string,
  question: PracticeQuestion,
  effort: PracticeFindEffort,
  options: MeasureOptions,
): Promise<FoundLooks> {
  const play = toEnginePlay(playbook, id, question.side);
  const setups = question.schemes.map(({ id: scheme }) => setupOf(playbook, id, scheme, question));
  const measured = await measureMatchups(pool, setups, measuredBy(effort), options);
  const looks = lookWorths(
    play,
    question.schemes.map(({ id: scheme, weight }, at) => ({
      scheme,
      weight,
      watched: effort.watched,
      looks: measured[at]!.looks,
    })),
  );
  const goals = estimateGoals(
    measured.map(({ tally }) => tally),
    question.schemes.map(({ weight }) => weight),
  );
  return { play, setups, goals, looks };
}

async function findPlay(
  pool: TrialPool,
  playbook: Playbook,
  id: string,
  question: PracticeQuestion,
  effort: PracticeFindEffort,
  options: MeasureOptions,
): Promise<PlayFindings> {
  const { play, setups, goals, looks } = await findLooks(pool, playbook, id, question, effort, options);
  const stands = await findStands(pool, playbook, id, question, looks, options);
  if (effort.studied === 0) return { play: id, goals, looks, newRead: null, instead: null, stands };
  const weighed = setups.map((setup, at) => ({ setup, weight: question.schemes[at]!.weight }));
  const studies: ReadsStudy[] = [];
  for (const carrier of teachable(play)) {
    const study = await studyReads(pool, weighed, { play, carrier }, studiedBy(effort.studied, setups.length), options);
    if (study !== null) studies.push(study);
  }
  return {
    play: id,
    goals,
    looks: looks.map((look) => withRead(look, studies)),
    newRead: bestNewRead(play, studies),
    instead: null,
    stands,
  };
}

/** Looks of which it is shown how they come open: more parts than that nobody has time for. */
const mostStands = 3;

/** A script for each of the worthiest looks that the play teaches, in a man-up in which it opens. */
async function findStands(
  pool: TrialPool,
  playbook: Playbook,
  play: string,
  question: PracticeQuestion,
  looks: readonly LookWorth[],
  options: MeasureOptions,
): Promise<readonly LookStand[]> {
  const taught = looks.filter(({ isTaught }) => isTaught);
  const shown = byWorth(taught.filter(({ against: [{ example }] }) => example !== null));
  // Where nothing opens, the play's first look is still shown as it is run.
  const asked = (shown.length > 0 ? shown : taught.slice(0, 1)).slice(0, mostStands);
  options.onPlan?.(asked.length);
  const answers = await pool.answer(
    asked.map(({ against: [{ scheme, example }] }) => ({
      kind: 'trace',
      setup: setupOf(playbook, play, scheme, question),
      of: 'script',
      trial: example ?? 0,
    })),
    options,
  );
  return asked.flatMap((look, at) => {
    const answer = expectKind(answers[at]!, 'trace');
    if (answer.of !== 'script' || answer.script === null) return [];
    const stand = partStand(answer.script, answer.cast, look, look.against[0].scheme);
    return [{ play, from: look.from, to: look.to, stand }];
  });
}

/** A play against one scheme, as the threads are asked about it. */
export function setupOf(playbook: Playbook, play: string, scheme: string, question: PracticeQuestion): TrialSetup {
  const { side, penalty, level, seed, opponent } = question;
  const choice = { play, scheme, ...(opponent !== undefined && { opponent }) };
  return { document: onePlayText(playbook, choice), ...choice, side, penalty, level, seed };
}

function measuredBy({ trials, watched }: PracticeFindEffort): Effort {
  const rule = { ...defaultStopRule, least: trials, most: trials, halfWidth: 0 };
  return { rule, watched, looks: 0, perLook: 0 };
}

/** Fewer man-ups against one scheme say nothing of it. */
const fewestStudied = 12;

/** One read at a time is learnt, so one is looked for; with so few lists the search is done in a moment. */
function studiedBy(trials: number, schemes: number): ReadsEffort {
  const usual = readsEffort(Math.max(fewestStudied, Math.ceil(trials / schemes)));
  return { ...usual, limits: { ...usual.limits, mostReads: 1, lists: 2000 } };
}

/** Those whom the play teaches a read, as offense indices: the men who already look for something. */
function teachable({ spots, reads }: Play): readonly number[] {
  return spots.flatMap(({ id }, at) => (reads.some(({ carrier }) => carrier === id) ? [at] : []));
}

/** A grade is over his possessions: in goals a man-up it counts as often as he has the ball. */
function withRead(look: LookWorth, studies: readonly ReadsStudy[]): LookWorth {
  if (look.read === null) return look;
  for (const { grades, comes } of studies) {
    const grade = grades.find(({ read }) => read === look.read);
    if (grade !== undefined) return { ...look, decides: scaled(grade.gain, comes) };
  }
  return look;
}

/** A gain that is written as .00 is none. Goals a man-up. */
const toldFrom = 0.005;

function bestNewRead(play: Play, studies: readonly ReadsStudy[]): NewRead | null {
  const found = studies.flatMap(({ carrier, cards, comes, at }): readonly NewRead[] => {
    const card = cards[1];
    const [read] = card === undefined ? [] : readsOfCard(cardOfList(play, carrier, card.list, at));
    if (card === undefined || read === undefined || read.cues.length === 0 || isTaught(play, read)) return [];
    const gain = scaled(card.gain, comes);
    return gain.low >= toldFrom ? [{ read, gain }] : [];
  });
  return found.reduce<NewRead | null>(
    (best, one) => (best === null || one.gain.mean > best.gain.mean ? one : best),
    null,
  );
}

/** Whether the play has him do the same for the same cues already. */
function isTaught({ reads }: Play, read: Read): boolean {
  const words = JSON.stringify([read.carrier, read.cues, read.then]);
  return reads.some(({ carrier, cues, then }) => JSON.stringify([carrier, cues, then]) === words);
}

function scaled({ mean, low, high }: Interval, share: number): Interval {
  return { mean: mean * share, low: low * share, high: high * share };
}

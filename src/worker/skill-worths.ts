import { compareGoals, type Interval, mergeTallies, type Tally } from '../engine/index.ts';
import { expectKind } from './expect-kind.ts';
import type { WeighedSetup } from './gather-chances.ts';
import type { PracticeChoice, PracticeChoices } from './practice-choices.ts';
import type { TrialRange, WorkerRequest } from './protocol.ts';
import { trialBatches } from './trial-batches.ts';
import type { AnswerOptions, TrialPool } from './trial-pool.ts';

/** What a better skill is worth to a play. */
export interface SkillWorth extends PracticeChoice {
  /** Goals a chance that the play makes more, over all schemes by their weights, with the 95 % interval of the paired trials. */
  readonly gain: Interval;
  readonly byScheme: readonly { readonly scheme: string; readonly gain: Interval }[];
  /** Man-ups against each scheme that it rests on. */
  readonly trials: number;
  /** Whether these are man-ups that nothing was chosen by: else it fell behind in the first ones, and is known roughly. */
  readonly isFresh: boolean;
}

/** What was tried in one way, all six together or one man alone. */
export interface RankedWorths {
  /** Those that were measured freshly first, then the others; the largest gain first in both. */
  readonly rows: readonly SkillWorth[];
  /**
   * What is best to practise as far as can be told: one that is surely better than all others that were measured freshly, or several that cannot be
   * told apart. None when not even the best is surely worth anything; `null` while nothing is measured freshly yet.
   */
  readonly leaders: readonly SkillWorth[] | null;
}

export interface SkillWorths {
  readonly unit: RankedWorths;
  /** `null` while only the whole unit's are known. */
  readonly each: RankedWorths | null;
}

/**
 * How much is simulated: man-ups against each scheme. Everything is tried in the `first`, what leads there in the `second` too, and what leads in
 * both is measured in the `last`, which are others: whoever wins a round was lucky in it. The same effort gives the same answer, for any number of threads.
 */
export interface PracticeEffort {
  readonly first: number;
  readonly second: number;
  readonly last: number;
}

/** The effort by which so many man-ups over all these schemes measure what leads: against few schemes each is played more often. */
export function practiceEffortOver(schemes: number, manUps: number): PracticeEffort {
  return practiceEffort(Math.ceil(manUps / Math.max(1, schemes)));
}

/** Fewest man-ups in a round: with fewer nothing is known of the spread of a difference. */
export const leastPracticeTrials = 20;

/** The effort that measures what leads in so many man-ups against each scheme. */
export function practiceEffort(last: number): PracticeEffort {
  const part = (share: number): number => Math.max(leastPracticeTrials, Math.ceil(last * share));
  return { first: part(1 / 6), second: part(1 / 3), last: part(1) };
}

/** How many go on to the second round and to the last. Enough that what is best is hardly ever left behind: with nine and with about fifty to try. */
const unitKept: Kept = { second: 5, last: 3 };
const eachKept: Kept = { second: 12, last: 5 };

interface Kept {
  readonly second: number;
  readonly last: number;
}

export interface PracticeOptions extends AnswerOptions {
  /** Told what is known so far: of the whole unit first, after each round. */
  readonly onFound?: (found: SkillWorths) => void;
}

type Choices = Extract<PracticeChoices, { kind: 'choices' }>;

/**
 * What a better skill is worth against these setups, of the whole unit and of each man: the same play with the same luck, trial by trial.
 * Rejects with a `RefusedSetup` when a setup names something that its playbook does not have; RangeError without setups.
 */
export async function studySkillWorths(
  pool: TrialPool,
  setups: readonly WeighedSetup[],
  choices: Pick<Choices, 'unit' | 'each'>,
  effort: PracticeEffort,
  { onFound, ...options }: PracticeOptions = {},
): Promise<SkillWorths> {
  const rounds = roundsOf(effort);
  const play = async (tried: readonly (PracticeChoice | null)[], range: TrialRange): Promise<readonly Played[]> => {
    const requests = tried.flatMap((choice) => requestsOf(setups, choice, range));
    const answers = await pool.answer(requests, options);
    const tallies = answers.map((answer) => expectKind(answer, 'tally').tally);
    const each = trialBatches(range.from, range.to).length;
    return tried.map((_, at) =>
      setups.map((_, setup) => mergeTallies(tallies.slice((at * setups.length + setup) * each).slice(0, each))),
    );
  };
  const basis: Basis = {
    schemes: setups.map(({ setup }) => setup.scheme),
    weights: setups.map(({ weight }) => weight),
    first: (await play([null], rounds.first))[0]!,
    second: (await play([null], rounds.second))[0]!,
    last: (await play([null], rounds.last))[0]!,
  };
  const unit = await rankWorths(play, rounds, basis, choices.unit, unitKept, (found) =>
    onFound?.({ unit: found, each: null }),
  );
  const each = await rankWorths(play, rounds, basis, choices.each, eachKept, (found) =>
    onFound?.({ unit, each: found }),
  );
  return { unit, each };
}

/** Most requests that `studySkillWorths` puts in all: fewer when hardly anything leads. */
export function requestsOfSkillWorths(
  { unit, each }: Pick<Choices, 'unit' | 'each'>,
  schemes: number,
  effort: PracticeEffort,
): number {
  const { first, second, last } = roundsOf(effort);
  const batches = ({ from, to }: TrialRange): number => trialBatches(from, to).length;
  const most = (tried: number, kept: Kept): number =>
    tried * batches(first) +
    Math.min(tried, kept.second) * batches(second) +
    Math.min(tried, kept.last) * batches(last);
  const played = batches(first) + batches(second) + batches(last);
  return schemes * (played + most(unit.length, unitKept) + most(each.length, eachKept));
}

/** A tally for each setup. */
type Played = readonly Tally[];

/** What everything is held against: the play as it is now. */
interface Basis {
  readonly schemes: readonly string[];
  readonly weights: readonly number[];
  readonly first: Played;
  readonly second: Played;
  readonly last: Played;
}

interface Rounds {
  readonly first: TrialRange;
  readonly second: TrialRange;
  readonly last: TrialRange;
}

function roundsOf({ first, second, last }: PracticeEffort): Rounds {
  return {
    first: { from: 0, to: first },
    second: { from: first, to: first + second },
    last: { from: first + second, to: first + second + last },
  };
}

function requestsOf(
  setups: readonly WeighedSetup[],
  choice: PracticeChoice | null,
  { from, to }: TrialRange,
): readonly WorkerRequest[] {
  return setups.flatMap(({ setup }) => {
    const asked = choice === null ? setup : { ...setup, practised: { man: choice.man, skill: choice.skill } };
    return trialBatches(from, to).map((range) => ({ kind: 'tally', setup: asked, range }) as const);
  });
}

async function rankWorths(
  play: (tried: readonly PracticeChoice[], range: TrialRange) => Promise<readonly Played[]>,
  rounds: Rounds,
  basis: Basis,
  choices: readonly PracticeChoice[],
  kept: Kept,
  tell: (found: RankedWorths) => void,
): Promise<RankedWorths> {
  const first = await play(choices, rounds.first);
  const screened = choices.map((choice, at) => worthOf(choice, first[at]!, basis.first, basis, false));
  tell({ rows: byGain(screened), leaders: null });
  const ahead = leading(screened, kept.second);
  const second = await play(
    ahead.map((at) => choices[at]!),
    rounds.second,
  );
  const both = ahead.map((at, index) => joined(first[at]!, second[index]!));
  const before = joined(basis.first, basis.second);
  const again = ahead.map((at, index) => worthOf(choices[at]!, both[index]!, before, basis, false));
  const rough = screened.map((one, at) => again[ahead.indexOf(at)] ?? one);
  tell({ rows: byGain(rough), leaders: null });
  const final = leading(again, kept.last).map((index) => ahead[index]!);
  const last = await play(
    final.map((at) => choices[at]!),
    rounds.last,
  );
  const fresh = final.map((at, index) => worthOf(choices[at]!, last[index]!, basis.last, basis, true));
  const rest = rough.filter((_, at) => !final.includes(at));
  const found = { rows: [...byGain(fresh), ...byGain(rest)], leaders: leadersOf(fresh, last, basis.weights) };
  tell(found);
  return found;
}

function worthOf(
  choice: PracticeChoice,
  played: Played,
  before: Played,
  { schemes, weights }: Basis,
  isFresh: boolean,
): SkillWorth {
  const { difference, trials } = compareGoals(played, before, weights);
  const byScheme = schemes.map((scheme, at) => ({
    scheme,
    gain: compareGoals([played[at]!], [before[at]!]).difference,
  }));
  return { ...choice, gain: difference, byScheme, trials, isFresh };
}

function joined(first: Played, second: Played): Played {
  return first.map((tally, at) => mergeTallies([tally, second[at]!]));
}

function byGain(rows: readonly SkillWorth[]): readonly SkillWorth[] {
  return [...rows].sort((a, b) => b.gain.mean - a.gain.mean);
}

/** Indices of the so many largest gains. What gained nothing leads nowhere. */
function leading(rows: readonly SkillWorth[], most: number): readonly number[] {
  const gained = [...rows.keys()].filter((at) => rows[at]!.gain.mean > 0);
  return gained.sort((a, b) => rows[b]!.gain.mean - rows[a]!.gain.mean).slice(0, most);
}

/** The best of these, and those that it is not surely better than, by the paired trials that both have run. */
function leadersOf(
  rows: readonly SkillWorth[],
  played: readonly Played[],
  weights: readonly number[],
): readonly SkillWorth[] {
  const [top] = leading(rows, 1);
  if (top === undefined || rows[top]!.gain.low <= 0) return [];
  const isApart = (at: number): boolean => compareGoals(played[top]!, played[at]!, weights).difference.low > 0;
  return byGain(rows.filter((_, at) => at === top || !isApart(at)));
}

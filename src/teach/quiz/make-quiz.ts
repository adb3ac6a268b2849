import {
  type CarrierMoment,
  carriersOfPlay,
  type FutureRange,
  inputHash,
  type Keeping,
  learnKeeping,
  type MomentOutcomes,
  mostReadsAt,
} from '../../engine/index.ts';
import { type Playbook, type QuizEntry, schemeName, toEnginePlay } from '../../playbook/index.ts';
import { codeAlphabet, type Quiz, type QuizQuestion } from '../../render/index.ts';
import {
  type AnswerOptions,
  type Cast,
  expectKind,
  type MatchupChoice,
  onePlayText,
  type TrialPool,
  type TrialSetup,
} from '../../worker/index.ts';
import { applyingRead } from './applying-read.ts';
import { chooseQuestions, type PossibleQuestion } from './choose-questions.ts';
import { quizName } from './load-result.ts';
import { offeredChoices } from './offered-choices.ts';
import { quizQuestion, signsOf } from './quiz-question.ts';
import { secondsToAnswer } from './seconds-to-answer.ts';

/** What a quiz is to ask. */
export interface QuizWishes extends Omit<MatchupChoice, 'scheme' | 'practised'> {
  readonly schemes: readonly string[];
  readonly seed: number;
  /** The man whose reads are asked, a spot of the play; the whole unit's when absent. */
  readonly spot?: string;
  /** Most questions, 1 to `mostQuestions`. */
  readonly questions: number;
  /** Seconds to answer; those of the level when absent. */
  readonly seconds?: number;
}

export type MadeQuiz =
  | { readonly kind: 'made'; readonly quiz: Quiz; readonly entry: QuizEntry; readonly looked: number }
  /** No moment in which right and wrong are told apart surely enough to ask: a plain sentence. */
  | { readonly kind: 'nothing'; readonly reason: string };

/** So that the page stays under 300 kB; a result code would hold 20. */
export const mostQuestions = 18;
/** How much is simulated for a quiz. */
export interface QuizEffort {
  /** Man-ups that moments come from, over all schemes, for the whole unit and for one man alone: he has the ball for a fifth of the time. */
  readonly manUps: { readonly unit: number; readonly one: number };
  /** Moments that are looked at, each in so many futures; of the first `whole` it is learnt what keeping the ball is worth. */
  readonly screened: number;
  readonly screenFutures: number;
  readonly whole: number;
  /** Futures of each moment that is asked about. */
  readonly futures: number;
}

/** The usual effort: 10 to 30 s on two cores. */
export const quizEffort: QuizEffort = {
  manUps: { unit: 36, one: 120 },
  screened: 144,
  screenFutures: 12,
  whole: 2,
  futures: 96,
};
/** Seconds of a future: those of the study of reads. */
const horizon = 8;
/** Moments that are valued in one request, and how many are valued fully for each question that is wanted. */
const batch = 6;
const shortlist = 2.5;
/** Seconds that are shown before a moment, and after it. */
const shown = { before: 2.6, after: 3.2 };

export interface QuizOptions extends AnswerOptions {
  /** Told how many requests there are in all, more exactly as it goes on. */
  readonly onPlan?: (requests: number) => void;
  /** `quizEffort` when absent. */
  readonly effort?: QuizEffort;
}

/**
 * Makes a quiz on the pool's threads: looks of the men with the ball in many man-ups, valued by a few futures; those that are told apart best valued by others, so that no question
 * stands on the luck by which it was found; of these the ones that are least alike. The same wishes give the same quiz for any number of threads.
 *
 * Rejects with a `RefusedSetup` as any question to the threads.
 */
export async function makeQuiz(
  pool: TrialPool,
  playbook: Playbook,
  wishes: QuizWishes,
  { onPlan, effort = quizEffort, ...options }: QuizOptions = {},
): Promise<MadeQuiz> {
  const { schemes, questions } = wishes;
  if (!(Number.isInteger(questions) && questions >= 1 && questions <= mostQuestions))
    throw new RangeError(`invalid questions: ${questions} (expected 1 to ${mostQuestions})`);
  const choices = mostReadsAt(wishes.level ?? playbook.team.level);
  const { screened, screenFutures, whole } = effort;
  const work = { pool, options, effort, setups: setupsOf(playbook, wishes) };
  onPlan?.(schemes.length + screened / batch + questions * (shortlist + 1));
  const { casts, looks } = await findLooks(work, carriersAsked(playbook, wishes));
  const kept = everyNth(looks, screened);
  const most = Math.ceil(questions * shortlist);
  onPlan?.(schemes.length + Math.ceil(kept.length / batch) + most + questions);
  const first = await valueLooks(work, kept, { first: 0, futures: screenFutures, whole, horizon }, batch);
  const keeping = learnKeeping(first.flatMap((value) => value.kept));
  const likely = chooseQuestions(possibleOf(casts, kept, first, keeping, choices), most);
  const found = likely.map(({ scheme, moment }) => ({ scheme: schemes.indexOf(scheme), moment }));
  const futures = { first: screenFutures, futures: effort.futures, whole: 0, horizon };
  const values = await valueLooks(work, found, futures, 1);
  const chosen = chooseQuestions(possibleOf(casts, found, values, keeping, choices), questions);
  if (chosen.length === 0) return nothing(playbook, wishes, kept.length);
  const asked = await showChosen(work, casts, chosen);
  return made(playbook, wishes, casts, asked, { looked: kept.length, futures: effort.futures });
}

interface Work {
  readonly pool: TrialPool;
  readonly options: AnswerOptions;
  readonly effort: QuizEffort;
  readonly setups: readonly TrialSetup[];
}

/** A look, and the index of the scheme that it is met in. */
interface Look {
  readonly scheme: number;
  readonly moment: CarrierMoment;
}

function setupsOf(
  playbook: Playbook,
  { schemes, spot: _, questions: __, seconds: ___, ...choice }: QuizWishes,
): readonly TrialSetup[] {
  return schemes.map((scheme) => ({ ...choice, scheme, document: onePlayText(playbook, { ...choice, scheme }) }));
}

/** Offense indices of the men who are asked. RangeError for a spot that the play does not have. */
function carriersAsked(playbook: Playbook, { play: id, side, spot }: QuizWishes): readonly number[] {
  const play = toEnginePlay(playbook, id, side);
  const indexOf = (name: string): number => play.spots.findIndex((one) => one.id === name);
  if (spot === undefined) return carriersOfPlay(play).map(indexOf);
  if (indexOf(spot) < 0)
    throw new RangeError(`unknown spot: ${spot} (expected one of ${play.spots.map((one) => one.id).join(', ')})`);
  return [indexOf(spot)];
}

async function findLooks(
  { pool, options, setups, effort: { manUps } }: Work,
  carriers: readonly number[],
): Promise<{ readonly casts: readonly Cast[]; readonly looks: readonly Look[] }> {
  const trials = Math.max(2, Math.ceil((carriers.length === 1 ? manUps.one : manUps.unit) / setups.length));
  const requests = setups.map((setup) => ({
    kind: 'moments' as const,
    setup,
    carriers,
    range: { from: 0, to: trials },
  }));
  const answers = (await pool.answer(requests, options)).map((answer) => expectKind(answer, 'moments'));
  return {
    casts: answers.map(({ cast }) => cast),
    looks: answers.flatMap(({ moments }, scheme) => moments.map((moment) => ({ scheme, moment }))),
  };
}

/** At most so many, spread evenly over all. */
function everyNth<T>(all: readonly T[], most: number): readonly T[] {
  if (all.length <= most) return all;
  return Array.from({ length: most }, (_, at) => all[Math.floor((at * all.length) / most)]!);
}

async function valueLooks(
  { pool, options, setups }: Work,
  looks: readonly Look[],
  futures: FutureRange,
  together: number,
): Promise<readonly MomentOutcomes[]> {
  const batches = setups.flatMap((setup, scheme) => {
    const own = looks.filter((look) => look.scheme === scheme).map(({ moment }) => moment);
    return Array.from({ length: Math.ceil(own.length / together) }, (_, at) => ({
      setup,
      scheme,
      moments: own.slice(at * together, (at + 1) * together),
    }));
  });
  const requests = batches.map(({ setup, moments }) => ({ kind: 'momentValues' as const, setup, moments, futures }));
  const answers = await pool.answer(requests, options);
  const values = new Map<CarrierMoment, MomentOutcomes>();
  answers.forEach((answer, at) => {
    const own = expectKind(answer, 'momentValues').values;
    for (const [each, moment] of batches[at]!.moments.entries()) values.set(moment, own[each]!);
  });
  return looks.map(({ moment }) => values.get(moment)!);
}

function possibleOf(
  casts: readonly Cast[],
  looks: readonly Look[],
  values: readonly MomentOutcomes[],
  keeping: Keeping,
  most: number,
): readonly PossibleQuestion[] {
  return looks.flatMap(({ scheme, moment }, at) => {
    const { play, scheme: played } = casts[scheme]!;
    const read = applyingRead(play, moment);
    const offered = offeredChoices(play, moment, values[at]!, keeping, read, most);
    if (offered === undefined) return [];
    const hasSign = signsOf(play, moment, offered.choices[offered.best]!.action).length > 0;
    return [{ scheme: played.id, moment, offered, hasSign, isTaught: read !== undefined }];
  });
}

async function showChosen(
  { pool, options, setups, effort: { screenFutures } }: Work,
  casts: readonly Cast[],
  chosen: readonly PossibleQuestion[],
): Promise<readonly QuizQuestion[]> {
  const castOf = ({ scheme }: PossibleQuestion): number => casts.findIndex((cast) => cast.scheme.id === scheme);
  const requests = chosen.map((one) => ({
    kind: 'momentTraces' as const,
    setup: setups[castOf(one)]!,
    moment: one.moment,
    shown: one.offered.choices.map(({ action, judged }) => ({ action, future: screenFutures + judged.middle })),
    ...shown,
  }));
  const answers = await pool.answer(requests, options);
  return chosen.map((one, at) =>
    quizQuestion(casts[castOf(one)]!, one.moment, one.offered, expectKind(answers[at]!, 'momentTraces').traces),
  );
}

function made(
  playbook: Playbook,
  wishes: QuizWishes,
  casts: readonly Cast[],
  questions: readonly QuizQuestion[],
  { looked, futures }: { readonly looked: number; readonly futures: number },
): MadeQuiz {
  const { play, numbers } = casts[0]!;
  const spots = play.spots.map(({ id }) => id);
  const body: Omit<Quiz, 'id'> = {
    format: 'sliderule-quiz',
    version: 1,
    playId: wishes.play,
    play: playNameOf(playbook, wishes.play),
    team: playbook.team.name,
    spots,
    numbers,
    spot: wishes.spot === undefined ? -1 : spots.indexOf(wishes.spot),
    seconds: wishes.seconds ?? secondsToAnswer[wishes.level ?? playbook.team.level],
    futures,
    questions,
  };
  const quiz = { ...body, id: quizId(body) };
  return { kind: 'made', quiz, entry: quizEntry(quiz), looked };
}

/** Four letters of what is asked: the same quiz has the same, two quizzes hardly ever (once in a million). */
function quizId(body: Omit<Quiz, 'id'>): string {
  const hash = Number.parseInt(inputHash(body).slice(0, 10), 16);
  return [15, 10, 5, 0].map((bits) => codeAlphabet.charAt(Math.floor(hash / 2 ** bits) % 32)).join('');
}

/** What a playbook keeps of a quiz, so that its codes can be read when they come back. */
function quizEntry({ id, playId, play, spots, spot, questions }: Quiz): QuizEntry {
  const whose = spots[spot];
  return {
    id: id.toLowerCase(),
    name: quizName(play, whose),
    play: playId,
    ...(whose !== undefined && { spot: whose }),
    questions: questions.map(({ carrier, scheme, choices, best }) => ({
      carrier: spots[carrier]!,
      scheme,
      right: choices[best]!.words,
    })),
    results: [],
  };
}

function nothing(playbook: Playbook, { play, spot, schemes }: QuizWishes, looked: number): MadeQuiz {
  const whom = spot === undefined ? 'a man with the ball' : spot;
  const name = playNameOf(playbook, play);
  const against = schemes.length === 1 ? schemeName(playbook, schemes[0]!) : `these ${schemes.length} schemes`;
  return {
    kind: 'nothing',
    reason:
      looked === 0
        ? `${name} never brings ${whom} the ball against ${against}, so there is nothing to ask. Choose another man or more schemes.`
        : `In ${looked} looks against ${against} no choice of ${whom} is surely better than others, so there is nothing fair to ask. Choose more schemes or the whole unit.`,
  };
}

function playNameOf(playbook: Playbook, id: string): string {
  return playbook.plays.find((play) => play.id === id)?.name ?? id;
}

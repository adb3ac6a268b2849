import { keepQuiz, keepResult, limits, type Playbook, type QuizEntry, type QuizResult } from '../../playbook/index.ts';
import { type ResultFile, type RoundResult, readResultCode } from '../../render/index.ts';

/** A result that a coach loads, and the quiz that it belongs to. */
export type LoadedResult =
  | {
      readonly kind: 'loaded';
      /** With the quiz, where the playbook did not keep it, and the result in it. */
      readonly playbook: Playbook;
      readonly quiz: QuizEntry;
      readonly result: QuizResult;
      /** What else is to be said, a sentence each; mostly nothing. */
      readonly also: readonly string[];
    }
  | { readonly kind: 'wrong'; readonly reason: string };

/** Reads a code or the text of a result file, and keeps what it says in the playbook. What is wrong is told in a sentence. */
export function loadResult(playbook: Playbook, text: string): LoadedResult {
  if (text.trim().startsWith('{')) return loadFile(playbook, text);
  const read = readResultCode(text);
  if (read.kind === 'wrong') return read;
  const quiz = playbook.quizzes?.find(({ id }) => id === read.result.quiz.toLowerCase());
  if (quiz === undefined)
    return wrong(
      `The code is right, but the playbook keeps no quiz ${read.result.quiz}. Load it where that quiz was made and kept, or ask for the file in place of the code: it says what was asked.`,
    );
  return withResult(playbook, quiz.id, read.result);
}

function loadFile(playbook: Playbook, text: string): LoadedResult {
  const file = readFile(text);
  if (file === undefined) return wrong('This is no result of a quiz: choose the file that the page of the quiz saved.');
  const kept = keepQuiz(playbook, entryOf(file));
  if (kept.kind === 'refused') return wrong(kept.reason);
  return withResult(kept.playbook, file.quiz.toLowerCase(), file);
}

function withResult(playbook: Playbook, id: string, { number, round, answers }: RoundResult): LoadedResult {
  const result: QuizResult = {
    number,
    round,
    answers: answers.map(({ asked, right, pace }) => ({ asked, right, ...(pace !== null && { pace }) })),
  };
  const edit = keepResult(playbook, id, result);
  if (edit.kind === 'refused') return wrong(edit.reason);
  const quiz = edit.playbook.quizzes!.find((one) => one.id === id)!;
  return { kind: 'loaded', playbook: edit.playbook, quiz, result, also: [...askedWords(result), ...edit.also] };
}

/** How far he came, where that is not all: he stopped, or only some of it was due or his. */
function askedWords({ answers }: QuizResult): readonly string[] {
  const asked = answers.filter((one) => one.asked > 0).length;
  return asked === answers.length ? [] : [`He was asked ${asked} of its ${answers.length} questions.`];
}

/** The file as the page writes it; undefined for any other text. Everything is looked at: it comes from a phone by mail. */
function readFile(text: string): ResultFile | undefined {
  let value: Partial<Record<keyof ResultFile, unknown>>;
  try {
    value = JSON.parse(text.slice(0, limits.bytes));
  } catch {
    return undefined;
  }
  const { format, version, quiz, number, round, answers, play, spot, name, questions } = value;
  const isRight =
    format === 'sliderule-quiz-result' &&
    version === 1 &&
    typeof quiz === 'string' &&
    /^[0-9A-HJKMNP-TV-Z]{4}$/.test(quiz) &&
    isWhole(number, 0, 999) &&
    isWhole(round, 1, 32) &&
    typeof play === 'string' &&
    /^[a-z0-9][a-z0-9-]{0,39}$/.test(play) &&
    (spot === null || isSpot(spot)) &&
    isText(name, limits.name) &&
    Array.isArray(questions) &&
    questions.length >= 1 &&
    questions.length <= limits.questions &&
    questions.every(isQuestion) &&
    Array.isArray(answers) &&
    answers.length === questions.length &&
    answers.every(isAnswer);
  return isRight ? (value as ResultFile) : undefined;
}

function isQuestion(value: unknown): boolean {
  const { carrier, scheme, right } = (value ?? {}) as Record<string, unknown>;
  return isSpot(carrier) && isText(scheme, limits.id) && isText(right, limits.why);
}

function isAnswer(value: unknown): boolean {
  const { asked, right, pace } = (value ?? {}) as Record<string, unknown>;
  if (!isWhole(asked, 0, 3) || !isWhole(right, 0, asked as number)) return false;
  return asked === 0 ? pace === null : pace === 'quick' || pace === 'steady' || pace === 'slow';
}

function isWhole(value: unknown, least: number, most: number): boolean {
  return Number.isInteger(value) && (value as number) >= least && (value as number) <= most;
}

function isSpot(value: unknown): boolean {
  return typeof value === 'string' && /^[A-Z][A-Z0-9]{0,3}$/.test(value);
}

function isText(value: unknown, most: number): boolean {
  return typeof value === 'string' && value !== '' && value.length <= most;
}

function entryOf({ quiz, play, spot, name, questions }: ResultFile): QuizEntry {
  return {
    id: quiz.toLowerCase(),
    name: quizName(name, spot ?? undefined),
    play,
    ...(spot !== null && { spot }),
    questions: questions.map(({ carrier, scheme, right }) => ({ carrier, scheme, right })),
    results: [],
  };
}

/** What a quiz is called in the playbook: "Lantern, the reads of X". */
export function quizName(play: string, spot: string | undefined): string {
  const whose = spot === undefined ? 'the whole unit' : `the reads of ${spot}`;
  return `${play.slice(0, limits.name - whose.length - 2)}, ${whose}`;
}

function wrong(reason: string): LoadedResult {
  return { kind: 'wrong', reason };
}

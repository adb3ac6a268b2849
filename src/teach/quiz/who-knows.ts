import type { QuizEntry, QuizResult } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';

/** How one man stands with one question, by the last round in which he was asked. */
export type Standing =
  /** Right at the first try. */
  | 'known'
  /** Missed at first, right when it came back. */
  | 'found'
  | 'missed'
  | 'notAsked';

/** One man's standing, by question. */
export interface ManKnows {
  /** Jersey number. */
  readonly number: number;
  readonly rounds: number;
  readonly standing_byQuestion: readonly Standing[];
}

/** How a question went at the first try, over all rounds of all men. */
export interface QuestionKnown {
  readonly carrier: string;
  readonly scheme: string;
  readonly right: string;
  /** Rounds in which it was asked, and in which it was right at the first try. */
  readonly asked: number;
  readonly first: number;
}

export interface QuizKnowledge {
  /** By jersey number. */
  readonly men: readonly ManKnows[];
  readonly questions: readonly QuestionKnown[];
  /** Index of the question that is missed most at the first try; null when nothing was missed. The first of equals. */
  readonly most: number | null;
}

/** Who knows what, by the results of a quiz that came back. */
export function whoKnows({ questions, results }: QuizEntry): QuizKnowledge {
  const numbers = [...new Set(results.map(({ number }) => number))].sort((one, other) => one - other);
  const known = questions.map((question, at): QuestionKnown => {
    const answers = results.map(({ answers }) => answers[at]!).filter(({ asked }) => asked > 0);
    return { ...question, asked: answers.length, first: answers.filter(({ asked, right }) => right === asked).length };
  });
  const missed = known.map(({ asked, first }) => asked - first);
  const most = Math.max(0, ...missed);
  return {
    men: numbers.map((number) =>
      manKnows(
        number,
        results.filter((result) => result.number === number),
        questions.length,
      ),
    ),
    questions: known,
    most: most === 0 ? null : missed.indexOf(most),
  };
}

function manKnows(number: number, rounds: readonly QuizResult[], questions: number): ManKnows {
  return {
    number,
    rounds: rounds.length,
    standing_byQuestion: Array.from({ length: questions }, (_, at) => {
      const last = rounds
        .map(({ answers }) => answers[at]!)
        .filter(({ asked }) => asked > 0)
        .at(-1);
      if (last === undefined) return 'notAsked';
      if (last.right === last.asked) return 'known';
      return last.right > 0 ? 'found' : 'missed';
    }),
  };
}

/** Fewer first tries than this tell hardly anything of a question. */
const fewTries = 5;

/** What the results say of the question that is missed most, in words that promise no more than they hold. Undefined when nothing was missed. `nameOf` names a scheme by its id. */
export function mostMissedWords(
  { most, questions }: QuizKnowledge,
  nameOf: (scheme: string) => string,
): string | undefined {
  if (most === null) return undefined;
  const { carrier, scheme, right, asked, first } = questions[most]!;
  const missed = `Missed most: ${carrier} against ${nameOf(scheme)}, where "${right}" is right. Missed ${asked - first} of ${counted(asked, 'time')} at the first try.`;
  return asked < fewTries ? `${missed} That is too few to tell more than where to look.` : missed;
}

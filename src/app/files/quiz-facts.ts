import type { Playbook, QuizEntry } from '../../playbook/index.ts';
import { type Facts, factsOf, line } from './difference.ts';

/** All that a quiz and its results say, in a coach's words. */
export function quizFacts(quiz: QuizEntry, { plays }: Playbook): Facts {
  return factsOf([
    ['Name', line(quiz.name)],
    ['Play', [plays.find(({ id }) => id === quiz.play)?.name ?? quiz.play]],
    ['Man', line(quiz.spot)],
    ['Questions', quiz.questions.map(({ carrier, scheme, right }) => `${carrier} against ${scheme}: ${right}`)],
    [
      'Results',
      quiz.results.map(({ number, round, answers }) => {
        const asked = answers.filter((answer) => answer.asked > 0);
        return `Number ${number}, round ${round}: ${asked.filter(({ right }) => right > 0).length} of ${asked.length}`;
      }),
    ],
    ['Notes', line(quiz.notes)],
  ]);
}

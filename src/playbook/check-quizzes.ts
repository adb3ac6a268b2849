import type { Report } from './report.ts';
import type { Playbook } from './schema.ts';

/** Says where a result of a quiz cannot be one of its questions. A play that is gone is no fault: what players knew of it is kept. */
export function checkQuizzes({ quizzes }: Playbook, report: Report): void {
  for (const [at, { name, questions, results }] of (quizzes ?? []).entries()) {
    for (const [round, { number, answers }] of results.entries()) {
      const path = ['quizzes', at, 'results', round, 'answers'];
      if (answers.length !== questions.length)
        report.add(
          'quiz-answers',
          path,
          `Number ${number} has ${answers.length} answers to the ${questions.length} questions of "${name}". Take the result out and load his code again.`,
        );
      const odd = answers.findIndex(({ asked, right }) => right > asked);
      if (odd >= 0)
        report.add(
          'quiz-answers',
          [...path, odd],
          `Number ${number} cannot be right ${answers[odd]!.right} times of ${answers[odd]!.asked}. Take the result out and load his code again.`,
        );
    }
  }
}

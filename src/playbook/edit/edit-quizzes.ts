import { limits } from '../limits.ts';
import { sameValue } from '../same-value.ts';
import type { Playbook, QuizEntry, QuizResult } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';

/** Keeps a quiz that is handed out, so that its codes can be read when they come back. One that is kept already stays as it is, with its results. */
export function keepQuiz(playbook: Playbook, quiz: QuizEntry): PlaybookEdit {
  const quizzes = playbook.quizzes ?? [];
  if (quizzes.some(({ id }) => id === quiz.id)) return editedPlaybook(playbook, [], quiz.id);
  if (quizzes.length >= limits.quizzes)
    return refused(`A playbook keeps at most ${limits.quizzes} quizzes. Remove one that is done with.`);
  return editedPlaybook({ ...playbook, quizzes: [...quizzes, quiz] }, [], quiz.id);
}

/**
 * Adds a round that came back. The same round of the same man is kept once: loaded again it changes nothing, and one that says something else replaces it (his phone may have begun anew). `id` is the quiz's, in
 * small letters.
 */
export function keepResult(playbook: Playbook, id: string, result: QuizResult): PlaybookEdit {
  const quiz = playbook.quizzes?.find((one) => one.id === id);
  if (quiz === undefined) return refused(`The playbook keeps no quiz "${id}".`);
  if (result.answers.length !== quiz.questions.length)
    return refused(`"${quiz.name}" has ${quiz.questions.length} questions, and the result ${result.answers.length}.`);
  const same = quiz.results.find(({ number, round }) => number === result.number && round === result.round);
  if (same !== undefined && sameValue(same, result)) return editedPlaybook(playbook, [], id);
  const others = quiz.results.filter((one) => one !== same);
  if (others.length >= limits.results)
    return refused(`A quiz keeps at most ${limits.results} results. Make a new quiz for the next weeks.`);
  const also =
    same === undefined ? [] : [`Another round ${result.round} of number ${result.number} was kept: it is replaced.`];
  return withQuiz(playbook, { ...quiz, results: [...others, result] }, also);
}

export function removeQuiz(playbook: Playbook, id: string): PlaybookEdit {
  const quizzes = (playbook.quizzes ?? []).filter((quiz) => quiz.id !== id);
  if (quizzes.length === (playbook.quizzes ?? []).length) return refused(`The playbook keeps no quiz "${id}".`);
  return editedPlaybook({ ...playbook, quizzes });
}

function withQuiz(playbook: Playbook, quiz: QuizEntry, also: readonly string[]): PlaybookEdit {
  const quizzes = (playbook.quizzes ?? []).map((one) => (one.id === quiz.id ? quiz : one));
  return editedPlaybook({ ...playbook, quizzes }, also, quiz.id);
}

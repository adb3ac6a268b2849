import type { Quiz } from '../render/index.ts';
import { part } from './page-element.ts';
import { isRight } from './quiz-answer.ts';
import { askQuestion, runQuestions } from './quiz-ask.ts';
import { afterRound } from './quiz-calendar.ts';
import { listenToEnd, showEnd } from './quiz-end.ts';
import { answerNext, beginRound, paceOf, type Round } from './quiz-round.ts';
import { counted, listenToStart, type Player } from './quiz-start.ts';
import { keepCalendar, today } from './quiz-storage.ts';

// The program of a quiz's page. It stands alone: of the other rooms it knows nothing but the shape of the quiz that they wrote into the page.

const quiz = JSON.parse(part('quiz').textContent ?? '') as Quiz;
const start = listenToStart(quiz, (player) => {
  askNext(player, beginRound(player.questions, quiz.questions.length));
});
listenToEnd(start.show);
runQuestions();

function askNext(player: Player, round: Round): void {
  const [index, ...rest] = round.queue;
  const question = index === undefined ? undefined : quiz.questions[index];
  if (index === undefined || question === undefined) {
    finish(player, round);
    return;
  }
  let after = round;
  const before = round.asked_byQuestion[index]?.asked ?? 0;
  askQuestion(quiz, question, {
    hasClock: player.hasClock,
    wholeField: player.wholeField,
    progress: `${before > 0 ? 'Once more. ' : ''}${rest.length === 0 ? 'The last one' : `${counted(rest.length, 'question')} to go after this`}`,
    answered: (chosen, seconds) => {
      after = answerNext(round, isRight(question, chosen), paceOf(seconds, quiz.seconds));
      return after.queue.includes(index);
    },
    isMoreToCome: () => after.queue.length > 0,
    next: () => askNext(player, after),
    stop: () => finish(player, after),
  });
}

/** Keeps and shows how far he came. Who goes on after he stopped ends the same round once more, so it is counted from the calendar that he began with. */
function finish(player: Player, round: Round): void {
  const known = round.asked_byQuestion.map(({ asked, since }) => (asked === 0 ? undefined : since === null));
  const next = afterRound(player.kept.calendar, today(), known);
  keepCalendar(quiz.id, player.number, next);
  showEnd(quiz, player, round, next, () => askNext(player, round));
}

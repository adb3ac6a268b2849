export { clipPage } from './clip/clip-page.ts';
export { filmScript } from './clip/film-script.ts';
export { type ClipWishes, type PlayClip, playClip, watchedForClip } from './clip/play-clip.ts';
export { type MadeQuiz, makeQuiz, mostQuestions, type QuizWishes, quizFutures } from './quiz/make-quiz.ts';
export { quizPage } from './quiz/quiz-page.ts';
export { secondsToAnswer } from './quiz/seconds-to-answer.ts';
export { type MeasuredPlay, measurePlays, type PlaysAsked } from './sheets/measure-plays.ts';
export { opponentContent, type PlayAgainst, sharesOfOpponent } from './sheets/opponent-content.ts';
export {
  isOfOnePlay,
  type PlaySheetKind,
  type PrintedPages,
  printedOpponent,
  printedPages,
  type SheetKind,
} from './sheets/printed-pages.ts';
export { dayWords, type SheetResult, type SheetWishes, sheetContent } from './sheets/sheet-content.ts';

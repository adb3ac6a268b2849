export * from './bench/index.ts';
export { clipPage } from './clip/clip-page.ts';
export { filmScript } from './clip/film-script.ts';
export { type ClipWishes, type PlayClip, playClip, watchedForClip } from './clip/play-clip.ts';
export { blockMeasure, blockTitle, minuteWords, runLines } from './practice/block-words.ts';
export type { PlayFindings } from './practice/find-practice.ts';
export {
  findPractice,
  type LookStand,
  type PracticeFindEffort,
  type PracticeQuestion,
  usualPracticeEffort,
} from './practice/find-practice.ts';
export { findSkill } from './practice/find-skill.ts';
export { knownStands } from './practice/known-stands.ts';
export { type MadePractice, makePractice, plannedFrom, withSkill } from './practice/make-practice.ts';
export { clockWords, practicePages } from './practice/practice-pages.ts';
export { lasting, minutesTaken, refitPractice, repeated } from './practice/refit-practice.ts';
export { usualFoes } from './practice/usual-foes.ts';
export { type LoadedResult, loadResult } from './quiz/load-result.ts';
export {
  type MadeQuiz,
  makeQuiz,
  mostQuestions,
  type QuizEffort,
  type QuizOptions,
  type QuizWishes,
  quizEffort,
} from './quiz/make-quiz.ts';
export { quizPage } from './quiz/quiz-page.ts';
export { secondsToAnswer } from './quiz/seconds-to-answer.ts';
export {
  type ManKnows,
  mostMissedWords,
  type QuestionKnown,
  type QuizKnowledge,
  type Standing,
  whoKnows,
} from './quiz/who-knows.ts';
export { expectedSchemes } from './scout/expected-schemes.ts';
export { filmOfMarks, type ReadMarks, readTick, writeTick } from './scout/film-of-marks.ts';
export { type KeeperQuarter, keeperQuarters } from './scout/keeper-quarters.ts';
export { type ManDownQuestion, manDownAnswers, type SchemeConcedes, type TheirGrades } from './scout/man-down.ts';
export { type ManDownWishes, manDownContent, printedManDown } from './scout/man-down-sheet.ts';
export { withoutMarked } from './scout/schemes-before.ts';
export { type SchemeSeenOften, schemesSeenOf } from './scout/schemes-seen.ts';
export { beliefByTicks, type ScoutSeen, scoutBelief, walkMovements } from './scout/scout-belief.ts';
export { probeAdvice } from './scout/scout-probe.ts';
export {
  movementsOfPlay,
  type ScoutedScheme,
  type ScoutQuestion,
  schemesInQuestion,
  scoutedBefore,
  scoutSchemesBefore,
  usualScoutSchemes,
} from './scout/scout-question.ts';
export { isWeighedByMarks, schemeTold } from './scout/told-by-marks.ts';
export * from './season/index.ts';
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

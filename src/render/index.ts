export type { Clip, ClipCaption, ClipFlight, ClipOpening, ClipScheme, Track } from './clip/clip.ts';
export { type ClipParts, clipHtml } from './clip/clip-html.ts';
export { clipOfScript } from './clip/clip-of-script.ts';
export { samplesPerSecond, stepsPerYard, trackOf } from './clip/track.ts';
export { cueMarks } from './cue-marks.ts';
export * from './cue-scene.ts';
export * from './draw-scene.ts';
export * from './field-scene.ts';
export { drawFilmFrame, drawFilmMoment, type FilmCanvas, filmFont, filmPlace } from './film/draw-film.ts';
export {
  createFilm,
  defaultFilmOptions,
  type Film,
  type FilmMoment,
  type FilmOptions,
  type FilmScript,
  filmMoment,
} from './film/film.ts';
export { type FilmColours, filmColours } from './film/film-colours.ts';
export { type FilmForm, type FilmFormName, filmFormNames, filmForms } from './film/film-form.ts';
export * from './left-words.ts';
export * from './look-words.ts';
export * from './number-text.ts';
export { benchCard } from './pages/bench-card.ts';
export { type Call, callCards } from './pages/call-cards.ts';
export { type DrillStep, drillPictures } from './pages/drill-picture.ts';
export {
  breakWords,
  type ConcededBreak,
  concedesWords,
  type ManDownAnswer,
  type ManDownContent,
  type ManDownRow,
  manDownPage,
} from './pages/man-down-page.ts';
export { type MetPlay, type MetScheme, type OpponentContent, opponentPage } from './pages/opponent-page.ts';
export {
  type Page,
  type PageBox,
  type PageMark,
  type PagePicture,
  type PageRule,
  type PageText,
  type PaperName,
  papers,
  type Weight,
} from './pages/page.ts';
export { pageFont, pageInks, pageTint, pageToSvg, pictureToSvg } from './pages/page-svg.ts';
export { playSheet, type SheetContent } from './pages/play-sheet.ts';
export { practiceCautions } from './pages/practice-cautions.ts';
export { type PartSheet, practicePart } from './pages/practice-part.ts';
export { type PracticeRow, type PracticeSheet, practicePlan } from './pages/practice-plan.ts';
export { type Bookmark, type PrintedBook, printedBook } from './pages/printed-book.ts';
export { type SeasonRow, type SeasonSection, type SeasonSheet, seasonSheet } from './pages/season-sheet.ts';
export { spotPages } from './pages/spot-pages.ts';
export * from './palettes.ts';
export * from './play-frames.ts';
export * from './play-run-words.ts';
export * from './play-scene.ts';
export * from './play-steps.ts';
export * from './play-words.ts';
export * from './practice-words.ts';
export { choiceWords, lowerFirst } from './quiz/choice-words.ts';
export { questionScene } from './quiz/question-scene.ts';
export type { Quiz, QuizChoice, QuizQuestion, Worth } from './quiz/quiz.ts';
export { type QuizParts, quizHtml } from './quiz/quiz-html.ts';
export type { ResultFile, RoundAnswer, RoundResult } from './quiz/quiz-result.ts';
export { codeAlphabet, type ReadCode, readResultCode } from './quiz/read-result-code.ts';
export {
  againstWords,
  inHundred,
  type ReasonedChoice,
  reasonWords,
  supportOf,
  taughtWords,
} from './quiz/reason-words.ts';
export * from './read-card-words.ts';
export * from './read-grade-words.ts';
export * from './runner-card-words.ts';
export * from './scene.ts';
export { oddsWords, type ReasonNames, reasonOfMark, reasonOfTick } from './scout/reason-of-mark.ts';
export { movementName, movementWay, probeRule, signClause, signWords, triggerRule } from './scout/sign-words.ts';
export * from './skill-words.ts';
export * from './svg.ts';
export * from './svg-styles.ts';
export * from './tempo-as-written.ts';
export * from './tempo-chart.ts';
export * from './tempo-hit-areas.ts';
export * from './tempo-layout.ts';
export * from './tempo-of-trace.ts';
export * from './tempo-scene.ts';
export * from './tempo-words.ts';
export * from './trace-frame.ts';
export * from './trace-names.ts';
export * from './trace-scene.ts';
export * from './watch-marks.ts';
export * from './watch-scene.ts';
export * from './watch-words.ts';
export * from './words.ts';

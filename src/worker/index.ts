export { answerRequest } from './answer-request.ts';
export {
  type BuiltMatchup,
  buildMatchup,
  type MatchupChoice,
  manDownSchemeIds,
  type Practised,
  penaltyOf,
  schemeIds,
} from './build-matchup.ts';
export { castOf } from './cast.ts';
export { expectKind } from './expect-kind.ts';
export type { WeighedSetup } from './gather-chances.ts';
export { type Effort, type Measured, type MeasureOptions, measureMatchups } from './measure-matchups.ts';
export { onePlayText } from './one-play-text.ts';
export { type PracticeChoice, type PracticeChoices, type PractisingMan, practiceChoices } from './practice-choices.ts';
export type { Cast, TrialRange, TrialSetup, WorkerAnswer, WorkerRequest } from './protocol.ts';
export {
  leastPracticeTrials,
  type PracticeEffort,
  practiceEffort,
  practiceEffortOver,
  type RankedWorths,
  requestsOfSkillWorths,
  type SkillWorth,
  type SkillWorths,
  studySkillWorths,
} from './skill-worths.ts';
export {
  type ReadsEffort,
  type ReadsStudy,
  readsEffort,
  requestsOfStudy,
  studyReads,
} from './study-reads.ts';
export { type RunsEffort, requestsOfRunStudy, runsEffort, studyRuns } from './study-runs.ts';
export type { AnswerOptions, StopSignal, TrialPool } from './trial-pool.ts';
export { joinWatched } from './watched-parts.ts';

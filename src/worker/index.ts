export {
  type BuiltMatchup,
  buildMatchup,
  type MatchupChoice,
  manDownSchemeIds,
  penaltyOf,
  schemeIds,
} from './build-matchup.ts';
export { type Effort, type Measured, type MeasureOptions, measureMatchups, RefusedSetup } from './measure-matchups.ts';
export type { TrialRange, TrialSetup, WorkerAnswer, WorkerRequest } from './protocol.ts';
export type { AnswerOptions, StopSignal, TrialPool } from './trial-pool.ts';

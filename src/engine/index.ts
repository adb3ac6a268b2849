export { bestAimInto, createAim } from './ball/aim.ts';
export { type ControlOdds, controlOdds, simpleArrival } from './ball/control.ts';
export { dragPerYard, dropOver, flightTime, gravity, speedAfter } from './ball/flight.ts';
export { keeperPlaceInto } from './ball/keeper.ts';
export { createLane, defaultLaneParameters, type LaneParameters, laneInto } from './ball/lane.ts';
export {
  type Ellipse,
  ellipseOdds,
  everywhere,
  type Rectangle,
  rectangleOdds,
  type Scatter,
} from './ball/placement-odds.ts';
export { createShotOdds, type ShotOdds, shotOddsInto } from './ball/shot.ts';
export { defaultShotParameters, type ShotParameters } from './ball/shot-parameters.ts';
export { createShotSituation, createShotView, faceKeeperInto, releaseInto, type ShotView } from './ball/shot-view.ts';
export {
  type CameraDoubt,
  type CameraFit,
  doubtsOfCamera,
  type FittedCamera,
  fitCamera,
  type LineMark,
  leastMarks,
  type PlaceMark,
  pixelOf,
  placeOnField,
  type SeenPlace,
  segmentOnFilm,
} from './camera/fit-camera.ts';
export { focalLength } from './camera/focal-length.ts';
export {
  type FittedHomography,
  fitHomography,
  type Homography,
  inverseOf,
  type LinePair,
  mapPoint,
  type PointPair,
  stretchAt,
} from './camera/homography.ts';
export { createChanceState } from './chance/create-state.ts';
export { type CueGround, creaseFront, cueSubject } from './chance/cue-subject.ts';
export { manBehind } from './chance/far-low.ts';
export type { Matchup, PenaltyPlan } from './chance/matchup.ts';
export { type ChanceModel, type ChanceSettings, compileChance, defaultChanceSettings } from './chance/model.ts';
export { type CompiledCue, compileCue } from './chance/program.ts';
export { recordTrace, runTrial } from './chance/run.ts';
export type { RunnerCue } from './chance/runner-cues.ts';
export { scriptTimes } from './chance/script-times.ts';
export { farShot } from './chance/shoot.ts';
export type { ChanceState, Recorder } from './chance/state.ts';
export type * from './chance/trace.ts';
export { type CallChoice, type CallMix, drawnCall, mixCalls } from './choices/call-mix.ts';
export { type MatrixGame, solveMatrixGame, worstCase } from './choices/matrix-game.ts';
export { type DoubtfulChoice, mixInDoubt } from './choices/mix-in-doubt.ts';
export { type DisciplineName, disciplineNames, disciplines, levelDiscipline } from './defense/discipline.ts';
export * from './defense/duty.ts';
export {
  createDutySheet,
  type DutyRow,
  type DutySheet,
  type SheetOptions,
} from './defense/duty-sheet.ts';
export { dutySheetText, lapOf } from './defense/duty-sheet-text.ts';
export { dutyWords } from './defense/duty-words.ts';
export { mirrorDefenderName } from './defense/mirror-name.ts';
export {
  createOwnScheme,
  type OwnDuty,
  type OwnSchemeData,
  type OwnSchemeProblem,
  type OwnSchemeResult,
  type PlaceName,
} from './defense/own-scheme.ts';
export type * from './defense/scheme.ts';
export { type SchemeId, schemeById, schemeList, schemes, schemesFor } from './defense/schemes.ts';
export { type Landmarks, landmarksOf } from './field/landmarks.ts';
export { type MenOnField, menOnField } from './field/men-on-field.ts';
export type { Rule } from './field/rule.ts';
export { type Markings, type RuleCode, type RuleCodeId, ruleCodeIds } from './field/rule-code.ts';
export { type OpenRule, ruleCodes, rulesToConfirm, usualRuleCode } from './field/rule-codes.ts';
export {
  type BoxEvent,
  type BoxedPenalty,
  type GivenPenalty,
  otherSide,
  type PenaltyState,
  type TeamSide,
} from './game/penalty.ts';
export {
  type BoxRules,
  ballAfterSimultaneous,
  type PenaltyBox,
  penaltyBox,
  timesBack,
} from './game/penalty-box.ts';
export { goalMouthAngle } from './geometry/goal-mouth-angle.ts';
export { interceptTime } from './geometry/moving-point-intercept.ts';
export type { Point } from './geometry/point.ts';
export { type ForcedGoals, type ForcedTrial, forceLooks, playForced } from './looks/force-looks.ts';
export { type FurthestScript, furthestScript } from './looks/furthest-script.ts';
export { type ShotHeat, shotHeat } from './looks/heat.ts';
export { type OwnThrowSummary, summarizeThrows } from './looks/own-throws.ts';
export { passStyleOf } from './looks/pass-style.ts';
export {
  forcedLooks,
  forcedPerLook,
  type LookValue,
  leastReplays,
  planForced,
  valueLooks,
} from './looks/plan-forced.ts';
export { type LookSummary, summarizeLooks } from './looks/summarize.ts';
export { type WatchedPlay, watchLooks, watchPlay } from './looks/watch.ts';
export { type ScriptTrace, traceScript, type WeighedMoments } from './looks/watch-trace.ts';
export type { LookKind, LookWindow } from './looks/window.ts';
export * from './offense/assign.ts';
export * from './offense/best-assignment.ts';
export { mirrorHand, mirrorPlay, mirrorPoint, mirrorSpot, mirrorSpotId } from './offense/mirror.ts';
export { mirrorOwnScheme, mirrorPlaceName } from './offense/mirror-own-scheme.ts';
export * from './offense/play.ts';
export { insideHand } from './offense/sets/offense-set.ts';
export { findSet, type OffenseSet, type SetSearch, sets } from './offense/sets.ts';
export * from './people/athlete.ts';
export { type BetterAthlete, betterAthlete, type GradedSkill, gradedSkills } from './people/better-athlete.ts';
// The models by themselves: for docs/validation.md and the benches, which hold each against what is known from outside.
export { resolveContacts } from './people/contact.ts';
export {
  type AthleteDescription,
  createAthlete,
  createKeeper,
  type Grades,
  type KeeperDescription,
  type Measured,
  type Sample,
  sprintLead,
  sprintTime,
} from './people/create-athlete.ts';
export {
  coveredOdds,
  guessCover,
  type KeeperCover,
  type KeeperQuarterId,
  keeperQuarterIds,
  type QuarterCounts,
} from './people/keeper-cover.ts';
export { levelMean, levelValue, stickReachOf } from './people/levels.ts';
export {
  brakeShare,
  createMovers,
  type Movers,
  motionStride,
  type Steering,
  setMover,
  stepAll,
  stepToward,
  stepWithPush,
} from './people/motion.ts';
export { arrivalTime, reachableAt } from './people/reach.ts';
export { type Skills, skillsAt } from './people/skills.ts';
export { createDraws, normal, uniform } from './random/draws.ts';
export { bestThere, betterRead } from './reads/better-read.ts';
export type { ReadExample } from './reads/card-examples.ts';
export { cardOfList, namedCue, type ReadCard, readsOfCard } from './reads/card-of-list.ts';
export { type CarrierAction, carrierActions } from './reads/carrier-actions.ts';
export { carriersOfPlay } from './reads/carriers-of-play.ts';
export { type CueCount, countCues } from './reads/count-cues.ts';
export { cueVocabulary } from './reads/cue-vocabulary.ts';
export { type FakeGain, fakeGains } from './reads/fake-gains.ts';
export { type CarrierChance, gatherDecisions, type Outcome } from './reads/gather-decisions.ts';
export { gatherRuns, mostRunLooks, type RunnerChance, timeOfLook } from './reads/gather-runs.ts';
export type { BetterRead, GradeThere, ReadGrade } from './reads/grade-reads.ts';
export { type JudgedAction, judgeMoment, type MomentJudgement } from './reads/judge-moment.ts';
export type { KnownScheme, SchemeKnown } from './reads/know-the-scheme.ts';
export { type LearntDecisions, learnDecisions, type TriedDecisions, tryDecisions } from './reads/learn-decisions.ts';
export { type Keeping, learnKeeping, worthOf } from './reads/learn-keeping.ts';
export { measureIn, type ValuedDecisions } from './reads/measure-decisions.ts';
export { type MomentAction, momentActions } from './reads/moment-actions.ts';
export { type CarrierMoment, momentsOfTrial } from './reads/moments-of-trial.ts';
export { mostReadsAt } from './reads/most-reads.ts';
export { orderOfAction } from './reads/order-of-action.ts';
export { type Guidance, playGuided } from './reads/play-guided.ts';
export { goOn, type RuleList, worthsUnder } from './reads/rule-list.ts';
export { type RunOrder, runOfOrder, runOrders } from './reads/run-orders.ts';
export { type RunnerCard, runnerCardOf } from './reads/runner-card.ts';
export { type SchemeChances, tableOf } from './reads/scheme-chances.ts';
export { defaultSearchLimits, type SearchLimits } from './reads/search-rule-lists.ts';
export type { RunList } from './reads/search-run-cards.ts';
export {
  type CarrierStudy,
  type Gathered,
  heldChances,
  studyCarrier,
  type ValuedCard,
  valueGuided,
} from './reads/study-carrier.ts';
export {
  type RunnerStudy,
  type SchemeRuns,
  studyRunner,
  type ValuedRunCard,
  type ValuedTime,
} from './reads/study-runner.ts';
export { taughtPlay } from './reads/taught-play.ts';
export { type MomentTraces, type ShownAction, traceMoment } from './reads/trace-moment.ts';
export { type FutureRange, type MomentOutcomes, valueMoment } from './reads/value-moment.ts';
export {
  type BestCall,
  type Choice,
  doubtOf,
  type Finding,
  type WorthOfInformation,
  worthOfInformation,
} from './reads/worth-of-information.ts';
export {
  type BeliefQuestion,
  type BelievedScheme,
  believeSchemes,
  type ManUpReading,
  type MomentSays,
  type SchemeBelief,
  type SeenManUp,
} from './scout/believe.ts';
export { type ConcededShots, concededShots } from './scout/conceded-shots.ts';
export { defaultFilmReading, type FilmReading } from './scout/film-odds.ts';
export { type MarkSpread, oddsOfMarks } from './scout/mark-odds.ts';
export type { MarkReason, ReasonMan } from './scout/mark-reasons.ts';
export { checkFilm, type MarkedFilm, type MarkedMoment } from './scout/marked-film.ts';
export { type Movement, type MovementId, movementIds, movementsOf } from './scout/movement.ts';
export { usualDisciplineShares, usualSchemeWeight } from './scout/scheme-prior.ts';
export {
  defaultWalkChoice,
  logOddsOfTicks,
  oddsOfSign,
  type SignTable,
  signsOf,
  signTableOf,
  type Tick,
  usualMistaken,
  type WalkedMovement,
  walkMovement,
} from './scout/sign-table.ts';
export { type Sign, type SignId, signIds, signs } from './scout/signs.ts';
export { type SchemeInQuestion, suspectsOf, type WeighedSuspect } from './scout/suspects.ts';
export type { TickReason } from './scout/tick-reasons.ts';
export { type MovementWorth, type ProbeAdvice, worthOfMovements } from './scout/worth-of-movements.ts';
export { betaBinomialOdds, type SharePrior, shrunkShare } from './statistics/beta-binomial.ts';
export { betaQuantile } from './statistics/beta-distribution.ts';
export { brierIfRight, brierScore, expectedHits, type Forecast } from './statistics/forecast-score.ts';
export { meanInterval, studentMeanInterval } from './statistics/mean-interval.ts';
export { quartiles, sortedQuantile } from './statistics/quantile.ts';
export {
  addValue,
  createMoments,
  mergeMoments,
  type RunningMoments,
  varianceOf,
} from './statistics/running-moments.ts';
export { type Count, shareDifference } from './statistics/share-difference.ts';
export { sharePosterior } from './statistics/share-posterior.ts';
export { weightedMeanInterval } from './statistics/weighted-mean-interval.ts';
export { type Estimate, wilsonInterval } from './statistics/wilson-interval.ts';
export { type Comparison, compareTallies } from './trials/compare.ts';
export { complexityOf } from './trials/complexity.ts';
export { compareGoals, estimateGoals, estimateOdds, type GoalChange } from './trials/estimate-goals.ts';
export { canonicalJson, inputHash } from './trials/input-hash.ts';
export { mergeTallies } from './trials/merge-tallies.ts';
export type * from './trials/report.ts';
export { describeLook, type FoundLooks, type Reported, reportScheme } from './trials/report-scheme.ts';
export { runTrials } from './trials/run-trials.ts';
export {
  applyStopRule,
  type Batch,
  batchesOf,
  defaultStopRule,
  type StopAnswer,
  type StopRule,
} from './trials/stop-rule.ts';
export type { Tally } from './trials/tally.ts';
export { turnoverKinds } from './trials/turnover-kinds.ts';
export { centimetres, degrees, feet, inches, kmh, metres, mph, toDegrees, toMetres, toMph } from './units.ts';
export { engineVersion } from './version.ts';

export {
  type ChanceLookKind,
  type ChanceMark,
  type ChanceResult,
  type ChanceSide,
  type ChanceStart,
  chanceLooks,
  chanceResults,
  chanceSides,
  chanceStarts,
  markSources,
} from './chance-schema.ts';
export { chanceResultWords, chanceTitle, clockText } from './chance-title.ts';
export { shotResults } from './check-chances.ts';
export { isDay } from './check-practices.ts';
export { demoPlaybook, demoText } from './demo.ts';
export { type Diagnostic, diagnosticHead, diagnosticText, hasErrors, type Severity } from './diagnostic.ts';
export { type CodeInfo, type DiagnosticCode, diagnosticCodes } from './diagnostic-codes.ts';
export * from './edit/index.ts';
export { playbookJsonSchema } from './json-schema.ts';
export { countQuarters, keeperCoverOf } from './keeper-cover.ts';
export { nearestName } from './language/nearest-name.ts';
export { parseDuty, type SchemeNames, type WrittenDuty } from './language/parse-duty.ts';
export { printDuty } from './language/print-duty.ts';
export { printAction, printCarrierAction, printCue } from './language/print-phrase.ts';
export { limits } from './limits.ts';
export {
  conflictId,
  type MergeChoice,
  type MergeConflict,
  type MergeKind,
  type MergePart,
  mergePlaybooks,
  type PlaybookMerge,
  type TeamHead,
} from './merge-playbooks.ts';
export { currentVersion } from './migrate.ts';
export { type ParseResult, parsePlaybook } from './parse.ts';
export { parseUnfinished } from './parse-unfinished.ts';
export { isPlaybookShaped } from './playbook-shape.ts';
export { type RuleValue, ruleCodeOf, settableRules } from './rule-settings.ts';
export { sameValue } from './same-value.ts';
export {
  type Chance,
  type KeeperShot,
  type Opponent,
  type OwnSet,
  type Playbook,
  type PlayEntry,
  type Player,
  type PlayerRole,
  type Practice,
  type PracticeBlock,
  type PracticeKind,
  type PracticeRun,
  type PracticeSituation,
  playbookSchema,
  playerRoles,
  practiceKinds,
  practiceSituations,
  type QuizAnswer,
  type QuizEntry,
  type QuizPace,
  type QuizResult,
  quizPaces,
  type SchemeEntry,
  type Settings,
  type Team,
} from './schema.ts';
export { allSpots, toEngineScheme, toSchemeData } from './scheme-data.ts';
export { schemeName } from './scheme-name.ts';
export { serializePlaybook } from './serialize.ts';
export { starOf } from './star-of.ts';
export { oddReadings, toAthlete } from './to-athlete.ts';
export { type LineUp, lineUpFor, type Side, toCandidate, toEnginePlay } from './to-engine.ts';
export { whyNoScheme } from './why-no-scheme.ts';
export { withoutNames } from './without-names.ts';

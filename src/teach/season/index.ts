export { chanceColumns, tabledKeys } from './chance-columns.ts';
export {
  type ChanceGrouping,
  chanceGroupings,
  opponentName,
  playName,
  schemeExpected,
  schemeSeen,
} from './chance-groups.ts';
export {
  type ChanceTableOptions,
  type ChanceTableProblem,
  type ChanceTableReading,
  newChances,
  readChanceTable,
  writeChanceTable,
} from './chance-table.ts';
export type { ChanceColumn, ColumnChoice } from './column-kinds.ts';
export { compareGroups, type GroupComparison } from './compare-groups.ts';
export { comparePair, groupsToCompare, type PairReport } from './compare-pair.ts';
export { type DayOrder, dayOrders } from './day-cell.ts';
export { type GroupNumbers, groupNumbers, type LookUsed, lookWords } from './group-numbers.ts';
export { countManUps, type ManUpNumbers, manUpsOf } from './man-ups.ts';
export { periodText } from './period-words.ts';
export { type PlanAndResult, type PlanBin, planAndResult } from './plan-and-result.ts';
export type { Proposal } from './proposal.ts';
export { proposeGrades, shootersId } from './propose-grades.ts';
export { proposeSchemes } from './propose-schemes.ts';
export { type SeasonPagesWishes, seasonPages } from './season-pages.ts';
export { priorOf, type SeasonPrior } from './season-prior.ts';
export {
  type GroupReport,
  type SeasonReport,
  type SeasonWishes,
  type SideReport,
  seasonReport,
} from './season-report.ts';
export {
  binMeanText,
  brierSentence,
  clearsSentence,
  conversionSentence,
  countingSentence,
  firstShotText,
  forecastSentence,
  groupingWords,
  planBinText,
  shareText,
  shotsText,
} from './season-words.ts';

export { type Advice, type AdviceGround, adviceFor, versus } from './advice.ts';
export type { BenchChance } from './bench-chance.ts';
export {
  type BenchEvent,
  type BenchGame,
  type BenchSettings,
  type BenchTap,
  type TappedLook,
  tapped,
  untapped,
} from './bench-event.ts';
export { type MeasuredTicks, measureTicks, oddsOfTicks, signsToTick } from './bench-ticks.ts';
export {
  type BenchMan,
  benchUnit,
  changesWords,
  offsideWords,
  servingNumbers,
  type UnitChanges,
  unitChanges,
} from './bench-unit.ts';
export {
  adviseCall,
  type Call,
  type CallAdvice,
  type CallGround,
  drawCall,
  isSameCall,
  type MeasuredCall,
  type WeighedCall,
} from './call-advice.ts';
export { chanceRecords, type WrittenChances, type WrittenGame, writeChances } from './chance-records.ts';
export { awaitsResult, type BenchState, foldGame, stateLater } from './fold-game.ts';
export type { GameClock } from './game-clock.ts';
export { type KeptGame, type KeptReading, keptGameText, readKeptGame } from './kept-game.ts';
export { usualCalls } from './learnt-calls.ts';
export { looksOfPlay, tappedLookWords } from './looks-of-play.ts';
export {
  type CallsAsked,
  callsOf,
  hashOfCall,
  type MeasuredCalls,
  measureCalls,
  outdatedCalls,
  schemesToTry,
  usualCallTrials,
  usualShorter,
} from './measured-calls.ts';
export { type Belief, beliefOf, likeliestFirst } from './scheme-belief.ts';
export { shortSchemeName } from './short-scheme-name.ts';
export {
  arrivalSeconds,
  type Situation,
  type Strength,
  situationOf,
  strengthOf,
  warnedAt,
  warningBetween,
} from './situation.ts';

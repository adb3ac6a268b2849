export { type ScriptMan, usualMan } from '../play/usual-clock.ts';
export { changeSet } from './change-set.ts';
export { type CountedSchemes, countSchemes } from './count-schemes.ts';
export {
  type ActionVerb,
  addAction,
  changeAction,
  changeTarget,
  changeVerb,
  putAction,
  removeAction,
  setWhenOpen,
} from './edit-actions.ts';
export { addBeat, addBeatAfter, changeTrigger, freshBeatId, nextTrigger, renameBeat } from './edit-beats.ts';
export { addChance, addChances, changeChance, type NewChance, removeChances } from './edit-chances.ts';
export { mirrorDutyRow, moveHome, noteScheme, renameDefender } from './edit-grid.ts';
export { addKeeperShot, removeKeeperShot } from './edit-keeper.ts';
export {
  addOpponent,
  everyDefender,
  menOfOpponent,
  menOfScheme,
  noteOpponent,
  removeOpponent,
  renameOpponent,
  setDiscipline,
  setSchemeShare,
  setSchemesBefore,
  setSchemeWeight,
} from './edit-opponents.ts';
export {
  addPathPoint,
  type Destination,
  movePathPoint,
  removePathPoint,
  reorderPathPoint,
} from './edit-paths.ts';
export {
  archivePlay,
  copyMirrored,
  copyPlay,
  deletePlay,
  editPlay,
  movePlay,
  newPlay,
  notePlay,
  renamePlay,
  spotsOfSet,
  tagPlay,
} from './edit-plays.ts';
export {
  addPractice,
  changePractice,
  dropBlock,
  moveBlock,
  noteBlock,
  removePractice,
  setBlockMinutes,
  setBlockReps,
} from './edit-practices.ts';
export { keepQuiz, keepResult, removeQuiz } from './edit-quizzes.ts';
export { addRead, changeRead, moveRead, removeRead } from './edit-reads.ts';
export type { ActionAddress, EditedPlay, EditedPlaybook, PlaybookEdit, PlayEdit, Refused } from './edit-result.ts';
export {
  addPlayer,
  changePlayer,
  movePlayer,
  removePlayer,
  setAbsent,
  setDepth,
  takeInPlayers,
} from './edit-roster.ts';
export {
  addDefender,
  addDutyRow,
  type DutyGrid,
  dutyGrid,
  moveDefender,
  removeDefender,
  removeDutyRow,
  setDuty,
  setExtends,
  setShortStick,
} from './edit-schemes.ts';
export { moveSpot, resetSpot } from './edit-spots.ts';
export { addLastTen, removeLastTen, setReset, setRestart, setStartBall } from './edit-start.ts';
export { forgetUnknownMen } from './forget-unknown-men.ts';
export { freshId } from './fresh-id.ts';
export { keepAsSet } from './keep-set.ts';
export { type Absence, lineUps, type SideLineUp, type SpotMan } from './line-ups.ts';
export { mirrorEntry } from './mirror-entry.ts';
export { copyScheme, newScheme } from './new-scheme.ts';
export { holderAtStart, passTo, throwBetween } from './pass-to.ts';
export { placeRefusal, restartRefusal, roundPlace } from './place-rules.ts';
export { groundOf, type PlayGround, playSpots, setSpots } from './play-ground.ts';
export { beatsOf, type FoundBeat, findBeat, type ReadEntry, readsOf, type ScriptName } from './play-script.ts';
export {
  frameSeconds,
  type PlayTiming,
  passTime,
  playTiming,
  type TimedBeat,
  type TimedHold,
  type TimedShot,
  type TimedThrow,
  type TimedWay,
  type TimingOptions,
} from './play-timing.ts';
export { type PlayWords, placesIn, wordsOf } from './play-words.ts';
export { type ReadingKind, readingParts } from './reading-parts.ts';
export { removeBeat } from './remove-beat.ts';
export type { RosterColumn } from './roster-columns.ts';
export { type RosterReading, readRosterTable, type TableProblem } from './roster-table.ts';
export { addScheme, removeScheme, renameScheme } from './scheme-list.ts';
export { type FoundPlay, searchPlays } from './search-plays.ts';
export { setAlone, setAloneId } from './set-alone.ts';
export { nearestAllowed, type SnapGround, type SnappedPlace, snapGroundOf, snapPlace } from './snap-place.ts';
export { defaultTakeDown, type TakeDownOptions, takeDownScheme } from './take-down-scheme.ts';
export { writeRosterTable } from './write-roster-table.ts';

export { clipPage } from './clip/clip-page.ts';
export { type ClipWishes, type PlayClip, playClip, watchedForClip } from './clip/play-clip.ts';
export { type MeasuredPlay, measurePlays, type PlaysAsked } from './sheets/measure-plays.ts';
export { opponentContent, type PlayAgainst, sharesOfOpponent } from './sheets/opponent-content.ts';
export { type OpponentWhole, opponentWhole } from './sheets/opponent-whole.ts';
export {
  isOfOnePlay,
  type PlaySheetKind,
  type PrintedPages,
  printedOpponent,
  printedPages,
  type SheetKind,
} from './sheets/printed-pages.ts';
export { dayWords, type SheetResult, type SheetWishes, sheetContent } from './sheets/sheet-content.ts';

export { clipPage } from './clip/clip-page.ts';
export { type ClipWishes, type PlayClip, playClip, watchedForClip } from './clip/play-clip.ts';
export { isOfOnePlay, type PrintedPages, printedPages, type SheetKind } from './sheets/printed-pages.ts';
export { dayWords, type SheetResult, type SheetWishes, sheetContent } from './sheets/sheet-content.ts';

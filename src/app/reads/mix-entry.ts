/** More often than in all of ten man-ups is no scheme met. */
const most = 10;

/** What a number of man-ups of ten that the coach gave is kept as, 0 to 10 with both ends, and what he is told when that is another; empty when it is not. */
export function mixEntry(typed: number): { readonly kept: number; readonly said: string } {
  const kept = Math.min(Math.max(typed, 0), most);
  return { kept, said: kept === typed ? '' : `0 to ${most}; ${signed(typed)} was read as ${kept}.` };
}

/** What he is told of something that is no number. */
export function unreadEntryWords(typed: string, kept: number): string {
  const what = typed.trim() === '' ? 'nothing was written' : `“${typed.trim()}” is no number`;
  return `0 to ${most}; ${what}, so it stays at ${kept}.`;
}

function signed(value: number): string {
  return value < 0 ? `−${-value}` : String(value);
}

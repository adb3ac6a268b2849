import type { VersionReason } from '../document/storage.ts';

/** Why a version was kept, as a coach reads it. */
export const reasonWords: Readonly<Record<VersionReason, string>> = {
  opened: 'When the page was opened',
  interval: 'After a while of work',
  beforeReplace: 'Just before it was replaced',
  imported: 'Opened from a file',
  merged: 'After a merge',
  restored: 'Brought back',
  exported: 'Saved as a file',
  begun: 'Started anew',
  received: 'Came in as a file',
};

/** Day and time as the device writes them; `at` in milliseconds since 1970. */
export function whenText(at: number): string {
  return new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** "1 play", "3 plays". */
export function countText(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

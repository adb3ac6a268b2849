import { type KeptGame, type KeptReading, keptGameText, type MeasuredCalls, readKeptGame } from '../../teach/index.ts';

/** Where the game that is on is kept, the one that ended last, one that could not be read, and what calls make. */
const keys = {
  game: 'sliderule:bench:game',
  last: 'sliderule:bench:last',
  broken: 'sliderule:bench:unreadable',
  calls: 'sliderule:bench:calls',
} as const;

/** What the browser would not do, in a sentence; empty when all is well. */
export type StorageFault = string;

/** The game as it is kept now, by whichever tab wrote it last. A browser that keeps nothing has none. */
export function readGame(which: 'game' | 'last' = 'game'): KeptReading {
  try {
    return readKeptGame(localStorage.getItem(keys[which]));
  } catch {
    return { kind: 'none' };
  }
}

/** Keeps the game before anything else is done with the tap: a screen that dies after it loses nothing. */
export function keepGame(kept: KeptGame): StorageFault {
  return keepText(keys.game, keptGameText(kept));
}

/** Ends the game that is on; it can be taken up again until another ends. */
export function putGameAway(kept: KeptGame): StorageFault {
  const fault = keepText(keys.last, keptGameText(kept));
  if (fault === '') forget(keys.game);
  return fault;
}

/** Takes the game that ended last up again. */
export function forgetLastGame(): void {
  forget(keys.last);
}

/** Sets a game that cannot be read aside, so that another can begin; its text can be had as a file. */
export function setBrokenAside(): void {
  try {
    const text = localStorage.getItem(keys.game);
    if (text !== null) localStorage.setItem(keys.broken, text);
    localStorage.removeItem(keys.game);
  } catch {
    // Then it stays where it is, and the screen says so again.
  }
}

/** The text of the game that was set aside; `null` when there is none. */
export function brokenText(): string | null {
  try {
    return localStorage.getItem(keys.broken);
  } catch {
    return null;
  }
}

/** What calls make, as it was found before the game; `undefined` when it was not, or cannot be read. */
export function readCalls(): MeasuredCalls | undefined {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(keys.calls) ?? 'null');
    return isMeasured(read) ? read : undefined;
  } catch {
    return undefined;
  }
}

export function keepCalls(calls: MeasuredCalls): StorageFault {
  return keepText(keys.calls, JSON.stringify(calls));
}

/** Told when another tab changes the game. Gives a function that ends it. */
export function listenToTabs(onChange: () => void): () => void {
  const hear = (event: StorageEvent): void => {
    if (event.key === null || event.key === keys.game) onChange();
  };
  window.addEventListener('storage', hear);
  return () => window.removeEventListener('storage', hear);
}

function keepText(key: string, text: string): StorageFault {
  try {
    localStorage.setItem(key, text);
    return '';
  } catch {
    return 'This browser keeps nothing for Sliderule (a private window, or no room left): the game is lost when this page closes. Make room, or open it in a usual window.';
  }
}

function forget(key: string): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}

function isMeasured(value: unknown): value is MeasuredCalls {
  if (typeof value !== 'object' || value === null || !('calls' in value) || !Array.isArray(value.calls)) return false;
  return value.calls.every(
    (call: unknown) =>
      typeof call === 'object' &&
      call !== null &&
      'play' in call &&
      'goals_byScheme' in call &&
      typeof call.goals_byScheme === 'object',
  );
}

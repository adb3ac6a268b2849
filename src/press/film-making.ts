/** What is used of an AbortSignal. */
export interface StopSignal {
  readonly aborted: boolean;
  throwIfAborted(): void;
}

/** How long work on a film is watched and ended. */
export interface FilmMaking {
  /** Ends the work: it rejects with the signal's reason, and nothing of the film is kept. */
  readonly signal?: StopSignal;
  /** So much of the film is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/** Lets everything else that waits on this thread have its turn: a page stays alive, and a stop is heard. */
export function giveWay(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

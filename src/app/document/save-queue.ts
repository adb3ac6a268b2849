import { type DocumentStorage, StorageFullError } from './storage.ts';

export interface SaveQueue {
  /** Takes an update to be kept; begins to write it at once unless a write is under way. */
  readonly push: (update: Uint8Array) => void;
  /** Resolves when nothing waits any more, or the last try failed. */
  readonly settled: () => Promise<void>;
  readonly close: () => void;
}

export type QueueState = 'saved' | 'saving' | 'storageFull' | 'unavailable';

/**
 * Keeps updates in order. What could not be kept stays here and is tried again with the next update, and every `retryAfter` milliseconds: a full
 * device may get room again.
 */
export function createSaveQueue(
  storage: Pick<DocumentStorage, 'append'>,
  tell: (state: QueueState) => void,
  retryAfter: number,
): SaveQueue {
  let waiting: Uint8Array[] = [];
  let writing: Promise<void> | undefined;
  let retry: ReturnType<typeof setTimeout> | undefined;
  let failing = false;

  const write = async (): Promise<void> => {
    clearTimeout(retry);
    while (waiting.length > 0) {
      const batch = waiting;
      waiting = [];
      try {
        await storage.append(batch);
      } catch (thrown) {
        waiting = [...batch, ...waiting];
        failing = true;
        tell(thrown instanceof StorageFullError ? 'storageFull' : 'unavailable');
        retry = setTimeout(start, retryAfter);
        return;
      }
    }
    failing = false;
    tell('saved');
  };
  const start = (): void => {
    writing ??= write().finally(() => {
      writing = undefined;
    });
  };
  return {
    push: (update) => {
      waiting.push(update);
      // A failure stays told until a write succeeds, or the sentence would flicker with every key.
      if (!failing) tell('saving');
      start();
    },
    settled: async () => writing,
    close: () => clearTimeout(retry),
  };
}

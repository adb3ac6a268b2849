import { type DocumentStorage, StorageFullError, type StorageKey } from './storage.ts';

export interface SaveQueue {
  /** Takes an update to be kept; begins to write it at once unless a write is under way. */
  readonly push: (update: Uint8Array) => void;
  /** Resolves when nothing waits any more, or the last try failed. */
  readonly settled: () => Promise<void>;
  readonly close: () => void;
}

export type QueueState = 'saved' | 'saving' | 'storageFull' | 'unavailable';

export interface SaveQueueOptions {
  readonly storage: Pick<DocumentStorage, 'append' | 'squeeze'>;
  readonly tell: (state: QueueState) => void;
  /** Milliseconds after which what could not be kept is tried again. */
  readonly retryAfter: number;
  /** Keys of the updates that the document was read from. */
  readonly stored: readonly StorageKey[];
  /** They hold far more than the document, such as all that was there to undo: they are put together at once. */
  readonly isBulky: boolean;
  /** The whole document as one update. */
  readonly whole: () => Uint8Array;
}

/** Updates that may lie in storage before they are put together: reading them all is what opening takes long for. */
export const longLog = 200;

/**
 * Keeps updates in order. What could not be kept stays here and is tried again with the next update, and after a time: a full device may get room
 * again. A log that has become long is put together.
 */
export function createSaveQueue({ storage, tell, retryAfter, stored, isBulky, whole }: SaveQueueOptions): SaveQueue {
  let waiting: Uint8Array[] = [];
  let keys = [...stored];
  let longest = isBulky ? 0 : longLog;
  let writing: Promise<void> | undefined;
  let retry: ReturnType<typeof setTimeout> | undefined;
  let failing = false;

  const write = async (): Promise<void> => {
    clearTimeout(retry);
    while (waiting.length > 0) {
      const batch = waiting;
      waiting = [];
      try {
        keys.push(...(await storage.append(batch)));
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
    if (keys.length > longest) await squeeze();
  };
  const squeeze = async (): Promise<void> => {
    const replaced = keys;
    keys = [];
    try {
      keys.push(await storage.squeeze(whole(), replaced));
      longest = longLog;
    } catch {
      // There may be room for an update, but not for all of them twice. A long log is only slow; it is tried again when it is longer still.
      keys = [...replaced, ...keys];
      longest = keys.length + longLog;
    }
  };
  const start = (): void => {
    writing ??= write().finally(() => {
      writing = undefined;
      // Something may have come while the log was put together.
      if (waiting.length > 0 && !failing) start();
    });
  };
  if (keys.length > longest) start();
  return {
    push: (update) => {
      waiting.push(update);
      // A failure stays told until a write succeeds, or the sentence would flicker with every key.
      if (!failing) tell('saving');
      start();
    },
    settled: async () => {
      // A write that ends may begin another.
      while (writing !== undefined) await writing;
    },
    close: () => clearTimeout(retry),
  };
}

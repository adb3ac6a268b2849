import * as Y from 'yjs';
import type { Playbook } from '../../playbook/index.ts';
import { createSaveQueue, type SaveQueue } from './save-queue.ts';
import { type SaveKind, type SaveStatus, saveStatuses } from './save-status.ts';
import type { DocumentStorage, Persistence, SetAside, StorageKey } from './storage.ts';
import { type Reading, readUpdates } from './stored-document.ts';
import { syncTabs } from './tab-sync.ts';
import { createVersionKeeper, type VersionKeeper } from './version-keeper.ts';

/** A document that was filled with what is stored, and is stored as it changes. */
export interface OpenDocument {
  readonly isFirstVisit: boolean;
  readonly versions: VersionKeeper;
  /** Meets the other tabs. Called once, when whoever opened the document is ready to hear of changes. */
  readonly begin: () => void;
  readonly setAside: () => Promise<readonly SetAside[]>;
  readonly dropSetAside: (id: number) => Promise<void>;
  readonly acknowledgeBroken: () => void;
  readonly settled: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface OpenOptions {
  readonly name: string;
  readonly persistence: Persistence;
  readonly initial: Playbook;
  readonly now?: () => number;
  readonly retryAfter?: number;
}

const usualRetry = 15_000;

/**
 * Fills an empty document: with what is stored, with the best that can be read of it, or with the initial playbook. Never rejects; where nothing can be
 * stored, the document lives as long as the page. `tell` hears of every change of the status.
 */
export async function openDocument(
  doc: Y.Doc,
  options: OpenOptions,
  tell: (status: SaveStatus) => void,
  seed: (playbook: Playbook) => Uint8Array,
): Promise<OpenDocument> {
  const { name, persistence, initial, now = Date.now, retryAfter = usualRetry } = options;
  const found = await findStored(persistence, name);
  const storage = found?.storage;
  const versions = createVersionKeeper(storage, now);
  const reading = found?.reading ?? { kind: 'nothing' };
  let isBroken = reading.kind === 'broken';
  let saving: SaveKind = storage === undefined ? 'unavailable' : 'saved';
  const show = (next: SaveKind = saving): void => {
    saving = next;
    // That something could not be read stays told until it was seen, except when what is written now is not safe either.
    const isSafe = saving === 'saved' || saving === 'saving';
    tell(saveStatuses[isBroken && isSafe ? 'broken' : saving]);
  };
  if (reading.kind === 'broken') await storage?.startBeside().catch(() => undefined);
  const begins = await firstUpdate(reading, versions, () => seed(initial));
  if (reading.kind === 'whole') Y.applyUpdate(doc, begins);
  const whole = () => Y.encodeStateAsUpdate(doc);
  const queue = storage && createSaveQueue({ storage, tell: show, retryAfter, ...replaceable(found), whole });
  doc.on('update', (update) => queue?.push(update));
  if (reading.kind !== 'whole') Y.applyUpdate(doc, begins);
  show();
  return {
    isFirstVisit: reading.kind === 'nothing',
    versions,
    ...afterOpening(doc, options, storage, queue),
    acknowledgeBroken: () => {
      isBroken = false;
      show();
    },
  };

  /** What the document begins with when it is not simply all that was stored. */
  async function firstUpdate(read: Reading, kept: VersionKeeper, fresh: () => Uint8Array): Promise<Uint8Array> {
    if (read.kind === 'whole') return read.update;
    if (read.kind === 'nothing') return fresh();
    if (read.salvaged !== undefined) return read.salvaged;
    const version = await kept.newest();
    return version === undefined ? fresh() : seed(version);
  }
}

function afterOpening(
  doc: Y.Doc,
  { name, persistence }: OpenOptions,
  storage: DocumentStorage | undefined,
  queue: SaveQueue | undefined,
): Pick<OpenDocument, 'begin' | 'setAside' | 'dropSetAside' | 'settled' | 'close'> {
  let leave: (() => void) | undefined;
  return {
    begin: () => {
      const channel = persistence.connect(name);
      leave = channel && syncTabs(doc, channel);
    },
    setAside: async () => (await storage?.setAside().catch(() => [])) ?? [],
    dropSetAside: async (id) => storage?.dropSetAside(id).catch(() => undefined),
    settled: async () => queue?.settled(),
    close: async () => {
      leave?.();
      await queue?.settled();
      queue?.close();
      storage?.close();
    },
  };
}

/** What of the stored updates the document holds, so that it may be put in their place. */
function replaceable(found: Found | undefined): { readonly stored: readonly StorageKey[]; readonly isBulky: boolean } {
  if (found?.reading.kind !== 'whole') return { stored: [], isBulky: false };
  return { stored: found.keys, isBulky: found.bytes > bulky * found.reading.update.length };
}

/** How many times the size of the document what is stored may have. */
const bulky = 2;

interface Found {
  readonly storage: DocumentStorage;
  readonly reading: Reading;
  readonly keys: readonly StorageKey[];
  readonly bytes: number;
}

async function findStored(persistence: Persistence, name: string): Promise<Found | undefined> {
  try {
    const storage = await persistence.open(name);
    const stored = await storage.read();
    const updates = stored.map(({ update }) => update);
    const bytes = updates.reduce<number>((sum, one) => sum + (one instanceof Uint8Array ? one.length : 0), 0);
    return { storage, reading: readUpdates(updates), keys: stored.map(({ key }) => key), bytes };
  } catch {
    return undefined;
  }
}

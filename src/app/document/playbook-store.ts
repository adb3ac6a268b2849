import * as Y from 'yjs';
import { limits, type Playbook, serializePlaybook, withoutNames } from '../../playbook/index.ts';
import { closestCopy } from './closest-copy.ts';
import { type OpenDocument, openDocument } from './open-document.ts';
import { mapsOf, nothingYet, type Projection, projectPlaybook, seedUpdate, writePlaybook } from './playbook-maps.ts';
import { type SaveStatus, saveStatuses } from './save-status.ts';
import type { Persistence, SetAside, VersionInfo, VersionReason } from './storage.ts';
import { createUndoSteps, type OverwrittenStep, type StepLabels, type StepMove } from './undo-steps.ts';

export interface PlaybookStoreOptions {
  /** Under which the document is kept; tabs with the same name agree. */
  readonly name: string;
  readonly persistence: Persistence;
  /** What a coach sees who has nothing stored yet. */
  readonly initial: Playbook;
  /** Milliseconds since 1970; the clock when left out. */
  readonly now?: () => number;
  /** Milliseconds of editing after which one more version is kept; 10 minutes when left out. */
  readonly versionEvery?: number;
  /** Milliseconds after which what could not be saved is tried again; 15 s when left out. */
  readonly retryAfter?: number;
}

/** One playbook that is edited here, and maybe in other tabs at once. Everything that it gives keeps its identity until it changes. */
export interface PlaybookStore {
  /** May be unfinished as it is typed: see `isPlaybookShaped`. While it is being opened, the initial one. */
  readonly playbook: Playbook;
  readonly status: SaveStatus;
  /** What undo and redo would do. */
  readonly steps: StepLabels;
  /** What the last undo or redo could not move, because another tab has changed it since; until the next edit, undo or redo. */
  readonly overwritten: OverwrittenStep | undefined;
  /** Nothing was stored under this name: this coach is here for the first time. False while opening. */
  readonly isFirstVisit: boolean;
  /** Resolves when the document is open. Never rejects: what goes wrong is in `status`. */
  readonly whenReady: Promise<void>;
  /** Tells of every change of the above. Gives a function that ends it. */
  readonly subscribe: (listener: () => void) => () => void;
  /**
   * Changes the playbook: one step of undo. `change` is pure and keeps the identity of what it does not touch. With `joins`, edits that follow each other
   * under the same name are one step, such as the keys of one field: 'typing:players/7/name'. False when nothing changed, or while opening.
   */
  readonly edit: (label: string, change: (playbook: Playbook) => Playbook, options?: EditOptions) => boolean;
  /** Ends a joined step, as when a field is left. */
  readonly settle: () => void;
  /** Takes the joined step back for good, as when Escape ends a drag. Whether there was one under this name. */
  readonly abandon: (joins: string) => boolean;
  /** Label of the step that was taken back or done again; undefined when there was none, or when it is `overwritten`. */
  readonly undo: () => string | undefined;
  readonly redo: () => string | undefined;
  /**
   * Puts another playbook in place of this one: one step of undo, and a version is kept before and after, for the reason `imported` when none is given.
   * `received` is the file that came in, when the playbook is what came of merging it; an imported playbook is its own.
   */
  readonly replace: (label: string, playbook: Playbook, reason?: VersionReason, received?: Playbook) => Promise<void>;
  /** What this playbook and one that came as a file have in common, to merge them by: the last copy that both come from, as it was. */
  readonly commonBase: (theirs: Playbook) => Promise<Playbook | undefined>;
  readonly versions: () => Promise<readonly VersionInfo[]>;
  /** The playbook of a version, to be looked at; undefined when it is gone or damaged. */
  readonly version: (id: number) => Promise<Playbook | undefined>;
  /** Keeps the playbook as it is now as a version, as when a file of it is handed out. */
  readonly keepVersion: (reason: VersionReason) => Promise<void>;
  /** Brings a version back as one step of undo. False when it is gone. */
  readonly restore: (id: number) => Promise<boolean>;
  /** The text of the playbook's file as it is now; without names for who may not see those of minors. */
  readonly exportText: (options?: { readonly names: boolean }) => string;
  /**
   * The same for a file that is really handed out: it gets a mark, and a version (with names) is kept under it, so that it can be merged by both when
   * it comes back changed.
   */
  readonly handOut: (options?: { readonly names: boolean }) => string;
  /** Stored content that could not be read, as the text of a file to download. */
  readonly setAside: () => Promise<readonly { readonly id: number; readonly text: string }[]>;
  readonly dropSetAside: (id: number) => Promise<void>;
  /** The coach has read that stored data was broken. */
  readonly acknowledgeBroken: () => void;
  /** Resolves when everything is saved, or cannot be. */
  readonly settled: () => Promise<void>;
  /** Saves and lets go of everything. */
  readonly close: () => Promise<void>;
}

export interface EditOptions {
  readonly joins?: string;
}

const minute = 60_000;
/** Origin of changes that are no step of undo. */
const byItself = Symbol('by itself');

export function createPlaybookStore(options: PlaybookStoreOptions): PlaybookStore {
  const { now = Date.now, versionEvery = 10 * minute } = options;
  const doc = new Y.Doc();
  const maps = mapsOf(doc);
  const steps = createUndoSteps(doc, maps);
  const listeners = new Set<() => void>();
  let projection: Projection = { ...nothingYet, playbook: options.initial };
  let status = saveStatuses.loading;
  let labels: StepLabels = {};
  let overwritten: OverwrittenStep | undefined;
  let opened: OpenDocument | undefined;
  let versionAt = now();

  const notify = (): void => {
    for (const listener of [...listeners]) listener();
  };
  const setStatus = (next: SaveStatus): void => {
    if (next === status) return;
    status = next;
    notify();
  };
  const tellOverwritten = (next: OverwrittenStep | undefined): void => {
    if (next === overwritten) return;
    overwritten = next;
    notify();
  };
  doc.on('afterAllTransactions', (_, transactions) => {
    if (opened === undefined) return;
    const changed = new Set(transactions.flatMap(({ changed: types }) => [...types.keys()]));
    const next = steps.labels();
    const isRelabelled = next.undo !== labels.undo || next.redo !== labels.redo;
    if (changed.size === 0 && !isRelabelled) return;
    if (changed.size > 0) projection = projectPlaybook(maps, projection, changed);
    if (isRelabelled) labels = next;
    notify();
  });
  const open = async (): Promise<void> => {
    const document = await openDocument(doc, options, setStatus, seedUpdate);
    projection = projectPlaybook(maps);
    opened = document;
    document.begin();
    versionAt = now();
    notify();
    // Nobody waits for it.
    void document.versions.keep('opened', projection.playbook);
  };
  const whenReady = open();
  const newKey = keyMaker(doc);
  const edit: PlaybookStore['edit'] = (label, change, { joins } = {}) => {
    if (opened === undefined) return false;
    const before = projection;
    const next = change(before.playbook);
    if (next === before.playbook) return false;
    if (now() - versionAt >= versionEvery) {
      versionAt = now();
      void opened.versions.keep('interval', before.playbook);
    }
    steps.record(label, joins, () => writePlaybook(maps, before, next, newKey));
    if (projection === before) return false;
    tellOverwritten(undefined);
    return true;
  };
  const take = (move: StepMove): string | undefined => {
    const taken = steps.take(move);
    tellOverwritten(taken.kind === 'overwritten' ? taken : undefined);
    return taken.kind === 'moved' ? taken.label : undefined;
  };
  const replace: PlaybookStore['replace'] = async (label, playbook, reason = 'imported', received) => {
    await whenReady;
    const came = received ?? (reason === 'imported' ? playbook : undefined);
    const mark = came?.copies?.at(-1);
    await opened?.versions.keep('beforeReplace', projection.playbook);
    if (came !== undefined && mark !== undefined) await opened?.versions.keep('received', came, mark);
    edit(label, () => playbook);
    await opened?.versions.keep(reason, projection.playbook);
  };
  /** The playbook with a new mark: it and the file have a copy in common from now on. */
  const marked = (): Playbook => {
    if (opened === undefined) return projection.playbook;
    const mark = newMark();
    const copies = [...(projection.playbook.copies ?? []), mark].slice(-limits.copies);
    steps.settle();
    doc.transact(() => writePlaybook(maps, projection, { ...projection.playbook, copies }, newKey), byItself);
    void opened.versions.keep('exported', projection.playbook, mark);
    return projection.playbook;
  };
  return {
    get playbook() {
      return projection.playbook;
    },
    get status() {
      return status;
    },
    get steps() {
      return labels;
    },
    get overwritten() {
      return overwritten;
    },
    get isFirstVisit() {
      return opened?.isFirstVisit ?? false;
    },
    whenReady,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    edit,
    settle: steps.settle,
    abandon: steps.abandon,
    undo: () => take('undo'),
    redo: () => take('redo'),
    replace,
    commonBase: async (theirs) => {
      const shared = (theirs.copies ?? []).filter((mark) => projection.playbook.copies?.includes(mark));
      for (const mark of shared.reverse()) {
        const base = closestCopy(theirs, (await opened?.versions.marked(mark)) ?? []);
        if (base !== undefined) return base;
      }
      return undefined;
    },
    versions: async () => (await opened?.versions.list()) ?? [],
    version: async (id) => opened?.versions.get(id),
    keepVersion: async (reason) => opened?.versions.keep(reason, projection.playbook),
    restore: async (id) => {
      const playbook = await opened?.versions.get(id);
      if (playbook === undefined) return false;
      await replace('Bring back an earlier version', playbook, 'restored');
      return true;
    },
    exportText: ({ names } = { names: true }) => textOf(projection.playbook, names),
    handOut: ({ names } = { names: true }) => textOf(marked(), names),
    setAside: async () => ((await opened?.setAside()) ?? []).map(rawText),
    dropSetAside: async (id) => opened?.dropSetAside(id),
    acknowledgeBroken: () => opened?.acknowledgeBroken(),
    settled: async () => {
      await whenReady;
      await opened?.settled();
    },
    close: async () => {
      await whenReady;
      await opened?.close();
      doc.destroy();
      listeners.clear();
    },
  };
}

/** Keys that no other tab makes: the number of this document's client, which is drawn anew each time it is opened, and a count. */
function keyMaker(doc: Y.Doc): () => string {
  let count = 0;
  return () => `${doc.clientID.toString(36)}.${count++}`;
}

function textOf(playbook: Playbook, names: boolean): string {
  return serializePlaybook(names ? playbook : withoutNames(playbook));
}

/** 40 bits: two copies of one playbook will not get the same. */
function newMark(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(10)), (byte) => (byte % 16).toString(16)).join('');
}

/** Stored content as text: JSON with each update in base 64, for who can mend it. */
function rawText({ id, updates }: SetAside): { readonly id: number; readonly text: string } {
  const kept = updates.map((update) => (update instanceof Uint8Array ? base64(update) : update));
  return { id, text: `${JSON.stringify({ format: 'sliderule-raw-updates', updates: kept }, null, 2)}\n` };
}

function base64(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}

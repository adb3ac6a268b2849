import type { Playbook } from '../../playbook/index.ts';

/** Where a document is kept. The store knows no more of it than this, so that tests can make it fail. */
export interface Persistence {
  /** Opens what is kept under a name. Rejects when nothing can be kept here. */
  readonly open: (name: string) => Promise<DocumentStorage>;
  /** A line to the other tabs that have the same document open; undefined where there is none. */
  readonly connect: (name: string) => TabChannel | undefined;
}

export interface DocumentStorage {
  /** The updates of the document in the order in which they were kept. */
  readonly read: () => Promise<readonly StoredUpdate[]>;
  /** Keeps updates, all or none, and gives their keys. Rejects with `StorageFullError` when there is no room, otherwise with whatever went wrong. */
  readonly append: (updates: readonly Uint8Array[]) => Promise<readonly StorageKey[]>;
  /** Puts one update in place of those under the keys, in one step, and gives its key. What other tabs kept meanwhile stays. */
  readonly squeeze: (update: Uint8Array, keys: readonly StorageKey[]) => Promise<StorageKey>;
  /** Leaves all updates where they are, set aside, and begins with none. */
  readonly startBeside: () => Promise<void>;
  /** What was set aside, oldest first. */
  readonly setAside: () => Promise<readonly SetAside[]>;
  readonly dropSetAside: (id: number) => Promise<void>;
  readonly versions: VersionStorage;
  readonly close: () => void;
}

export type StorageKey = IDBValidKey;

export interface StoredUpdate {
  readonly key: StorageKey;
  /** Unknown, because storage may be damaged. */
  readonly update: unknown;
}

/** Stored content that could not be read, as it was found. */
export interface SetAside {
  readonly id: number;
  readonly updates: readonly unknown[];
}

/** Why a version was kept. */
export type VersionReason =
  | 'opened'
  | 'interval'
  | 'beforeReplace'
  | 'imported'
  | 'merged'
  | 'restored'
  | 'begun'
  /** Handed out as a file. */
  | 'exported'
  /** Came in as a file: somebody else's, kept only to merge his next one by. */
  | 'received';

export interface VersionInfo {
  readonly id: number;
  /** Milliseconds since 1970, UTC. */
  readonly at: number;
  readonly reason: VersionReason;
  readonly team: string;
  readonly plays: number;
  /** The mark in the file that was handed out or came in. */
  readonly mark?: string;
}

export interface Version extends VersionInfo {
  readonly playbook: Playbook;
}

export interface VersionStorage {
  /** Newest first. */
  readonly list: () => Promise<readonly Version[]>;
  /** Keeps one more, and of those that `stays` gives up none. */
  readonly add: (
    version: Omit<Version, 'id'>,
    stays: (versions: readonly Version[]) => readonly Version[],
  ) => Promise<void>;
}

export interface TabChannel {
  readonly post: (message: unknown) => void;
  readonly listen: (hear: (message: unknown) => void) => void;
  readonly close: () => void;
}

/** There is no room left on the device. */
export class StorageFullError extends Error {
  override readonly name = 'StorageFullError';
}

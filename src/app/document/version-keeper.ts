import { isPlaybookShaped, type Playbook, sameValue } from '../../playbook/index.ts';
import type { DocumentStorage, Version, VersionInfo, VersionReason } from './storage.ts';

export interface VersionKeeper {
  /** Newest first. Empty where nothing can be kept. */
  readonly list: () => Promise<readonly VersionInfo[]>;
  /** The playbook of a version; undefined when it is gone or damaged. */
  readonly get: (id: number) => Promise<Playbook | undefined>;
  /** The newest version of this document that can be read. */
  readonly newest: () => Promise<Playbook | undefined>;
  /** The copies with a mark, handed out or received, newest first; without those that are gone or damaged. */
  readonly marked: (mark: string) => Promise<readonly Playbook[]>;
  /** Keeps the playbook as it is, unless the newest version says the same. Never rejects: a version that finds no room is not kept. */
  readonly keep: (reason: VersionReason, playbook: Playbook, mark?: string) => Promise<void>;
}

/** Versions that are kept, and copies by which to merge; older ones go. */
export const mostVersions = 10;

/** `storage` is undefined where nothing can be kept. */
export function createVersionKeeper(storage: DocumentStorage | undefined, now: () => number): VersionKeeper {
  const all = async (): Promise<readonly Version[]> => {
    try {
      return (await storage?.versions.list()) ?? [];
    } catch {
      return [];
    }
  };
  const own = async (): Promise<readonly Version[]> => (await all()).filter(isOwn);
  return {
    list: async () => (await own()).map(({ playbook: _, ...info }) => info),
    get: async (id) => soundPlaybook((await own()).find((version) => version.id === id)),
    newest: async () => (await own()).map(soundPlaybook).find((playbook) => playbook !== undefined),
    marked: async (mark) => {
      const copies = (await all()).filter((version) => version.mark === mark).map(soundPlaybook);
      return copies.filter((copy) => copy !== undefined);
    },
    keep: async (reason, playbook, mark) => {
      const facts = { at: now(), reason, team: playbook.team.name, plays: playbook.plays.length };
      try {
        await storage?.versions.add({ ...facts, ...(mark !== undefined && { mark }), playbook }, staying);
      } catch {
        // The document itself says that the device is full or closed to us.
      }
    },
  };
}

/**
 * Of all versions, newest first and the new one among them, those that stay. What has a mark stays beside the others, because somebody's copy comes
 * back to it; without one, at least the last that was handed out does.
 */
function staying(versions: readonly Version[]): readonly Version[] {
  const [newest, ...older] = versions;
  const before = older.find(isOwn);
  if (newest?.mark === undefined && before !== undefined && sameValue(newest?.playbook, before.playbook)) {
    // The same once more is only worth keeping when it says more: that this is what a file holds.
    const saysMore = newest?.reason === 'exported' && before.mark === undefined;
    return saysMore ? versions.filter((version) => version !== before) : older;
  }
  const plain = versions.filter(({ mark }) => mark === undefined);
  const marked = versions.filter(({ mark }) => mark !== undefined).slice(0, mostVersions);
  const last = plain.slice(0, mostVersions);
  const handedOut = plain.find(({ reason }) => reason === 'exported');
  const isKept = handedOut === undefined || last.includes(handedOut);
  return [...(isKept ? last : [...last.slice(0, -1), handedOut]), ...marked];
}

function isOwn(version: Version): boolean {
  return version.reason !== 'received';
}

function soundPlaybook(version: Version | undefined): Playbook | undefined {
  return isPlaybookShaped(version?.playbook) ? version.playbook : undefined;
}

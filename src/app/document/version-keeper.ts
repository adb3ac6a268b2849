import { isPlaybookShaped, type Playbook, sameValue } from '../../playbook/index.ts';
import type { DocumentStorage, Version, VersionInfo, VersionReason } from './storage.ts';

export interface VersionKeeper {
  /** Newest first. Empty where nothing can be kept. */
  readonly list: () => Promise<readonly VersionInfo[]>;
  /** The playbook of a version; undefined when it is gone or damaged. */
  readonly get: (id: number) => Promise<Playbook | undefined>;
  /** The newest version that can be read. */
  readonly newest: () => Promise<Playbook | undefined>;
  /** Keeps the playbook as it is, unless the newest version says the same. Never rejects: a version that finds no room is not kept. */
  readonly keep: (reason: VersionReason, playbook: Playbook) => Promise<void>;
}

/** Versions that are kept; older ones go. */
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
  return {
    list: async () => (await all()).map(({ playbook: _, ...info }) => info),
    get: async (id) => soundPlaybook((await all()).find((version) => version.id === id)),
    newest: async () => (await all()).map(soundPlaybook).find((playbook) => playbook !== undefined),
    keep: async (reason, playbook) => {
      const version = { at: now(), reason, team: playbook.team.name, plays: playbook.plays.length, playbook };
      try {
        await storage?.versions.add(version, staying);
      } catch {
        // The document itself says that the device is full or closed to us.
      }
    },
  };
}

/**
 * Of all versions, newest first and the new one among them, those that stay. The last that was handed out as a file stays however old it is: an
 * assistant's copy comes back to it.
 */
function staying(versions: readonly Version[]): readonly Version[] {
  const [newest, before, ...older] = versions;
  if (newest !== undefined && before !== undefined && sameValue(newest.playbook, before.playbook)) {
    // The same once more is only worth keeping when it says more: that this is what a file holds.
    return newest.reason === 'exported' ? [newest, ...older] : [before, ...older];
  }
  if (versions.length <= mostVersions) return versions;
  const handedOut = versions.find(({ reason }) => reason === 'exported');
  const last = versions.slice(0, mostVersions);
  return handedOut === undefined || last.includes(handedOut)
    ? last
    : [...versions.slice(0, mostVersions - 1), handedOut];
}

function soundPlaybook(version: Version | undefined): Playbook | undefined {
  return isPlaybookShaped(version?.playbook) ? version.playbook : undefined;
}

import { IDBFactory } from 'fake-indexeddb';
import { afterEach, expect } from 'vitest';
import { demoPlaybook, type Playbook } from '../../playbook/index.ts';
import { indexedDbPersistence } from './indexed-db-persistence.ts';
import { createPlaybookStore, type PlaybookStore, type PlaybookStoreOptions } from './playbook-store.ts';

const open: PlaybookStore[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((store) => store.close()));
});

let devices = 0;

/** A name that no other test uses: channels between tabs go by it. */
export function newName(): string {
  return `test-${process.pid}-${devices++}`;
}

/** A device with its own storage; tabs on it hear of each other, but for those that are alone. */
export function device() {
  const indexedDB = new IDBFactory();
  return {
    indexedDB,
    name: newName(),
    persistence: indexedDbPersistence({ indexedDB, BroadcastChannel }),
    alone: indexedDbPersistence({ indexedDB }),
  };
}

export type TabOptions = Partial<PlaybookStoreOptions> & Pick<PlaybookStoreOptions, 'name' | 'persistence'>;

/** A store that is not ready yet, and is closed after the test. */
export function openingTab(options: TabOptions): PlaybookStore {
  const store = createPlaybookStore({ initial: demoPlaybook, ...options });
  open.push(store);
  return store;
}

export async function tab(options: TabOptions): Promise<PlaybookStore> {
  const store = openingTab(options);
  await store.whenReady;
  return store;
}

export const renameTeam = (name: string) => (playbook: Playbook) => ({
  ...playbook,
  team: { ...playbook.team, name },
});
export const renamePlay = (index: number, name: string) => (playbook: Playbook) => ({
  ...playbook,
  plays: playbook.plays.map((play, i) => (i === index ? { ...play, name } : play)),
});
export const removePlay = (index: number) => (playbook: Playbook) => ({
  ...playbook,
  plays: playbook.plays.filter((_, i) => i !== index),
});
export const playNames = (store: PlaybookStore) => store.playbook.plays.map((play) => play.name);

/** Until it holds; what tabs tell each other takes a few turns of the event loop. */
export async function until(holds: () => boolean): Promise<void> {
  for (let turn = 0; turn < 1000 && !holds(); turn++) await new Promise((resolve) => setTimeout(resolve, 5));
  expect(holds()).toBe(true);
}

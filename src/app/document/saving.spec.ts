import { IDBObjectStore } from 'fake-indexeddb';
import { describe, expect, test, vi } from 'vitest';
import { demoPlaybook, parsePlaybook } from '../../playbook/index.ts';
import { indexedDbPersistence } from './indexed-db-persistence.ts';
import { seedUpdate } from './playbook-maps.ts';
import { longLog } from './save-queue.ts';
import { type DocumentStorage, type Persistence, StorageFullError } from './storage.ts';
import { device, openingTab, playNames, removePlay, renamePlay, renameTeam, tab, until } from './tabs.fixture.ts';

describe('saving', () => {
  test('what was typed is there after the tab was killed', async () => {
    const { name, alone } = device();
    const killed = openingTab({ name, persistence: alone });
    await killed.whenReady;
    killed.edit('Rename', renameTeam('Typed'));
    killed.edit('Remove', removePlay(2));
    // Nobody closes it, and nobody waits for it.
    const again = await tab({ name, persistence: alone });
    expect(again.playbook).toEqual(removePlay(2)(renameTeam('Typed')(demoPlaybook)));
    expect(again.isFirstVisit).toBe(false);
  });

  test('says that it saves, then that it has', async () => {
    const store = await tab(device());
    await store.settled();
    const heard: string[] = [];
    store.subscribe(() => heard.push(store.status.kind));
    store.edit('Rename', renameTeam('A'));
    expect(store.status.kind).toBe('saving');
    await store.settled();
    expect(store.status.kind).toBe('saved');
    expect(heard.at(0)).toBe('saving');
    expect(heard.at(-1)).toBe('saved');
  });

  test('a log that becomes long is put together, in every tab that keeps it, and nothing is lost', async () => {
    const home = device();
    const [one, two] = [await tab(home), await tab(home)];
    const storage = await home.alone.open(home.name);
    const seen: number[] = [];
    for (let i = 0; i < 350; i++) {
      (i % 2 === 0 ? one : two).edit('Rename', renamePlay(i % 3, `Play ${i}`));
      await one.settled();
      await two.settled();
      if (i % 10 === 0) seen.push((await storage.read()).length);
    }
    await until(() => playNames(one).join() === playNames(two).join());
    await Promise.all([one.settled(), two.settled()]);
    expect(Math.max(...seen)).toBeGreaterThan(longLog);
    // Each of the two keeps what it hears from the other too.
    expect(Math.max(...seen)).toBeLessThanOrEqual(2 * longLog + 4);
    storage.close();
    const later = await tab({ ...home, persistence: home.alone });
    expect(later.playbook).toEqual(one.playbook);
    expect(later.status.kind).toBe('saved');
    // All that could be undone went into the log; who opens it alone puts in its place what is there.
    await later.settled();
    await one.close();
    await two.close();
    await later.close();
    const small = await tab({ ...home, persistence: home.alone });
    await small.settled();
    const reopened = await home.alone.open(home.name);
    const [only, ...more] = await reopened.read();
    expect(more).toEqual([]);
    expect((only!.update as Uint8Array).length).toBeLessThan(2 * seedUpdate(demoPlaybook).length);
    reopened.close();
    const last = await tab({ ...home, persistence: home.alone });
    expect(last.playbook).toEqual(later.playbook);
  });

  test('a long log that cannot be put together for want of room is kept as it is', async () => {
    const { name, alone } = device();
    const persistence: Persistence = {
      ...alone,
      open: async (asked) => ({
        ...(await alone.open(asked)),
        squeeze: async () => {
          throw new StorageFullError('no room for all of it');
        },
      }),
    };
    const store = await tab({ name, persistence });
    for (let i = 0; i < longLog + 20; i++) {
      store.edit('Rename', renamePlay(i % 3, `Play ${i}`));
      await store.settled();
    }
    expect(store.status.kind).toBe('saved');
    const later = await tab({ name, persistence: alone });
    expect(later.playbook).toEqual(store.playbook);
    await later.settled();
    const storage = await alone.open(name);
    expect(await storage.read()).toHaveLength(1);
    expect((await tab({ name, persistence: alone })).playbook).toEqual(store.playbook);
    storage.close();
  });

  test('without storage it works on, and says so', async () => {
    const persistence: Persistence = { ...indexedDbPersistence({}) };
    const store = await tab({ name: 'none', persistence });
    expect(store.status.kind).toBe('unavailable');
    expect(store.edit('Rename', renameTeam('A'))).toBe(true);
    expect(store.playbook.team.name).toBe('A');
    expect(store.status.kind).toBe('unavailable');
    expect(await store.versions()).toEqual([]);
    expect(parsePlaybook(store.exportText()).value?.team.name).toBe('A');
  });

  test('on a full device it works on, says so, and saves all when there is room', async () => {
    const { name, alone } = device();
    let full = false;
    const persistence = failing(alone, () => full && new StorageFullError('full'));
    const store = await tab({ name, persistence, retryAfter: 20 });
    await store.settled();
    full = true;
    store.edit('Rename', renameTeam('A'));
    await until(() => store.status.kind === 'storageFull');
    store.edit('Remove', removePlay(0));
    expect(store.status.kind).toBe('storageFull');
    await store.settled();
    const other = await tab({ name, persistence: alone });
    expect(other.playbook).toEqual(demoPlaybook);
    full = false;
    await until(() => store.status.kind === 'saved');
    const later = await tab({ name, persistence: alone });
    expect(later.playbook).toEqual(removePlay(0)(renameTeam('A')(demoPlaybook)));
  });

  test('a browser that says QuotaExceededError is full, and keeps all or none', async () => {
    const { indexedDB, name } = device();
    const storage = await indexedDbPersistence({ indexedDB }).open(name);
    const add = vi.spyOn(IDBObjectStore.prototype, 'add');
    add.mockImplementationOnce(function (this: IDBObjectStore, value) {
      return this.put(value);
    });
    add.mockImplementationOnce(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    await expect(storage.append([new Uint8Array(3), new Uint8Array(3)])).rejects.toBeInstanceOf(StorageFullError);
    add.mockRestore();
    expect(await storage.read()).toEqual([]);
    // A proxy cannot be cloned: a failure that is not of room stays what it is.
    await expect(storage.append([new Proxy(new Uint8Array(3), {})])).rejects.not.toBeInstanceOf(StorageFullError);
    expect(await storage.read()).toEqual([]);
    storage.close();
  });
});

/** A persistence whose writes fail with what `error` gives. */
function failing(persistence: Persistence, error: () => Error | false): Persistence {
  return {
    ...persistence,
    open: async (name): Promise<DocumentStorage> => {
      const storage = await persistence.open(name);
      return {
        ...storage,
        append: async (updates) => {
          const thrown = error();
          if (thrown !== false) throw thrown;
          return storage.append(updates);
        },
      };
    },
  };
}

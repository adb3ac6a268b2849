import {
  type DocumentStorage,
  type Persistence,
  type SetAside,
  StorageFullError,
  type StoredUpdate,
  type TabChannel,
  type Version,
  type VersionStorage,
} from './storage.ts';

/** What a browser offers; its own when left out. */
export interface BrowserStorage {
  readonly indexedDB?: IDBFactory | undefined;
  readonly BroadcastChannel?: typeof BroadcastChannel | undefined;
}

/**
 * Keeps documents in the browser's IndexedDB, one database a document: a log of Yjs updates, each written in the moment it is made, and the
 * versions beside it. Tabs hear of each other through a BroadcastChannel.
 */
export function indexedDbPersistence(browser: BrowserStorage = globalThis): Persistence {
  return {
    open: async (name) => {
      const factory = browser.indexedDB;
      if (factory === undefined) throw new Error('this browser has no IndexedDB');
      return openStorage(factory, databaseName(name));
    },
    connect: (name) => {
      const Channel = browser.BroadcastChannel;
      return Channel === undefined ? undefined : tabChannel(new Channel(databaseName(name)));
    },
  };
}

function databaseName(name: string): string {
  return `sliderule/${name}`;
}

/** Object stores of the database. `updates` holds `{ series, bytes }`; only those of the newest series are the document. */
const stores = { updates: 'updates', versions: 'versions', facts: 'facts' } as const;

interface KeptUpdate {
  readonly series: number;
  readonly bytes: unknown;
}

async function openStorage(factory: IDBFactory, name: string): Promise<DocumentStorage> {
  let database = await openDatabase(factory, name);
  let closed = false;
  /** A browser may close a database by itself, as when it clears space; then it is opened again, once a call. */
  const begin = async (names: readonly string[], mode: IDBTransactionMode): Promise<IDBTransaction> => {
    try {
      return database.transaction(names, mode);
    } catch (thrown) {
      if (closed) throw thrown;
      database = await openDatabase(factory, name);
      return database.transaction(names, mode);
    }
  };
  const inTransaction: Transact = async (mode, work) => {
    try {
      const transaction = await begin(Object.values(stores), mode);
      const finished = done(transaction);
      const [result] = await Promise.all([stopping(transaction, work), finished]);
      return result;
    } catch (thrown) {
      throw isFull(thrown) ? new StorageFullError('no room left', { cause: thrown }) : thrown;
    }
  };
  const series = await inTransaction('readonly', readSeries);
  return {
    ...updateLog(inTransaction, series),
    versions: versionStorage(inTransaction),
    close: () => {
      closed = true;
      database.close();
    },
  };
}

type Transact = <T>(mode: IDBTransactionMode, work: (transaction: IDBTransaction) => Promise<T>) => Promise<T>;

function updateLog(transact: Transact, openedSeries: number): Omit<DocumentStorage, 'versions' | 'close'> {
  let series = openedSeries;
  return {
    read: () => transact('readonly', (t) => updatesOf(t, series)),
    append: (updates) =>
      transact('readwrite', async (t) => {
        const store = t.objectStore(stores.updates);
        // All are asked for before any is waited for: one that throws at once must leave no promise that nobody hears.
        const requests = updates.map((bytes) => store.add({ series, bytes }));
        return Promise.all(requests.map(answer));
      }),
    squeeze: (bytes, keys) =>
      transact('readwrite', async (t) => {
        const store = t.objectStore(stores.updates);
        for (const key of keys) store.delete(key);
        return answer(store.add({ series, bytes }));
      }),
    startBeside: () =>
      transact('readwrite', async (t) => {
        // Read anew: another tab may have been here first.
        series = (await readSeries(t)) + 1;
        t.objectStore(stores.facts).put(series, 'series');
      }),
    setAside: () =>
      transact('readonly', async (t) => {
        const aside = new Map<number, unknown[]>();
        for (const { value } of await entriesOf<KeptUpdate>(t.objectStore(stores.updates))) {
          if (value.series >= series) continue;
          aside.set(value.series, [...(aside.get(value.series) ?? []), value.bytes]);
        }
        return [...aside].map(([id, updates]): SetAside => ({ id, updates }));
      }),
    dropSetAside: (id) =>
      transact('readwrite', async (t) => {
        const store = t.objectStore(stores.updates);
        if (id < series) for (const { key } of await updatesOf(t, id)) store.delete(key);
      }),
  };
}

async function readSeries(transaction: IDBTransaction): Promise<number> {
  const kept: unknown = await answer(transaction.objectStore(stores.facts).get('series'));
  return typeof kept === 'number' ? kept : 0;
}

async function updatesOf(transaction: IDBTransaction, series: number): Promise<readonly StoredUpdate[]> {
  const entries = await entriesOf<KeptUpdate>(transaction.objectStore(stores.updates));
  return entries.filter(({ value }) => value.series === series).map(({ key, value }) => ({ key, update: value.bytes }));
}

function versionStorage(transact: Transact): VersionStorage {
  return {
    list: () => transact('readonly', allVersions),
    add: (version, stays) =>
      transact('readwrite', async (t) => {
        const store = t.objectStore(stores.versions);
        const id = Number(await answer(store.add(version)));
        const all = await allVersions(t);
        const staying = new Set(
          stays(all.map((one) => (one.id === id ? { ...version, id } : one))).map((one) => one.id),
        );
        for (const one of all) if (!staying.has(one.id)) store.delete(one.id);
      }),
  };
}

async function allVersions(transaction: IDBTransaction): Promise<readonly Version[]> {
  const entries = await entriesOf<Omit<Version, 'id'>>(transaction.objectStore(stores.versions));
  return entries.map(({ key, value }) => ({ ...value, id: Number(key) })).reverse();
}

async function entriesOf<T>(
  store: IDBObjectStore,
): Promise<readonly { readonly key: IDBValidKey; readonly value: T }[]> {
  const [keys, values] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
  return keys.map((key, index) => ({ key, value: values[index] as T }));
}

function openDatabase(factory: IDBFactory, name: string): Promise<IDBDatabase> {
  const request = factory.open(name, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore(stores.updates, { autoIncrement: true });
    request.result.createObjectStore(stores.versions, { autoIncrement: true });
    request.result.createObjectStore(stores.facts);
  };
  return answer(request).then((database) => {
    // A tab with a newer program must not wait for this one.
    database.onversionchange = () => database.close();
    return database;
  });
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function done(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('storing was stopped'));
  });
}

/** What the work gives; what it throws undoes all that it wrote. */
async function stopping<T>(transaction: IDBTransaction, work: (t: IDBTransaction) => Promise<T>): Promise<T> {
  try {
    return await work(transaction);
  } catch (thrown) {
    try {
      transaction.abort();
    } catch {
      // It has ended by itself already.
    }
    throw thrown;
  }
}

function isFull(thrown: unknown): boolean {
  return thrown instanceof Object && 'name' in thrown && thrown.name === 'QuotaExceededError';
}

function tabChannel(channel: BroadcastChannel): TabChannel {
  return {
    post: (message) => channel.postMessage(message),
    listen: (hear) => {
      channel.onmessage = (event) => hear(event.data);
    },
    close: () => channel.close(),
  };
}

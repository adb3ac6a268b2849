import type { CameraMarks } from './camera-marks.ts';

/** What is kept of a film so that it need not be marked twice: never anything of its pictures. */
export interface FilmMemory {
  /** Marks of the camera. */
  readonly views: readonly CameraMarks[];
  /** Where each man-up begins, s. */
  readonly begins: Readonly<Record<string, number>>;
  /** Whose film it is, and what its file was called. */
  readonly opponent: string;
  readonly name: string;
  /** When it was kept, milliseconds since 1970. */
  readonly at: number;
}

/** Films that are remembered; the one that was marked longest ago is forgotten first. */
const mostFilms = 60;
const databaseName = 'sliderule-films';
const storeName = 'films';

/** What a film is told apart by: the file itself is never read for it. */
export function filmKey({ name, size, lastModified }: Pick<File, 'name' | 'size' | 'lastModified'>): string {
  return `${name} ${size} ${lastModified}`;
}

/** What is known of a film from another day; undefined for a film that is new here, or where nothing can be kept. */
export async function recallFilm(key: string, factory = globalThis.indexedDB): Promise<FilmMemory | undefined> {
  return inStore(factory, 'readonly', async (store) => memoryOf(await answer(store.get(key))));
}

/** Keeps what was marked of a film in this browser, beside the playbook; where there is no room, nothing. */
export async function rememberFilm(key: string, memory: FilmMemory, factory = globalThis.indexedDB): Promise<void> {
  await inStore(factory, 'readwrite', async (store) => {
    await answer(store.put(memory, key));
    const [keys, kept] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
    const oldest = keys
      .map((one, at) => ({ one, at: memoryOf(kept[at])?.at ?? 0 }))
      .sort((one, other) => other.at - one.at);
    for (const { one } of oldest.slice(mostFilms)) store.delete(one);
  });
}

/** Names of the films that were marked of an opponent, the last first. */
export async function filmsOf(opponent: string, factory = globalThis.indexedDB): Promise<readonly string[]> {
  const kept = await inStore(factory, 'readonly', (store) => answer(store.getAll()));
  const films = (kept ?? []).flatMap((one) => memoryOf(one) ?? []).filter((one) => one.opponent === opponent);
  return [...new Set(films.sort((one, other) => other.at - one.at).map(({ name }) => name))];
}

/** Does the work, or gives undefined where the browser keeps nothing: without it a film is marked once more, and nothing else is lost. */
async function inStore<T>(
  factory: IDBFactory | undefined,
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => Promise<T>,
): Promise<T | undefined> {
  if (factory === undefined) return undefined;
  try {
    const request = factory.open(databaseName, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(storeName);
    const database = await answer(request);
    try {
      return await work(database.transaction(storeName, mode).objectStore(storeName));
    } finally {
      // It closes once the transaction has ended.
      database.close();
    }
  } catch {
    return undefined;
  }
}

/** What was kept, if it is what it should be: storage may be damaged. */
function memoryOf(kept: unknown): FilmMemory | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { views, begins } = kept as Partial<FilmMemory>;
  const isWhole =
    Array.isArray(views) &&
    views.every(
      (view: Partial<CameraMarks>) =>
        Number.isFinite(view.time) && Array.isArray(view.places) && Array.isArray(view.lines),
    ) &&
    typeof begins === 'object';
  return isWhole ? (kept as FilmMemory) : undefined;
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

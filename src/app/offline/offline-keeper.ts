/** How far the workbench is kept in this browser, and whether a newer one is at hand. */
export interface OfflineState {
  /** `kept`: it opens without a network. `impossible`: this browser keeps nothing for us (private window, storage off). */
  readonly keeping: 'not-yet' | 'kept' | 'impossible';
  /**
   * `ready`: a new version waits to be asked for. `taken-elsewhere`: another tab asked for it, and this one is the old version until it is
   * loaded again.
   */
  readonly update: 'none' | 'ready' | 'taken-elsewhere';
}

/** What tells the page about versions, and takes its wish for a new one. Never reloads the page unasked. */
export interface OfflineKeeper {
  readonly state: () => OfflineState;
  /** Calls back after every change of the state; returns what ends that. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Has the workbench kept, and begins to look for newer versions. Once, at the start of the page. */
  readonly start: () => Promise<void>;
  /** Asks once more whether there is a new version; without a network it does nothing. */
  readonly look: () => Promise<void>;
  /** Takes the new version that is ready, and loads the page again when it runs. Does nothing when none is ready. */
  readonly applyUpdate: () => void;
}

/** What the keeper needs of the browser; tests bring their own. */
export interface OfflineBrowser {
  /** Undefined where the browser knows no service workers, or does not allow them here. */
  readonly container: WorkerContainer | undefined;
  readonly workerAddress: string;
  readonly reload: () => void;
}

/** The part of a ServiceWorkerContainer that is used. */
export interface WorkerContainer extends Pick<EventTarget, 'addEventListener'> {
  readonly register: (address: string, options: { readonly updateViaCache: 'none' }) => Promise<WorkerRegistration>;
}

/** The part of a ServiceWorkerRegistration that is used. */
export interface WorkerRegistration extends Pick<EventTarget, 'addEventListener'> {
  readonly active: WorkerVersion | null;
  readonly installing: WorkerVersion | null;
  readonly waiting: WorkerVersion | null;
  readonly update: () => Promise<unknown>;
}

/** The part of a ServiceWorker that is used: one version of the workbench. */
export interface WorkerVersion extends Pick<EventTarget, 'addEventListener'> {
  readonly state: string;
  readonly postMessage: (message: { readonly type: 'SKIP_WAITING' }) => void;
}

export function createOfflineKeeper({ container, workerAddress, reload }: OfflineBrowser): OfflineKeeper {
  const listeners = new Set<() => void>();
  let state: OfflineState = { keeping: 'not-yet', update: 'none' };
  let registration: WorkerRegistration | undefined;
  let asked = false;

  const change = (part: Partial<OfflineState>) => {
    state = { ...state, ...part };
    for (const listener of listeners) listener();
  };

  const follow = (version: WorkerVersion | null) => {
    version?.addEventListener('statechange', () => notice(version));
    if (version !== null) notice(version);
  };

  const notice = ({ state: stage }: WorkerVersion) => {
    // The first version of all has nothing to wait for, and is no news.
    if (stage === 'installed' && registration?.active) change({ update: 'ready' });
    if (stage === 'activated') change({ keeping: 'kept' });
    if (stage === 'activated' && asked) reload();
  };

  const start = async () => {
    try {
      if (container === undefined) throw new TypeError('no service workers');
      // The script that lists the files of a version is never taken from a cache: it is how a new version is found.
      registration = await container.register(workerAddress, { updateViaCache: 'none' });
    } catch {
      change({ keeping: 'impossible' });
      return;
    }
    const kept = registration;
    container.addEventListener('controllerchange', () => {
      if (!asked) change({ update: 'taken-elsewhere' });
    });
    kept.addEventListener('updatefound', () => follow(kept.installing));
    for (const version of [kept.active, kept.waiting, kept.installing]) follow(version);
    // The browser looks by itself too, but only when the page has nothing else to load, which takes its time.
    if (kept.active) await look();
  };

  const look = async () => {
    await registration?.update().catch(() => undefined);
  };

  const applyUpdate = () => {
    const version = registration?.waiting;
    if (!version) return;
    asked = true;
    version.postMessage({ type: 'SKIP_WAITING' });
  };

  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    start,
    look,
    applyUpdate,
  };
}

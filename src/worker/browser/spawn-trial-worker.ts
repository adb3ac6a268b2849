import type { Endpoint } from 'comlink';

/** A thread as the pool knows it: somewhere to send messages to, and an end. A module worker is one. */
export interface TrialThread extends Endpoint {
  terminate(): void;
}

/** Starts a thread of the page. The bundler builds the script that is named here. */
export function spawnTrialWorker(): TrialThread {
  return new Worker(new URL('./trial-worker.ts', import.meta.url), { type: 'module', name: 'trials' });
}

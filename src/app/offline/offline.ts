import { useSyncExternalStore } from 'react';
import { createOfflineKeeper, type OfflineState } from './offline-keeper.ts';

/** The keeper of this page. Under `npm run dev` nothing is kept, so that every change shows at once. */
export const offline = createOfflineKeeper({
  container: import.meta.env.PROD && 'serviceWorker' in navigator ? navigator.serviceWorker : undefined,
  workerAddress: './sw.js',
  reload: () => window.location.reload(),
});

/** Has the workbench kept for use without a network. A tab that was away for long looks for a new version when one comes back to it. */
export function keepOffline(): void {
  void offline.start();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void offline.look();
  });
}

/** Whether the workbench opens without a network, and whether a new version is ready (`offline.applyUpdate()` takes it). */
export function useOfflineState(): OfflineState {
  return useSyncExternalStore(offline.subscribe, offline.state);
}

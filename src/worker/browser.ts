export { type BrowserPoolOptions, createBrowserPool } from './browser/create-browser-pool.ts';
export { spawnTrialWorker, type TrialThread } from './browser/spawn-trial-worker.ts';

export { createTrialPool, defaultThreads, type TrialPoolOptions } from './node/create-trial-pool.ts';

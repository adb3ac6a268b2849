import { expose } from 'comlink';
import { createTrialWorker } from './create-trial-worker.ts';

// First and at once: messages that come before anybody listens are lost, so nothing here may wait.
expose(createTrialWorker());

import { expose } from 'comlink';
import { createTrialWorker } from './create-trial-worker.ts';
import type { TrialThread } from './spawn-trial-worker.ts';

/** A thread of a page that is none: the worker's own code behind a pair of ports, so that messages are copied as between threads. */
export function spawnInProcess(worker = createTrialWorker()): TrialThread {
  const { port1, port2 } = new MessageChannel();
  expose(worker, port1);
  port1.start();
  port2.start();
  return Object.assign(port2, {
    terminate: () => {
      port1.close();
      port2.close();
    },
  });
}

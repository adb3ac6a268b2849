import { setMaxListeners } from 'node:events';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Tinypool } from 'tinypool';
import type { WorkerAnswer, WorkerRequest } from '../protocol.ts';
import { type AnswerOptions, checkThreads, type StopSignal, type TrialPool } from '../trial-pool.ts';

export interface TrialPoolOptions {
  /** Worker threads, at least 1. */
  readonly threads: number;
  /** The bundled worker (dist/trial-worker.js). */
  readonly worker: URL;
}

/** One thread a core, because a trial waits for nothing. */
export function defaultThreads(): number {
  return Math.max(1, availableParallelism());
}

/**
 * Starts a pool; threads boot when the first request arrives. Close it, or the process does not end.
 * An abort drops running batches with their threads. Priorities are left aside: who asks from the shell waits for all of it.
 * Throws a RangeError when `threads` is no whole number from 1 to 256.
 */
export function createTrialPool({ threads, worker }: TrialPoolOptions): TrialPool {
  checkThreads(threads);
  let pool: Tinypool | undefined;
  let closed: Promise<void> | undefined;
  const start = (): Tinypool => {
    pool ??= new Tinypool({
      filename: fileURLToPath(worker),
      minThreads: threads,
      maxThreads: threads,
      // Handed one at a time: a thread that had two would finish the second long after the others are idle.
      concurrentTasksPerWorker: 1,
    });
    return pool;
  };
  return {
    threads,
    answer: (requests, options = {}) => answerAll(start(), requests, options),
    close: () => {
      closed ??= pool?.destroy() ?? Promise.resolve();
      return closed;
    },
  };
}

/** Requests handed to a thread ahead of its need, so that it never waits, and no more: each carries a whole playbook. */
const requestsAhead = 2;

async function answerAll(
  pool: Tinypool,
  requests: readonly WorkerRequest[],
  { signal, onAnswer }: AnswerOptions,
): Promise<readonly WorkerAnswer[]> {
  signal?.throwIfAborted();
  const lanes = Math.min(requests.length, pool.options.maxThreads * requestsAhead);
  expectListeners(signal, lanes + 10);
  const answers = new Array<WorkerAnswer>(requests.length);
  const waiting = requests.entries();
  const work = async (): Promise<void> => {
    for (const [index, request] of waiting) {
      answers[index] = await pool.run(request, signal === undefined ? {} : { signal });
      onAnswer?.();
    }
  };
  const running = Array.from({ length: lanes }, work);
  try {
    await Promise.all(running);
  } catch (error) {
    // The others fail for the same reason; a rejection that nobody waits for would end the process.
    await Promise.allSettled(running);
    signal?.throwIfAborted();
    throw error;
  }
  return answers;
}

/** Every request under way listens to the signal, which is no leak that Node should warn of. */
function expectListeners(signal: StopSignal | undefined, most: number): void {
  if (signal instanceof EventTarget) setMaxListeners(most, signal);
}

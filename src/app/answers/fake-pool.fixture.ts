import { answerRequest, type TrialPool, type WorkerAnswer, type WorkerRequest } from '../../worker/index.ts';

/** A pool without threads: answers one request after another, most urgent first, each in a turn of its own. */
export interface FakePool extends TrialPool {
  /** What was answered so far, in the order of the answers. */
  readonly answered: WorkerRequest[];
  /** Fails every request from now on. */
  breakDown(): void;
}

/** An answer depends on its request alone, and most tests ask the same: each is simulated once. */
const known = new Map<string, WorkerAnswer>();

function answerOnce(request: WorkerRequest): WorkerAnswer {
  const key = JSON.stringify(request);
  const answer = known.get(key) ?? answerRequest(request);
  known.set(key, answer);
  return answer;
}

interface Job {
  readonly request: WorkerRequest;
  readonly priority: number;
  readonly isWanted: () => boolean;
  readonly done: (answer: WorkerAnswer) => void;
  readonly fail: (error: Error) => void;
}

/** `threads` is what it says of itself; `lateFirst` answers the requests of one call from the last to the first, as fast threads may. */
export function createFakePool({ threads = 2, lateFirst = false } = {}): FakePool {
  const jobs: Job[] = [];
  const answered: WorkerRequest[] = [];
  let isBroken = false;
  let isTurning = false;
  const turn = (): void => {
    const best = Math.max(...jobs.map(({ priority }) => priority));
    const [job] = jobs.splice(
      lateFirst
        ? jobs.findLastIndex(({ priority }) => priority === best)
        : jobs.findIndex(({ priority }) => priority === best),
      1,
    );
    if (job === undefined) {
      isTurning = false;
      return;
    }
    if (job.isWanted()) {
      if (isBroken) job.fail(new Error('a thread of trials broke'));
      else {
        answered.push(job.request);
        // A copy, as from another thread.
        job.done(structuredClone(answerOnce(job.request)));
      }
    }
    setImmediate(turn);
  };
  return {
    threads,
    answered,
    breakDown: () => {
      isBroken = true;
    },
    answer: (requests, { signal, priority = 0, onAnswer } = {}) =>
      new Promise((resolve, reject) => {
        signal?.throwIfAborted();
        const stop = (): void => reject(signal?.reason);
        signal?.addEventListener('abort', stop);
        const answers = new Array<WorkerAnswer>(requests.length);
        let missing = requests.length;
        if (missing === 0) {
          signal?.removeEventListener('abort', stop);
          resolve(answers);
        }
        for (const [at, request] of requests.entries()) {
          jobs.push({
            request,
            priority,
            isWanted: () => signal?.aborted !== true,
            done: (answer) => {
              answers[at] = answer;
              missing -= 1;
              onAnswer?.();
              if (missing > 0) return;
              signal?.removeEventListener('abort', stop);
              resolve(answers);
            },
            fail: reject,
          });
        }
        if (isTurning) return;
        isTurning = true;
        setImmediate(turn);
      }),
    close: async () => {},
  };
}

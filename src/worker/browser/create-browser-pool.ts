import { type Remote, wrap } from 'comlink';
import type { WorkerAnswer, WorkerRequest } from '../protocol.ts';
import { type AnswerOptions, checkThreads, type TrialPool } from '../trial-pool.ts';
import { type ClaimBoard, createClaimBoard } from './claim-board.ts';
import type { Claim, SentRequest, TrialWorkerApi } from './sent-request.ts';
import { spawnTrialWorker, type TrialThread } from './spawn-trial-worker.ts';

export interface BrowserPoolOptions {
  /** Worker threads, at least 1: one a core, because a trial waits for nothing. */
  readonly threads: number;
  /** Starts a thread; a module worker when absent. */
  readonly spawn?: () => TrialThread;
}

/**
 * Starts a pool of threads of the page, which boot at once (about 100 ms).
 *
 * An abort leaves the threads alone: what waits is dropped and the answer of what runs is ignored, so requests should be small.
 * When a thread breaks, what it was asked rejects, and another takes its place.
 * Throws a RangeError when `threads` is no whole number from 1 to 256.
 */
export function createBrowserPool({ threads, spawn = spawnTrialWorker }: BrowserPoolOptions): TrialPool {
  checkThreads(threads);
  const waiting: Job[] = [];
  const numbers = createDocumentNumbers();
  const claims = createClaimBoard();
  // A place is empty from when its thread broke until something waits: a script that never loads must not be tried for ever.
  const crew: (Thread | null)[] = [];
  let closed = false;
  const start = (place: number): Thread => {
    const thread = startThread(spawn(), () => {
      crew[place] = null;
      handOut();
    });
    crew[place] = thread;
    return thread;
  };
  const handOut = (): void => {
    while (waiting.length > 0) {
      const place = idlestOf(crew);
      const thread = crew[place] ?? start(place);
      if (thread.running.size >= requestsAhead) return;
      const job = waiting.shift()!;
      void run(thread, job, numbers.of(job.request.setup.document)).then(handOut);
    }
  };
  for (let place = 0; place < threads; place++) start(place);
  return {
    threads,
    answer: (requests, options = {}) => {
      if (closed) return Promise.reject(new Error('the pool is closed'));
      return answerAll({ waiting, claims, handOut }, requests, options);
    },
    close: async () => {
      closed = true;
      const gone = new Error('the pool is closed');
      for (const job of waiting.splice(0)) job.fail(gone);
      for (const thread of crew.splice(0)) if (thread !== null) stopThread(thread, gone);
    },
  };
}

/**
 * Handed to a thread ahead of its need: it goes on while the page is busy drawing, and two threads have the first guess of nine schemes in
 * hand. What is not wanted any more by then is struck from the claim board.
 */
const requestsAhead = 5;

interface Job {
  readonly request: WorkerRequest;
  readonly priority: number;
  readonly claim: Claim | null;
  readonly done: (answer: WorkerAnswer) => void;
  readonly fail: (error: unknown) => void;
}

interface Thread {
  readonly endpoint: TrialThread;
  readonly remote: Remote<TrialWorkerApi>;
  readonly running: Set<Job>;
  /** Numbers of the documents that it has, the oldest first. */
  readonly documents: Set<number>;
}

/** The place with the least to do. */
function idlestOf(crew: readonly (Thread | null)[]): number {
  const load = crew.map((thread) => thread?.running.size ?? 0);
  return load.indexOf(Math.min(...load));
}

/** Where requests wait. */
interface Desk {
  readonly waiting: Job[];
  readonly claims: ClaimBoard;
  readonly handOut: () => void;
}

function answerAll(
  { waiting, claims, handOut }: Desk,
  requests: readonly WorkerRequest[],
  { signal, onAnswer, priority = 0 }: AnswerOptions,
): Promise<readonly WorkerAnswer[]> {
  return new Promise((resolve, reject) => {
    signal?.throwIfAborted();
    const answers = new Array<WorkerAnswer>(requests.length);
    let missing = requests.length;
    if (missing === 0) {
      resolve(answers);
      return;
    }
    const jobs = new Set<Job>();
    const claim = claims.claim();
    const leave = (): void => {
      signal?.removeEventListener('abort', stop);
      claims.release(claim);
    };
    const giveUp = (error: unknown): void => {
      leave();
      for (let at = waiting.length - 1; at >= 0; at--) if (jobs.has(waiting[at]!)) waiting.splice(at, 1);
      reject(error);
    };
    const stop = (): void => giveUp(signal?.reason);
    signal?.addEventListener('abort', stop);
    for (const [index, request] of requests.entries()) {
      const done = (answer: WorkerAnswer): void => {
        answers[index] = answer;
        missing -= 1;
        if (signal?.aborted !== true) onAnswer?.();
        if (missing > 0) return;
        leave();
        resolve(answers);
      };
      const job = { request, priority, claim, done, fail: giveUp };
      jobs.add(job);
      line(waiting, job);
    }
    handOut();
  });
}

/** Behind the last that is at least as urgent: most are asked in the order of their urgency, so the search is short. */
function line(waiting: Job[], job: Job): void {
  let at = waiting.length;
  while (at > 0 && waiting[at - 1]!.priority < job.priority) at--;
  waiting.splice(at, 0, job);
}

async function run(thread: Thread, job: Job, document: number): Promise<void> {
  thread.running.add(job);
  try {
    const answer = await thread.remote.answer(sentRequest(thread, job, document));
    if (answer !== null) job.done(answer);
  } catch (error) {
    job.fail(error);
  }
  thread.running.delete(job);
}

/** Documents that a thread keeps: those before an edit and after it, and some for what is asked beside. */
const keptDocuments = 8;

function sentRequest({ documents }: Thread, { request, claim }: Job, document: number): SentRequest {
  const { document: text, ...setup } = request.setup;
  const sent = { request: { ...request, setup: { document: '', ...setup } }, document, claim };
  if (documents.has(document)) return { ...sent, text: null, forget: null };
  const [oldest = null] = documents;
  const forget = documents.size >= keptDocuments ? oldest : null;
  if (forget !== null) documents.delete(forget);
  documents.add(document);
  return { ...sent, text, forget };
}

function startThread(endpoint: TrialThread, onBroken: () => void): Thread {
  const thread: Thread = { endpoint, remote: wrap(endpoint), running: new Set(), documents: new Set() };
  // A script that cannot be loaded or that breaks answers nothing more.
  endpoint.addEventListener('error', () => {
    stopThread(thread, new Error('a thread of trials broke'));
    onBroken();
  });
  return thread;
}

function stopThread({ endpoint, running }: Thread, reason: Error): void {
  endpoint.terminate();
  for (const job of running) job.fail(reason);
  running.clear();
}

/** Names texts by numbers. The texts of a page's last minutes are few and small. */
function createDocumentNumbers(): { of(text: string): number } {
  const numbers = new Map<string, number>();
  let next = 0;
  return {
    of: (text) => {
      const known = numbers.get(text);
      if (known !== undefined) return known;
      if (numbers.size >= 4 * keptDocuments) numbers.delete(numbers.keys().next().value ?? '');
      next += 1;
      numbers.set(text, next);
      return next;
    },
  };
}

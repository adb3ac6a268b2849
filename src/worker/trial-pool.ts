import type { WorkerAnswer, WorkerRequest } from './protocol.ts';

/** What is used of an AbortSignal. Written out, because what Node and browsers share knows the types of neither. */
export interface StopSignal {
  readonly aborted: boolean;
  readonly reason: unknown;
  throwIfAborted(): void;
  addEventListener(type: 'abort', listener: () => void): void;
  removeEventListener(type: 'abort', listener: () => void): void;
}

export interface AnswerOptions {
  /** Ends the work: what has not begun is dropped, what runs is not waited for, and `answer` rejects with the signal's reason. */
  readonly signal?: StopSignal;
  /** Called after each answer, in whatever order they come in. */
  readonly onAnswer?: () => void;
  /** Of the requests that wait the one with the highest number goes first, then the one that was asked first. 0 when absent. */
  readonly priority?: number;
}

/** Threads that answer requests. The order of answers is that of the requests, whoever was ready first. */
export interface TrialPool {
  readonly threads: number;
  answer(requests: readonly WorkerRequest[], options?: AnswerOptions): Promise<readonly WorkerAnswer[]>;
  /** Ends the threads. Safe to call twice. */
  close(): Promise<void>;
}

/** Throws a RangeError when `threads` is no whole number from 1 to 256. */
export function checkThreads(threads: number): void {
  if (Number.isInteger(threads) && threads >= 1 && threads <= 256) return;
  throw new RangeError(`threads must be a whole number from 1 to 256, not ${threads}`);
}

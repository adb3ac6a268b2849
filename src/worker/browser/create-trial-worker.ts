import { answerTrials } from '../answer-trials.ts';
import { isStudy, type WorkerAnswer, type WorkerRequest } from '../protocol.ts';
import type { TrialWorkerApi } from './sent-request.ts';

/** What runs in a thread of the page: answers requests, with the documents that were sent to it before. */
export function createTrialWorker(): TrialWorkerApi {
  const texts = new Map<number, string>();
  return {
    answer: ({ request, document: id, text, forget, claim }) => {
      if (forget !== null) texts.delete(forget);
      if (text !== null) texts.set(id, text);
      if (claim !== null && Atomics.load(claim.board, claim.place) !== claim.ticket) return null;
      const document = texts.get(id);
      if (document === undefined) throw new RangeError(`unknown document: ${id}`);
      return answerInPage({ ...request, setup: { ...request.setup, document } });
    },
  };
}

// What decisions need is loaded with the first question about one: a play on the screen can do without it.
function answerInPage(request: WorkerRequest): WorkerAnswer | Promise<WorkerAnswer> {
  if (!isStudy(request)) return answerTrials(request);
  return import('../answer-study.ts').then(({ answerStudy }) => answerStudy(request));
}

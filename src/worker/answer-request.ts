import { answerStudy } from './answer-study.ts';
import { answerTrials } from './answer-trials.ts';
import { isStudy, type WorkerAnswer, type WorkerRequest } from './protocol.ts';

/** Answers one request. Pure but for what it remembers between requests, which changes no answer. */
export function answerRequest(request: WorkerRequest): WorkerAnswer {
  return isStudy(request) ? answerStudy(request) : answerTrials(request);
}

import type { WorkerAnswer, WorkerRequest } from '../protocol.ts';

/**
 * A request on its way to a thread of a page. A drag sends hundreds that differ from each other in a few numbers, so the document
 * goes along once and is named from then on. What the thread keeps is the sender's to say: he knows what will be asked.
 */
export interface SentRequest {
  /** The request, with no text in its setup. */
  readonly request: WorkerRequest;
  readonly document: number;
  /** The document's text, when this thread does not have it. */
  readonly text: string | null;
  /** A document that nobody will ask about again; null when there is none to forget. */
  readonly forget: number | null;
}

/** What a thread does. */
export interface TrialWorkerApi {
  answer(sent: SentRequest): WorkerAnswer;
}

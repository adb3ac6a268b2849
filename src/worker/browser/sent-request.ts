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
  /** Says whether the answer is still wanted when its turn comes; null where a page may not share memory with its threads. */
  readonly claim: Claim | null;
}

/** The request is wanted as long as the board shows the ticket in its place. */
export interface Claim {
  readonly board: Int32Array;
  readonly place: number;
  readonly ticket: number;
}

/** What a thread does. */
export interface TrialWorkerApi {
  /** `null` when the answer is not wanted any more: then nothing was simulated. */
  answer(sent: SentRequest): WorkerAnswer | null | Promise<WorkerAnswer>;
}

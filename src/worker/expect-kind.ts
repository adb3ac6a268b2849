import type { WorkerAnswer } from './protocol.ts';

/** A setup that a worker refused, with the worker's plain sentence. */
export class RefusedSetup extends Error {
  constructor(reason: string) {
    super(reason);
    this.name = 'RefusedSetup';
  }
}

/** An answer to a request of this kind. Throws a `RefusedSetup` when the worker refused, a TypeError for an answer to something else. */
export function expectKind<K extends WorkerAnswer['kind']>(
  answer: WorkerAnswer,
  kind: K,
): Extract<WorkerAnswer, { kind: K }> {
  if (answer.kind === 'refused') throw new RefusedSetup(answer.reason);
  if (answer.kind !== kind) throw new TypeError(`expected ${kind}, not ${answer.kind}`);
  return answer as Extract<WorkerAnswer, { kind: K }>;
}

import type { ReadExample, Trace } from '../../engine/index.ts';
import { type TraceNames, traceNames } from '../../render/index.ts';
import type { StopSignal, TrialPool, TrialSetup } from '../../worker/index.ts';
import { urgency } from '../answers/answer-plan.ts';

/** The trial of an example, to be drawn. */
export interface ExampleTrace {
  readonly trace: Trace;
  readonly names: TraceNames;
}

/** Before the search that may still be going on: one trial of each read, for which a coach waits. */
const priority = urgency.coarse + 1;

/** Traces that were shown once. What is found anew has examples of its own, so that none of these is ever old. */
const known = new WeakMap<ReadExample, ExampleTrace>();

/** The trace of an example that has been shown before. */
export function knownTrace(example: ReadExample): ExampleTrace | undefined {
  return known.get(example);
}

/** Plays the trial of an example. Rejects with an Error in plain words when that does not work, and with the signal's reason once it is given. */
export async function askExampleTrace(
  pool: TrialPool,
  setup: TrialSetup,
  example: ReadExample,
  signal: StopSignal,
): Promise<ExampleTrace> {
  const { forced } = example;
  const request = { kind: 'trace', setup, of: 'chance', trial: forced.trial, forced } as const;
  const [answer] = await pool.answer([request], { signal, priority });
  if (answer?.kind === 'refused') throw new Error(answer.reason);
  if (answer?.kind !== 'trace' || answer.of !== 'chance') throw new TypeError('another answer than a trial');
  const shown = { trace: answer.trace, names: traceNames(answer.cast) };
  known.set(example, shown);
  return shown;
}

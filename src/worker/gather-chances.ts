import type { SchemeChances } from '../engine/index.ts';
import type { TrialRange, TrialSetup, WorkerAnswer, WorkerRequest } from './protocol.ts';

/** A setup, and how likely it is to be met. */
export interface WeighedSetup {
  readonly setup: TrialSetup;
  readonly weight: number;
}

/** Puts requests to the threads; the answers come in their order. */
export type AskThreads = (requests: readonly WorkerRequest[]) => Promise<readonly WorkerAnswer[]>;

/** What is asked about some trials of one setup, and what chances an answer holds. */
export interface GatherQuestion<Chance> {
  readonly request: (setup: TrialSetup, range: TrialRange) => WorkerRequest;
  readonly chances: (answer: WorkerAnswer) => readonly Chance[];
}

/** The chances of so many trials from `first` on against every setup, in the order of the setups. */
export async function gatherChances<Chance>(
  ask: AskThreads,
  setups: readonly WeighedSetup[],
  { first, trials }: { readonly first: number; readonly trials: number },
  { request, chances }: GatherQuestion<Chance>,
): Promise<readonly SchemeChances<Chance>[]> {
  const ranges = gatherRanges(first, trials);
  const answers = await ask(setups.flatMap(({ setup }) => ranges.map((range) => request(setup, range))));
  return setups.map(({ setup, weight }, at) => {
    const own = answers.slice(at * ranges.length, (at + 1) * ranges.length);
    return { scheme: setup.scheme, weight, trials, chances: own.flatMap(chances) };
  });
}

/** Man-ups in one request: a second of work at most. */
const batch = 20;

/** So many trials from `first` on as they are shared out, a request each. */
export function gatherRanges(first: number, trials: number): readonly TrialRange[] {
  return Array.from({ length: Math.ceil(trials / batch) }, (_, at) => ({
    from: first + at * batch,
    to: first + Math.min(trials, (at + 1) * batch),
  }));
}

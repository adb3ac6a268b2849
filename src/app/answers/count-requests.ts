import type { MeasureOptions, StopSignal } from '../../worker/index.ts';

/** Requests that are answered, of all that are planned so far: 1 at least. */
export interface RequestCount {
  readonly answered: number;
  readonly planned: number;
}

/** Options of a measurement that tell how far it is, at once and after each step; nothing more once the signal is given. */
export function countRequests(
  signal: StopSignal,
  tell: (count: RequestCount) => void,
): { readonly options: MeasureOptions; readonly count: () => RequestCount } {
  let [answered, planned] = [0, 0];
  const count = (): RequestCount => ({ answered, planned: Math.max(1, planned) });
  const progress = (): void => {
    if (!signal.aborted) tell(count());
  };
  progress();
  const options: MeasureOptions = {
    signal,
    onPlan: (requests) => {
      planned += requests;
      progress();
    },
    onAnswer: () => {
      answered += 1;
      progress();
    },
  };
  return { options, count };
}

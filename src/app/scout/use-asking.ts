import { useEffect, useRef, useState } from 'react';
import type { MeasureOptions, TrialPool } from '../../worker/index.ts';
import { countRequests } from '../answers/count-requests.ts';
import { useDesk } from '../shell/desk.tsx';

/** What a question to the threads is at. `text` stands for all that was asked. */
export type Asking<Found> =
  | { readonly kind: 'idle' | 'stopped' }
  | { readonly kind: 'asking'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'found'; readonly found: Found; readonly text: string }
  | { readonly kind: 'failed'; readonly reason: string };

export interface Asked<Found> {
  readonly state: Asking<Found>;
  readonly find: () => void;
  readonly stop: () => void;
}

/** A question that is put when the coach wants it, and dropped when he leaves the place. */
export function useAsking<Found>(
  text: string,
  run: (pool: TrialPool, options: MeasureOptions) => Promise<Found>,
): Asked<Found> {
  const { threads } = useDesk();
  const [state, setState] = useState<Asking<Found>>({ kind: 'idle' });
  const running = useRef<AbortController>(undefined);
  useEffect(() => () => running.current?.abort(), []);
  const find = (): void => {
    running.current?.abort();
    const controller = new AbortController();
    running.current = controller;
    const { signal } = controller;
    const say = (next: Asking<Found>): void => {
      if (!signal.aborted) setState(next);
    };
    const { options } = countRequests(signal, (count) => say({ kind: 'asking', ...count }));
    run(threads, options).then(
      (found) => say({ kind: 'found', found, text }),
      (error: unknown) => say({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) }),
    );
  };
  const stop = (): void => {
    running.current?.abort();
    setState({ kind: 'stopped' });
  };
  return { state, find, stop };
}

/** What is said of it, once for each state. */
export function askingWords({ kind, ...state }: Asking<unknown>, text: string, working: string): string {
  switch (kind) {
    case 'idle':
      return '';
    case 'asking':
      return working;
    case 'stopped':
      return 'Stopped.';
    case 'failed':
      return `That did not work: ${'reason' in state ? state.reason : ''}. Find it again to try once more.`;
    case 'found':
      return 'text' in state && state.text !== text
        ? 'This is an answer to what was chosen before. Find it again for what is chosen now.'
        : '';
    default:
      return exhaustive(kind);
  }
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown state: ${JSON.stringify(kind)}`);
}

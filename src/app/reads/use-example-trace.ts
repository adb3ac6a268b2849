import { useCallback, useEffect, useState } from 'react';
import type { ReadExample } from '../../engine/index.ts';
import type { TrialSetup } from '../../worker/index.ts';
import { useDesk } from '../shell/desk.tsx';
import { askExampleTrace, type ExampleTrace, knownTrace } from './example-traces.ts';

/** How far the trial of an example is on its way to the screen. */
export type AskedTrace =
  | { readonly kind: 'asked' }
  | { readonly kind: 'there'; readonly shown: ExampleTrace }
  | { readonly kind: 'failed'; readonly reason: string };

/** The trial of an example: asked for when it is to be seen, once, and dropped when another is to be seen. `retry` asks again. */
export function useExampleTrace(
  setup: TrialSetup,
  example: ReadExample,
): { readonly asked: AskedTrace; readonly retry: () => void } {
  const { threads } = useDesk();
  const [latest, setLatest] = useState<{ readonly of: ReadExample; readonly asked: AskedTrace }>();
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt asks again
  useEffect(() => {
    if (knownTrace(example) !== undefined) return undefined;
    const controller = new AbortController();
    const tell = (asked: AskedTrace): void => {
      if (!controller.signal.aborted) setLatest({ of: example, asked });
    };
    tell({ kind: 'asked' });
    askExampleTrace(threads, setup, example, controller.signal).then(
      (shown) => tell({ kind: 'there', shown }),
      (error: unknown) => tell({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) }),
    );
    return () => controller.abort();
  }, [threads, setup, example, attempt]);
  const shown = knownTrace(example);
  const retry = useCallback(() => setAttempt((before) => before + 1), []);
  if (shown !== undefined) return { asked: { kind: 'there', shown }, retry };
  return { asked: latest?.of === example ? latest.asked : { kind: 'asked' }, retry };
}

import { useEffect, useState } from 'react';
import type { Playbook, Practice } from '../../../playbook/index.ts';
import { knownStands, type LookStand } from '../../../teach/index.ts';
import { usualSeed } from '../../answers/ask.ts';
import { useDesk } from '../../shell/desk.tsx';

const none: readonly LookStand[] = [];

/** How the looks of a plan's parts come open, asked of the threads again for each other plan or play; none until it is known. */
export function usePlanStands(
  playbook: Playbook,
  practice: Pick<Practice, 'blocks'>,
  side: 'left' | 'right',
): readonly LookStand[] {
  const { threads } = useDesk();
  const parts = practice.blocks.filter(({ kind }) => kind === 'part');
  const plays = playbook.plays.filter(({ id }) => parts.some(({ play }) => play === id));
  // Minutes and notes change nothing of how a look opens.
  const text = JSON.stringify([parts.map(({ play, scheme, runs }) => [play, scheme, runs?.[0]?.look]), side]);
  const [known, setKnown] = useState<{ readonly text: string; readonly stands: readonly LookStand[] }>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: text and plays stand for all that is asked
  useEffect(() => {
    const stop = new AbortController();
    const question = { side, penalty: null, level: null, seed: usualSeed };
    knownStands(threads, playbook, practice, question, { signal: stop.signal }).then(
      (stands) => {
        if (!stop.signal.aborted) setKnown({ text, stands });
      },
      // Without them the parts are drawn without defenders.
      () => undefined,
    );
    return () => stop.abort();
  }, [text, threads, plays.length]);
  return known?.text === text ? known.stands : none;
}

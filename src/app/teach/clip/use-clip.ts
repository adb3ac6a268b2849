import { useEffect, useState } from 'react';
import type { Playbook } from '../../../playbook/index.ts';
import { type ClipWishes, type PlayClip, playClip } from '../../../teach/index.ts';
import { useDesk } from '../../shell/desk.tsx';

/** What there is of the clip that is wished for. */
export type ClipFinding =
  /** So many schemes of all are found. */
  | { readonly kind: 'finding'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'found'; readonly clip: PlayClip }
  | { readonly kind: 'failed'; readonly reason: string };

/** The clip of these wishes, found on the threads of the desk. Another wish stops the one before. */
export function useClip(playbook: Playbook, wishes: ClipWishes): ClipFinding {
  const { threads } = useDesk();
  const [finding, setFinding] = useState<ClipFinding>({ kind: 'finding', answered: 0, planned: wishes.schemes.length });
  useEffect(() => {
    const stop = new AbortController();
    let answered = 0;
    const tell = (news: ClipFinding): void => {
      if (!stop.signal.aborted) setFinding(news);
    };
    tell({ kind: 'finding', answered, planned: wishes.schemes.length });
    const onAnswer = (): void => {
      answered += 1;
      tell({ kind: 'finding', answered, planned: wishes.schemes.length });
    };
    playClip(threads, playbook, wishes, { signal: stop.signal, onAnswer }).then(
      (clip) => tell({ kind: 'found', clip }),
      (error: unknown) => tell({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) }),
    );
    return () => stop.abort();
  }, [threads, playbook, wishes]);
  return finding;
}

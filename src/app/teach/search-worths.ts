import type { Playbook } from '../../playbook/index.ts';
import { type MeasuredPlay, measurePlays, type PlaysAsked } from '../../teach/index.ts';
import type { TrialPool } from '../../worker/index.ts';
import { countRequests } from '../answers/count-requests.ts';
import type { WorthsSearch } from './sheets-state.ts';
import type { WorthQuestion } from './worths-question.ts';

/** What plays are asked about, and the question of each of them. */
export interface AskedWorths {
  readonly playbook: Playbook;
  readonly asked: PlaysAsked;
  readonly questions: readonly WorthQuestion[];
  /** What is known already, by question; it is not asked again. */
  readonly known: ReadonlyMap<string, MeasuredPlay>;
}

export type WorthsNews = {
  readonly search: WorthsSearch;
  readonly found?: ReadonlyMap<string, MeasuredPlay>;
};

/** As many answers as are remembered: all plays of a large playbook against two opponents. */
const mostKept = 400;

/** Finds what plays make, one after the other, and tells how far it is; nothing more once the signal is given. */
export async function searchWorths(
  pool: TrialPool,
  { playbook, asked, questions, known }: AskedWorths,
  tell: (news: WorthsNews) => void,
  signal: AbortSignal,
): Promise<void> {
  const open = questions.filter(({ text }) => !known.has(text));
  let found = known;
  const say = (news: WorthsNews): void => {
    if (!signal.aborted) tell(news);
  };
  try {
    const { options, count } = countRequests(signal, (requests) => say({ search: { kind: 'finding', ...requests } }));
    await measurePlays(
      pool,
      playbook,
      { ...asked, plays: open.map(({ play }) => play) },
      {
        ...options,
        onPlay: (measured) => {
          const question = open.find(({ play }) => play === measured.play)!;
          found = new Map([...found, [question.text, measured] as const].slice(-mostKept));
          say({ search: { kind: 'finding', ...count() }, found });
        },
      },
    );
    say({ search: { kind: 'idle' } });
  } catch (error) {
    say({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}

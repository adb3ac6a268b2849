import type { Play } from '../../engine/index.ts';
import { type ReadsEffort, requestsOfStudy, studyReads, type TrialPool } from '../../worker/index.ts';
import { findRounds } from './find-rounds.ts';
import type { ReadsQuestion } from './reads-question.ts';
import type { FoundReads, ReadsSearch } from './reads-state.ts';
import { searchRounds } from './search-rounds.ts';

/** The man at a spot of a play as it is now, and what is asked about him. */
export interface AskedReads {
  readonly play: Play;
  readonly carrier: string;
  readonly question: ReadsQuestion;
}

/** What is told of a search: what it is at, or what a round found. */
export type ReadsNews = { readonly search: ReadsSearch } | { readonly found: FoundReads };

/** Finds a man's reads and tells how far it is and what comes of each round; nothing more once the signal is given. */
export function searchReads(
  pool: TrialPool,
  { play, carrier, question: { setups, text } }: AskedReads,
  tell: (news: ReadsNews) => void,
  signal: AbortSignal,
  rounds: readonly ReadsEffort[] = findRounds,
): Promise<void> {
  const isTaught = play.reads.some((read) => read.carrier === carrier);
  const man = play.spots.findIndex(({ id }) => id === carrier);
  return searchRounds(
    {
      rounds,
      planned: (effort) => requestsOfStudy(setups.length, effort, isTaught),
      study: (effort, options) => studyReads(pool, setups, { play, carrier: man }, effort, options),
      found: (study, { trials }, isRough): ReadsNews => ({
        found: { study, play, setups, trials, isRough, question: text },
      }),
      never: { search: { kind: 'never', carrier } },
    },
    tell,
    signal,
  );
}

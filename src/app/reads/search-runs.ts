import type { Play, RunOrder } from '../../engine/index.ts';
import {
  type RunsEffort,
  requestsOfRunStudy,
  runsEffort,
  studyRuns,
  type TrialPool,
  type WeighedSetup,
} from '../../worker/index.ts';
import type { FoundRun, RunSearch } from './runs-state.ts';
import { searchRounds } from './search-rounds.ts';

/** One run of a play as it is now, and against what it is tried. */
export interface AskedRun {
  readonly play: Play;
  readonly order: RunOrder;
  readonly setups: readonly WeighedSetup[];
  /** All that the answer depends on, as text. */
  readonly question: string;
}

/** What is told of a search: what it is at, or what a round found. */
export type RunNews = { readonly search: RunSearch } | { readonly found: FoundRun };

/** What is simulated one after the other: the second takes a minute of one core, and knows gains to about .01 goals a chance. */
const usualRounds: readonly RunsEffort[] = [40, 200].map(runsEffort);

/** Finds when a man should make one run, and tells how far it is and what comes of each round; nothing more once the signal is given. */
export function searchRuns(
  pool: TrialPool,
  { play, order, setups, question }: AskedRun,
  tell: (news: RunNews) => void,
  signal: AbortSignal,
  rounds: readonly RunsEffort[] = usualRounds,
): Promise<void> {
  return searchRounds(
    {
      rounds,
      planned: ({ trials }) => requestsOfRunStudy(setups.length, trials),
      study: (effort, options) => studyRuns(pool, setups, { play, run: order }, effort, options),
      found: (study, { trials }, isRough): RunNews => ({ found: { study, play, trials, isRough, question } }),
      never: { search: { kind: 'never', runner: play.spots[order.runner]!.id } },
    },
    tell,
    signal,
  );
}

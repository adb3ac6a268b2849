import {
  defaultSearchLimits,
  type Play,
  type RunnerChance,
  type RunnerStudy,
  type RunOrder,
  runOfOrder,
  type SearchLimits,
} from '../engine/index.ts';
import { expectKind } from './expect-kind.ts';
import {
  type AskThreads,
  type GatherQuestion,
  gatherChances,
  gatherRanges,
  type WeighedSetup,
} from './gather-chances.ts';
import type { AnswerOptions, TrialPool } from './trial-pool.ts';

/** How much is simulated for the timing of one run. The same effort gives the same answer, for any number of threads. */
export interface RunsEffort {
  /** Man-ups against each scheme that the timing is learnt from, and as many others that it is measured in. */
  readonly trials: number;
  /** What comes within so many seconds of the order counts for it. */
  readonly horizon: number;
  readonly limits: SearchLimits;
}

/** A run has one thing to decide and no order among its reads: fewer lists do than for the man with the ball. */
const limits: SearchLimits = { ...defaultSearchLimits, absence: false, leastShare: 0.04, lists: 2000, mostReads: 3 };
/** The longest wait, and what the run then leads to. Seconds. */
const horizon = 10;

/** The usual effort with so many man-ups against each scheme. */
export function runsEffort(trials: number): RunsEffort {
  return { trials, horizon, limits };
}

/**
 * Gathers what comes of one run of a play by when the man goes, against every setup, and studies it; `null` when the play hardly ever comes to
 * it. RangeError for a run that the play, as it is seen from the setups' side, does not have. Rejects with a `RefusedSetup` when a setup names
 * something that its playbook does not have.
 */
export async function studyRuns(
  pool: TrialPool,
  setups: readonly WeighedSetup[],
  { play, run }: { readonly play: Play; readonly run: RunOrder },
  effort: RunsEffort,
  options: AnswerOptions & { readonly onPlan?: (requests: number) => void } = {},
): Promise<RunnerStudy | null> {
  if (runOfOrder(play, run) === undefined) throw new RangeError(`unknown run: man ${run.runner} in beat ${run.beat}`);
  const { trials, horizon, limits } = effort;
  const ask: AskThreads = (requests) => {
    options.onPlan?.(requests.length);
    return pool.answer(requests, options);
  };
  const question: GatherQuestion<RunnerChance> = {
    request: (setup, range) => ({ kind: 'runs', setup, order: run, range, horizon }),
    chances: (answer) => expectKind(answer, 'runs').chances,
  };
  const learn = await gatherChances(ask, setups, { first: 0, trials }, question);
  const held = await gatherChances(ask, setups, { first: trials, trials }, question);
  const [first] = setups;
  if (first === undefined) return null;
  const [answer] = await ask([{ kind: 'runStudy', setup: first.setup, order: run, learn, held, limits }]);
  return expectKind(answer!, 'runStudy').study;
}

/** Requests that `studyRuns` puts in all, against so many schemes. */
export function requestsOfRunStudy(schemes: number, trials: number): number {
  return 2 * schemes * gatherRanges(0, trials).length + 1;
}

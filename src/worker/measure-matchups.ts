import {
  applyStopRule,
  batchesOf,
  type ForcedTrial,
  type FoundLooks,
  planForced,
  type StopRule,
  summarizeLooks,
  summarizeThrows,
  type Tally,
  valueLooks,
  type WatchedPlay,
} from '../engine/index.ts';
import { expectKind } from './expect-kind.ts';
import type { TrialSetup, WorkerAnswer, WorkerRequest } from './protocol.ts';
import { chunksOf, trialBatches } from './trial-batches.ts';
import type { StopSignal, TrialPool } from './trial-pool.ts';
import { joinWatched } from './watched-parts.ts';

/** How much is simulated. The same effort gives the same answer, for any number of threads. */
export interface Effort {
  /** When the trials that are counted have told enough. */
  readonly rule: StopRule;
  /** Trials watched for looks; 0 asks for goals alone. */
  readonly watched: number;
  /** Looks whose worth is found out, and trials spent on each. */
  readonly looks: number;
  readonly perLook: number;
}

/** What was found out about one setup. */
export interface Measured extends FoundLooks {
  readonly tally: Tally;
}

export interface MeasureOptions {
  /** Ends the work; the promise then rejects with the signal's reason. */
  readonly signal?: StopSignal;
  /** Told how many more answers are waited for, before they are. */
  readonly onPlan?: (requests: number) => void;
  /** Told after each answer. */
  readonly onAnswer?: () => void;
}

/**
 * Counts, watches and values every setup, in the setups' order. Rejects with a `RefusedSetup` when one names something that
 * its playbook does not have.
 */
export async function measureMatchups(
  pool: TrialPool,
  setups: readonly TrialSetup[],
  effort: Effort,
  options: MeasureOptions = {},
): Promise<readonly Measured[]> {
  const ask = (requests: readonly WorkerRequest[]): Promise<readonly WorkerAnswer[]> => {
    options.onPlan?.(requests.length);
    return pool.answer(requests, options);
  };
  const tallies = await tallyAll(ask, setups, effort.rule, pool.threads);
  const watched = await watchAll(ask, setups, effort.watched);
  const looks = watched.map(({ windows }) => summarizeLooks(windows, effort.watched));
  const plans = looks.map((one, index) => planForced(one, effort.perLook, effort.looks, watched[index]!.throws));
  const goals = await forceAll(ask, setups, plans);
  return setups.map((_, index) => ({
    tally: tallies[index]!,
    watched: effort.watched,
    looks: looks[index]!,
    values: valueLooks(plans[index]!, goals[index]!),
    own: summarizeThrows(watched[index]!.throws, watched[index]!.seen, effort.watched),
  }));
}

type Ask = (requests: readonly WorkerRequest[]) => Promise<readonly WorkerAnswer[]>;

/** Requests that keep a thread busy until the next round: fewer would leave it idle at the round's end. */
const requestsPerThread = 2;

// In rounds: each setup that has not told enough gets its next batches. A round may run further than a setup needs;
// the rule leaves out what lies beyond its stop, so the answer does not depend on how long a round was.
async function tallyAll(ask: Ask, setups: readonly TrialSetup[], rule: StopRule, threads: number): Promise<Tally[]> {
  const batches = batchesOf(rule);
  const found: Tally[][] = setups.map(() => []);
  const done = new Map<number, Tally>();
  while (done.size < setups.length) {
    const open = [...setups.keys()].filter((index) => !done.has(index));
    const ahead = Math.max(1, Math.ceil((threads * requestsPerThread) / open.length));
    const asked = open.flatMap((index) =>
      batches.slice(found[index]!.length, found[index]!.length + ahead).map((range) => ({ index, range })),
    );
    const answers = await ask(asked.map(({ index, range }) => ({ kind: 'tally', setup: setups[index]!, range })));
    for (const [at, { index }] of asked.entries()) found[index]!.push(expectKind(answers[at]!, 'tally').tally);
    for (const index of open) {
      const answer = applyStopRule(rule, found[index]!);
      if (answer.kind === 'enough') done.set(index, answer.tally);
    }
  }
  return setups.map((_, index) => done.get(index)!);
}

async function watchAll(ask: Ask, setups: readonly TrialSetup[], watched: number): Promise<WatchedPlay[]> {
  const ranges = trialBatches(0, watched);
  const answers = await ask(
    setups.flatMap((setup) => ranges.map((range) => ({ kind: 'watch', setup, range }) as const)),
  );
  const parts = answers.map((answer) => expectKind(answer, 'watch').watched);
  return setups.map((_, index) => joinWatched(parts.slice(index * ranges.length, (index + 1) * ranges.length)));
}

/** Forced trials in one request: about as much work as a batch. */
const forcedInRequest = 200;

async function forceAll(
  ask: Ask,
  setups: readonly TrialSetup[],
  plans: readonly (readonly ForcedTrial[])[],
): Promise<number[][]> {
  const asked = plans.flatMap((plan, index) =>
    chunksOf(plan, forcedInRequest).map((trials) => ({
      index,
      request: { kind: 'force', setup: setups[index]!, trials } as const,
    })),
  );
  const answers = await ask(asked.map(({ request }) => request));
  const goals: number[][] = setups.map(() => []);
  for (const [at, { index }] of asked.entries())
    goals[index]!.push(...expectKind(answers[at]!, 'force').forced.goals_byForced);
  return goals;
}

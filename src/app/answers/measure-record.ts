import {
  estimateOdds,
  mergeTallies,
  planForced,
  summarizeLooks,
  type Tally,
  type Trace,
  valueLooks,
} from '../../engine/index.ts';
import {
  joinWatched,
  type StopSignal,
  type TrialPool,
  type TrialRange,
  type TrialSetup,
  type WorkerAnswer,
  type WorkerRequest,
} from '../../worker/index.ts';
import { type AnswerPlan, urgency } from './answer-plan.ts';
import { chooseTrial } from './choose-trial.ts';
import { type GoalOrigins, goalOrigins } from './goal-origins.ts';
import { isKnownTo, type MatchupRecord } from './matchup-record.ts';

/** How a record is worked on. */
export interface Work {
  readonly pool: TrialPool;
  readonly plan: AnswerPlan;
  readonly signal: StopSignal;
  /** Added to every urgency: what is looked at goes before its like. */
  readonly boost: number;
  /** Tally batches that are asked at once, so that no thread waits. */
  readonly ahead: number;
  /** The trial of this scheme that stands on the screen, which is shown until one is chosen; none when absent. */
  readonly shownTrial?: number | undefined;
  /** Told after each change of the record. */
  readonly onChange: () => void;
}

/**
 * Go on with a record from where it stands until it is finished. Rejects when the signal ends it, or when a thread fails; what was found
 * by then stays. What a worker refuses is written into the record.
 */
export async function measureRecord(record: MatchupRecord, work: Work): Promise<void> {
  if (record.finished) return;
  try {
    await Promise.all([countGoals(record, work), lookOn(record, work)]);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    record.refused = error.message;
  }
  record.finished = true;
  changed(record, work);
}

async function countGoals(record: MatchupRecord, work: Work): Promise<void> {
  const { batch, halfWidths } = work.plan;
  if (record.tally === null) {
    addTallies(record, await askTallies(record.setup, [{ from: 0, to: batch.first }], work, urgency.coarse), work);
  }
  for (const step of ['near', 'fair', 'fine'] as const) await countTo(record, work, halfWidths[step], urgency[step]);
}

async function countTo(record: MatchupRecord, work: Work, halfWidth: number, priority: number): Promise<void> {
  const { batch } = work.plan;
  while (!isKnownTo(record.tally, halfWidth, work.plan)) {
    const from = record.tally?.to ?? 0;
    const ranges = rangesBetween(from, from + work.ahead * batch.tally, batch.tally);
    addTallies(record, await askTallies(record.setup, ranges, work, priority), work);
  }
}

function rangesBetween(from: number, to: number, size: number): readonly TrialRange[] {
  const ranges: TrialRange[] = [];
  for (let start = from; start < to; start += size) ranges.push({ from: start, to: Math.min(to, start + size) });
  return ranges;
}

/** One after the other, and none beyond the end: how many were asked at once must not be seen in the answer. */
function addTallies(record: MatchupRecord, tallies: readonly Tally[], work: Work): void {
  for (const tally of tallies) {
    if (isKnownTo(record.tally, work.plan.halfWidths.fine, work.plan)) break;
    record.tally = record.tally === null ? tally : mergeTallies([record.tally, tally]);
  }
  changed(record, work);
}

/** The first tallies of a setup, up to trial `to` (excluded), grown from those that are known. Rejects with a `Refusal` when a worker refuses the setup. */
export async function extendTally(
  setup: TrialSetup,
  known: Tally | null,
  to: number,
  work: Work,
  priority: number,
): Promise<Tally> {
  const ranges = rangesBetween(known?.to ?? 0, to, work.plan.batch.tally);
  const more = await askTallies(setup, ranges, work, priority);
  return mergeTallies(known === null ? more : [known, ...more]);
}

/** Follows the first chances of a record shot by shot, once; a few at a time, because each is long to send. */
export async function followGoals(record: MatchupRecord, work: Work): Promise<GoalOrigins> {
  if (record.origins !== null) return record.origins;
  const { setup } = record;
  const chances: Pick<Trace, 'events'>[] = [];
  for (const { from, to } of rangesBetween(0, work.plan.followed, followedAtOnce)) {
    const trials = Array.from({ length: to - from }, (_, at) => from + at);
    const answers = await ask(
      trials.map((trial) => ({ kind: 'trace', setup, of: 'chance', trial }) as const),
      work,
      urgency.side,
    );
    for (const answer of answers) {
      const traced = expectKind(answer, 'trace');
      // What was done is enough; where everybody stood is let go.
      if (traced.of === 'chance') chances.push({ events: traced.trace.events });
    }
  }
  record.origins = goalOrigins(chances);
  return record.origins;
}

const followedAtOnce = 6;

async function lookOn(record: MatchupRecord, work: Work): Promise<void> {
  const { watched } = work.plan;
  await Promise.all([traceFirst(record, work), watchTo(record, work, watched.first, urgency.look)]);
  // What stands on the screen stays until it is known which trial shows most.
  if (work.shownTrial === undefined) await choose(record, work, false);
  await watchTo(record, work, watched.named, urgency.watch);
  await replayLooks(record, work);
  await choose(record, work, true);
  await watchTo(record, work, watched.all, urgency.watchMore);
}

async function traceFirst(record: MatchupRecord, work: Work): Promise<void> {
  if (record.traced === null) await traceTrial(record, work, work.shownTrial ?? 0);
}

async function traceTrial(record: MatchupRecord, work: Work, trial: number): Promise<void> {
  const { setup } = record;
  const [answer] = await ask([{ kind: 'trace', setup, of: 'script', trial }], work, urgency.look);
  const { cast, script } = scriptOf(expectKind(answer, 'trace'));
  record.traced = { cast, script };
  changed(record, work);
}

/** The choice for good comes when as much is known as this setup's trials tell at that point, so it is the same however one came there. */
async function choose(record: MatchupRecord, work: Work, forGood: boolean): Promise<void> {
  const { seen, values, chosen, traced } = record;
  if (seen === null || traced?.script == null || chosen?.forGood === true) return;
  const found = chooseTrial(seen.play, seen.trials, values);
  if (traced.script.trial !== found.trial) await traceTrial(record, work, found.trial);
  record.chosen = { ...found, forGood };
  changed(record, work);
}

function scriptOf(answer: Extract<WorkerAnswer, { kind: 'trace' }>): Extract<typeof answer, { of: 'script' }> {
  if (answer.of !== 'script') throw new TypeError(`expected a script, not a ${answer.of}`);
  return answer;
}

async function watchTo(record: MatchupRecord, work: Work, trials: number, priority: number): Promise<void> {
  const { setup, seen } = record;
  const ranges = rangesBetween(seen?.trials ?? 0, trials, work.plan.batch.watch);
  if (ranges.length === 0) return;
  const requests = ranges.map((range) => ({ kind: 'watch', setup, range }) as const);
  const parts = (await ask(requests, work, priority)).map((answer) => expectKind(answer, 'watch').watched);
  record.seen = { trials, play: joinWatched(seen === null ? parts : [seen.play, ...parts]) };
  changed(record, work);
}

/** The plan comes from the trials that were watched by then, so later ones sharpen how often a look is there, not what it is worth. */
async function replayLooks(record: MatchupRecord, work: Work): Promise<void> {
  const { setup, seen } = record;
  if (seen === null || record.values.length > 0) return;
  const { windows, throws } = seen.play;
  const { perLook, looks, batch } = work.plan;
  const plan = record.replays?.plan ?? planForced(summarizeLooks(windows, seen.trials), perLook, looks, throws);
  const done = record.replays?.odds ?? [];
  record.replays = { plan, odds: done };
  const requests: WorkerRequest[] = [];
  for (let from = done.length; from < plan.length; from += batch.force) {
    requests.push({ kind: 'force', setup, trials: plan.slice(from, from + batch.force) });
  }
  const answers = await ask(requests, work, urgency.force);
  const odds = [...done, ...answers.flatMap((answer) => [...expectKind(answer, 'force').forced.odds_byForced])];
  record.replays = { plan, odds };
  record.values = valueLooks(plan, odds, estimateOdds);
  changed(record, work);
}

async function askTallies(
  setup: TrialSetup,
  ranges: readonly TrialRange[],
  work: Work,
  priority: number,
): Promise<readonly Tally[]> {
  const requests = ranges.map((range) => ({ kind: 'tally', setup, range }) as const);
  return (await ask(requests, work, priority)).map((answer) => expectKind(answer, 'tally').tally);
}

async function ask(
  requests: readonly WorkerRequest[],
  { pool, signal, boost }: Work,
  priority: number,
): Promise<readonly WorkerAnswer[]> {
  const answers = await pool.answer(requests, { signal, priority: priority + boost });
  // An answer that came in the same moment as the end of the question must not change the record any more.
  signal.throwIfAborted();
  return answers;
}

/** A worker's plain sentence on why there can be no answer. */
export class Refusal extends Error {}

function expectKind<K extends WorkerAnswer['kind']>(
  answer: WorkerAnswer | undefined,
  kind: K,
): Extract<WorkerAnswer, { kind: K }> {
  if (answer?.kind === 'refused') throw new Refusal(answer.reason);
  if (answer?.kind !== kind) throw new TypeError(`expected ${kind}, not ${answer?.kind}`);
  return answer as Extract<WorkerAnswer, { kind: K }>;
}

function changed(record: MatchupRecord, { onChange }: Work): void {
  record.changes += 1;
  onChange();
}

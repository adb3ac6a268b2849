import type { ForcedTrial, ScriptTrace, ShotHeat, Trace } from '../../engine/index.ts';
import type { Cast, TrialPool, TrialSetup, WorkerRequest } from '../../worker/index.ts';
import { type AnswerPlan, defaultAnswerPlan, urgency } from './answer-plan.ts';
import { type AnswersSnapshot, emptySnapshot, type SchemeAnswer } from './answers-snapshot.ts';
import { type Ask, setupsOf } from './ask.ts';
import { type Baseline, baselineOf } from './baseline.ts';
import { createRecord, type MatchupRecord } from './matchup-record.ts';
import { extendTally, measureRecord, type Work } from './measure-record.ts';
import { overallAnswer } from './overall-answer.ts';
import { schemeAnswer } from './scheme-answer.ts';

export interface AnswersOptions {
  readonly plan?: AnswerPlan;
  /** Runs `publish` a little later, so that many small changes become one for the screen; `setTimeout` when absent. */
  readonly later?: (publish: () => void, milliseconds: number) => void;
}

/** The simulation's answers to what stands on the screen. */
export interface Answers {
  /**
   * Ask about a play. Answers come by and by; a new ask takes the place of the old one at once. Asking the same again, or after an edit that
   * changes no trial, goes on with what is known, and so does going back to an earlier state of the play.
   */
  ask(ask: Ask): void;
  /** The scheme whose answers come first; none when `null`. Counts from the next ask on. */
  focus(scheme: string | null): void;
  /** For `useSyncExternalStore`: told when there is a new snapshot. Returns the way to end it. */
  subscribe(listener: () => void): () => void;
  snapshot(): AnswersSnapshot;
  /** From now on answers are compared with those that stand now: call it when an edit begins. */
  keepBaseline(): void;
  dropBaseline(): void;
  /** The script alone in one trial against a scheme of the ask; `null` when the play never begins. Rejects with a plain sentence. */
  showScript(scheme: string, trial: number): Promise<{ readonly cast: Cast; readonly script: ScriptTrace | null }>;
  /** A whole chance, with a look taken when one is named. */
  showChance(
    scheme: string,
    trial: number,
    look?: Omit<ForcedTrial, 'trial'>,
  ): Promise<{ readonly cast: Cast; readonly trace: Trace }>;
  /** What a shot by one of the six (offense index) is worth over the field; the same against every scheme. */
  heat(scheme: string, shooter: number): Promise<ShotHeat>;
  /** Ends the work; the pool stays open. */
  close(): void;
}

/** Records that are kept: nine schemes for the last edits, so that undo answers at once. */
const keptRecords = 72;
/** A screen has no use for more: a frame while first answers come, then a calm pace. Milliseconds. */
const pace = { first: 16, later: 100 } as const;

/** Puts questions to a pool and keeps what came of them. The pool's threads are left alone by a new question. */
export function createAnswers(
  pool: TrialPool,
  { plan = defaultAnswerPlan, later = startTimer }: AnswersOptions = {},
): Answers {
  const listeners = new Set<() => void>();
  const remembered = new Map<string, MatchupRecord>();
  let asked: Ask | null = null;
  let records: readonly MatchupRecord[] = [];
  let baseline: ReadonlyMap<string, Baseline> | null = null;
  let stop = new AbortController();
  let focused: string | null = null;
  let failure: string | null = null;
  let snapshot = emptySnapshot;
  let shown: ReadonlyMap<string, Shown> = new Map();
  let isDue = false;
  /** Some scheme has no answer yet. */
  let awaitsFirst = false;

  const publishIfDue = (): void => {
    if (isDue) publish();
  };
  const publish = (): void => {
    isDue = false;
    shown = new Map(records.map((record) => [record.setup.scheme, show(record, baseline, shown, plan.least)]));
    snapshot = {
      ask: asked,
      schemes: records.map(({ setup }) => shown.get(setup.scheme)!.answer),
      overall: records.length === 0 ? null : overallAnswer(records, asked?.weights, baseline, plan.least),
      hasBaseline: baseline !== null,
      finished: records.every((record) => record.finished),
      failure,
    };
    for (const listener of listeners) listener();
  };
  const change = (): void => {
    const isFirst = awaitsFirst;
    awaitsFirst = records.some(({ tally, refused }) => tally === null && refused === null);
    // What the coach waits for does not wait for a timer.
    if (isFirst && !awaitsFirst) publish();
    else if (!isDue) {
      isDue = true;
      later(publishIfDue, awaitsFirst ? pace.first : pace.later);
    }
  };
  const recordOf = (setup: TrialSetup): MatchupRecord => {
    const key = JSON.stringify(setup);
    const record = remembered.get(key) ?? createRecord(setup);
    remembered.delete(key);
    remembered.set(key, record);
    if (remembered.size > keptRecords) remembered.delete(remembered.keys().next().value ?? '');
    return record;
  };
  const work = (): void => {
    stop.abort();
    stop = new AbortController();
    const { signal } = stop;
    failure = null;
    const ahead = Math.max(1, Math.ceil((2 * pool.threads) / records.length));
    for (const record of records) {
      const boost = record.setup.scheme === focused ? 0.5 : 0;
      const how: Work = { pool, plan, signal, boost, ahead, onChange: change };
      measureRecord(record, how)
        .then(() => growBaseline(record, baseline?.get(record.setup.scheme), how))
        .catch((error: unknown) => {
          if (signal.aborted) return;
          failure = error instanceof Error ? error.message : String(error);
          change();
        });
    }
  };
  const now = (scheme: string): TrialSetup => {
    const record = records.find(({ setup }) => setup.scheme === scheme);
    if (record === undefined) throw new RangeError(`unknown scheme: ${scheme} (expected one of the ask)`);
    return record.setup;
  };

  return {
    ask: (ask) => {
      const next = setupsOf(ask).map(recordOf);
      const isSame = next.length === records.length && next.every((record, at) => record === records[at]);
      if (asked !== null && !isSameStage(asked, ask)) shown = new Map();
      asked = ask;
      records = next;
      awaitsFirst = records.some(({ tally, refused }) => tally === null && refused === null);
      if (!isSame || failure !== null) work();
      publish();
    },
    focus: (scheme) => {
      focused = scheme;
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    snapshot: () => snapshot,
    keepBaseline: () => {
      baseline = baselineOf(records);
      publish();
    },
    dropBaseline: () => {
      baseline = null;
      publish();
    },
    showScript: async (scheme, trial) => {
      const answer = await askOne(pool, { kind: 'trace', setup: now(scheme), of: 'script', trial });
      if (answer.kind !== 'trace' || answer.of !== 'script')
        throw new TypeError(`expected a script, not ${answer.kind}`);
      return { cast: answer.cast, script: answer.script };
    },
    showChance: async (scheme, trial, look) => {
      const forced = look && { ...look, trial };
      const answer = await askOne(pool, {
        kind: 'trace',
        setup: now(scheme),
        of: 'chance',
        trial,
        ...(forced && { forced }),
      });
      if (answer.kind !== 'trace' || answer.of !== 'chance')
        throw new TypeError(`expected a chance, not ${answer.kind}`);
      return { cast: answer.cast, trace: answer.trace };
    },
    heat: async (scheme, shooter) => {
      const answer = await askOne(pool, { kind: 'heat', setup: now(scheme), shooter });
      if (answer.kind !== 'heat') throw new TypeError(`expected heat, not ${answer.kind}`);
      return answer.heat;
    },
    close: () => {
      stop.abort();
      listeners.clear();
    },
  };

  /** The play as it was is counted as far as the play as it is: a comparison is as narrow as the fewer trials let it be. */
  async function growBaseline(record: MatchupRecord, before: Baseline | undefined, how: Work): Promise<void> {
    while (before !== undefined && record.tally !== null && (before.tally?.to ?? 0) < record.tally.to) {
      const to = Math.min(record.tally.to, (before.tally?.to ?? 0) + baselineBatches * plan.batch.tally);
      before.tally = await extendTally(before.setup, before.tally, to, how);
      record.changes += 1;
      change();
    }
  }
}

const baselineBatches = 4;

function startTimer(publish: () => void, milliseconds: number): void {
  setTimeout(publish, milliseconds);
}

/** An answer on the screen, and what it was made from. */
interface Shown {
  readonly record: MatchupRecord;
  readonly changes: number;
  readonly baseline: ReadonlyMap<string, Baseline> | null;
  readonly answer: SchemeAnswer;
}

function show(
  record: MatchupRecord,
  baseline: ReadonlyMap<string, Baseline> | null,
  before: ReadonlyMap<string, Shown>,
  leastTrials: number,
): Shown {
  const { changes, setup } = record;
  const old = before.get(setup.scheme);
  if (old?.record === record && old.changes === changes && old.baseline === baseline) return old;
  const answer = schemeAnswer(record, baseline?.get(setup.scheme)?.tally ?? null, old?.answer ?? null, leastTrials);
  return { record, changes, baseline, answer };
}

/** Whether what stands on the screen may stay until the new answer is there: the same play from the same side. */
function isSameStage(one: Ask, other: Ask): boolean {
  return one.play === other.play && one.side === other.side;
}

async function askOne(pool: TrialPool, request: WorkerRequest) {
  const [answer] = await pool.answer([request], { priority: urgency.coarse + 1 });
  if (answer === undefined || answer.kind === 'refused') throw new Error(answer?.reason ?? 'no answer');
  return answer;
}

import type { ForcedTrial, ScriptTrace, ShotHeat, Trace } from '../../engine/index.ts';
import type { Cast, TrialPool, TrialSetup, WorkerRequest } from '../../worker/index.ts';
import { type AnswerPlan, defaultAnswerPlan, urgency } from './answer-plan.ts';
import { type AnswersSnapshot, emptySnapshot, type SchemeAnswer } from './answers-snapshot.ts';
import { type Ask, setAloneSetupsOf, setupsOf } from './ask.ts';
import { type Baseline, type BaselineEffort, baselineOf, growBaseline, isEdited } from './baseline.ts';
import type { GoalOrigins } from './goal-origins.ts';
import { createRecord, isKnownTo, type MatchupRecord } from './matchup-record.ts';
import { followGoals, measureRecord, type Work } from './measure-record.ts';
import { type Compared, overallAnswer } from './overall-answer.ts';
import { schemeAnswer } from './scheme-answer.ts';
import { createSideDesk, type SideAnswers } from './side-answers.ts';

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
  /** The edit is given up: answers are compared with what they were compared with before it began. */
  takeBackBaseline(): void;
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
  /** Where the goals against a scheme come from, found out when nothing else is asked of the threads. Rejects when the play is changed meanwhile. */
  goalOrigins(scheme: string): Promise<GoalOrigins>;
  /** What is asked beside the play: worked on while nothing of the play is. */
  readonly side: SideAnswers;
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
  /** The baseline before the last edit began. */
  let earlierBaseline: ReadonlyMap<string, Baseline> | null = null;
  /** The set without the play, by scheme; empty when the ask has no use for it. */
  let setAlone: ReadonlyMap<string, Baseline> = new Map();
  const rememberedSets = new Map<string, Baseline>();
  let stop = new AbortController();
  let focused: string | null = null;
  let failure: string | null = null;
  let snapshot = emptySnapshot;
  let shown: ReadonlyMap<string, Shown> = new Map();
  let isDue = false;
  /** Some scheme has no answer yet. */
  let awaitsFirst = false;

  const side = createSideDesk(pool, plan);

  const publishIfDue = (): void => {
    if (isDue) publish();
  };
  const publish = (): void => {
    isDue = false;
    const compared = { baseline, setAlone };
    shown = new Map(records.map((record) => [record.setup.scheme, show(record, compared, shown, plan.least)]));
    snapshot = {
      ask: asked,
      schemes: records.map(({ setup }) => shown.get(setup.scheme)!.answer),
      overall: records.length === 0 ? null : overallAnswer(records, asked?.weights, compared, plan.least),
      hasBaseline: baseline !== null,
      finished: records.every((record) => record.finished),
      failure,
    };
    if (snapshot.finished) side.goOn();
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
  const recordOf = (setup: TrialSetup): MatchupRecord =>
    recall(remembered, keptRecords, JSON.stringify(setup), () => createRecord(setup));
  const setAloneOf = (setup: TrialSetup): Baseline =>
    recall(rememberedSets, keptRecords, JSON.stringify(setup), () => ({ setup, tally: null }));
  const work = (): void => {
    stop.abort();
    side.pause();
    stop = new AbortController();
    const { signal } = stop;
    failure = null;
    const ahead = Math.max(1, Math.ceil((2 * pool.threads) / records.length));
    const fail = (error: unknown): void => {
      if (signal.aborted) return;
      failure = error instanceof Error ? error.message : String(error);
      change();
    };
    const fair = createGate(() => records.every(isFair));
    const onChange = (): void => {
      fair.look();
      change();
    };
    for (const record of records) {
      const { scheme } = record.setup;
      const boost = scheme === focused ? 0.5 : 0;
      const shownTrial = shown.get(scheme)?.answer.script?.trial;
      const how: Work = { pool, plan, signal, boost, ahead, shownTrial, onChange };
      // Nothing is simulated beside the play before its own answer is a good one: a drag waits for no more than it did.
      const besides = fair.opened.then(() => growSetAlone(record, setAlone.get(scheme), how));
      besides.catch(fail);
      measureRecord(record, how)
        .then(() => besides)
        // What the play was counted further since then.
        .then(() => growSetAlone(record, setAlone.get(scheme), how))
        .then(async () => {
          const before = baseline?.get(scheme);
          if (before !== undefined && before.setup !== record.setup)
            await growBaseline(record, before, how, wholeBaseline);
        })
        .catch(fail);
    }
    fair.look();
  };
  const isFair = (record: MatchupRecord): boolean =>
    record.refused !== null || isKnownTo(record.tally, plan.halfWidths.fair, plan);
  side.goOn();
  const recordNow = (scheme: string): MatchupRecord => {
    const record = records.find(({ setup }) => setup.scheme === scheme);
    if (record === undefined) throw new RangeError(`unknown scheme: ${scheme} (expected one of the ask)`);
    return record;
  };
  const now = (scheme: string): TrialSetup => recordNow(scheme).setup;

  return {
    ask: (ask) => {
      const next = setupsOf(ask).map(recordOf);
      const sets = setAloneSetupsOf(ask).map(setAloneOf);
      const isSame =
        next.length === records.length &&
        next.every((record, at) => record === records[at]) &&
        sets.every((set) => setAlone.get(set.setup.scheme) === set);
      if (asked !== null && !isSameStage(asked, ask)) shown = new Map();
      asked = ask;
      records = next;
      setAlone = new Map(sets.map((set) => [set.setup.scheme, set]));
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
      earlierBaseline = baseline;
      baseline = baselineOf(records);
      publish();
    },
    takeBackBaseline: () => {
      baseline = earlierBaseline;
      publish();
    },
    dropBaseline: () => {
      baseline = null;
      earlierBaseline = null;
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
    goalOrigins: async (scheme) =>
      followGoals(recordNow(scheme), {
        pool,
        plan,
        signal: stop.signal,
        boost: 0,
        ahead: 1,
        onChange: () => undefined,
      }),
    side,
    close: () => {
      stop.abort();
      side.pause();
      listeners.clear();
    },
  };
}

function startTimer(publish: () => void, milliseconds: number): void {
  setTimeout(publish, milliseconds);
}

/** What is remembered under a key, made when it is not; the oldest of more than `most` is forgotten. */
function recall<T>(memory: Map<string, T>, most: number, key: string, make: () => T): T {
  const found = memory.get(key) ?? make();
  memory.delete(key);
  memory.set(key, found);
  if (memory.size > most) memory.delete(memory.keys().next().value ?? '');
  return found;
}

/** A promise that is kept at the first look at which something holds. */
function createGate(holds: () => boolean): { readonly opened: Promise<void>; readonly look: () => void } {
  let open: (() => void) | undefined;
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return {
    opened,
    look: () => {
      if (open === undefined || !holds()) return;
      open();
      open = undefined;
    },
  };
}

const wholeBaseline: BaselineEffort = { most: Number.POSITIVE_INFINITY, priority: urgency.baseline };

async function growSetAlone(record: MatchupRecord, setAlone: Baseline | undefined, work: Work): Promise<void> {
  if (setAlone === undefined || record.refused !== null) return;
  await growBaseline(record, setAlone, work, { most: work.plan.setAlone, priority: urgency.setAlone });
}

/** An answer on the screen, and what it was made from. */
interface Shown {
  readonly record: MatchupRecord;
  readonly changes: number;
  readonly compared: Compared;
  readonly answer: SchemeAnswer;
}

function show(
  record: MatchupRecord,
  compared: Compared,
  before: ReadonlyMap<string, Shown>,
  leastTrials: number,
): Shown {
  const { changes, setup } = record;
  const { scheme } = setup;
  const old = before.get(scheme);
  const isSame =
    old?.record === record &&
    old.changes === changes &&
    old.compared.baseline === compared.baseline &&
    old.compared.setAlone.get(scheme) === compared.setAlone.get(scheme);
  if (isSame) return old;
  const { baseline } = compared;
  const tallies = {
    before: baseline !== null && isEdited(record, baseline) ? (baseline.get(scheme)?.tally ?? null) : null,
    setAlone: compared.setAlone.get(scheme)?.tally ?? null,
  };
  return { record, changes, compared, answer: schemeAnswer(record, tallies, old?.answer ?? null, leastTrials) };
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

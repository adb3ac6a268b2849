import { compareGoals, type GoalChange, type Tally } from '../../engine/index.ts';
import type { TrialPool, TrialSetup } from '../../worker/index.ts';
import { type AnswerPlan, urgency } from './answer-plan.ts';
import { type Ask, setupsOf } from './ask.ts';
import { extendTally, Refusal, type Work } from './measure-record.ts';

/** How much more a play makes in one way than in another, as with and without a man: both against the same schemes, with the same seed. */
export interface SideQuestion {
  readonly id: string;
  readonly ask: Ask;
  readonly against: Ask;
}

export interface SideAnswer {
  /** Goals per chance of the ask less those of what it is held against, over all schemes by the ask's weights; `null` until a few trials are known. */
  readonly change: GoalChange | null;
  /** It becomes no narrower. */
  readonly done: boolean;
  /** Why there can be no answer, in a plain sentence. */
  readonly refused: string | null;
}

/** Answers to what is asked beside the play that is on the screen: they come when nothing else is asked of the threads. */
export interface SideAnswers {
  /** In the order in which they are worked on. New ones take the place of the old; what was found of any setup is remembered. */
  ask(questions: readonly SideQuestion[]): void;
  /** For `useSyncExternalStore`. Returns the way to end it. */
  subscribe(listener: () => void): () => void;
  /** By the ids of the questions. Another object after each change. */
  snapshot(): ReadonlyMap<string, SideAnswer>;
}

/** The same with the switch by which it waits for what is more urgent. */
export interface SideDesk extends SideAnswers {
  /** Drops what is on its way. */
  pause(): void;
  goOn(): void;
}

/** Setups whose trials are kept: both sides of a play with each of the six missing, against nine schemes, and some that were left. */
const keptTallies = 180;

interface Counted {
  readonly setup: TrialSetup;
  tally: Tally | null;
}

interface Held {
  readonly question: SideQuestion;
  readonly firsts: readonly Counted[];
  readonly seconds: readonly Counted[];
}

/** A desk that rests until it is told to go on. */
export function createSideDesk(pool: TrialPool, plan: AnswerPlan): SideDesk {
  const listeners = new Set<() => void>();
  const known = new Map<string, Counted>();
  let held: readonly Held[] = [];
  let snapshot: ReadonlyMap<string, SideAnswer> = new Map();
  let stop: AbortController | null = null;
  let isResting = true;

  const tell = (id: string, answer: SideAnswer): void => {
    snapshot = new Map(snapshot).set(id, answer);
    for (const listener of listeners) listener();
  };
  const countedOf = (setup: TrialSetup): Counted => {
    const key = JSON.stringify(setup);
    const counted = known.get(key) ?? { setup, tally: null };
    known.delete(key);
    known.set(key, counted);
    if (known.size > keptTallies) known.delete(known.keys().next().value ?? '');
    return counted;
  };
  const work = async (signal: AbortSignal): Promise<void> => {
    const how: Work = { pool, plan, signal, boost: 0, ahead: 1, onChange: () => undefined };
    // Every question a little further before any of them goes on: all have a first answer soon.
    for (const to of plan.side.trials) {
      for (const one of held) {
        const { question, firsts, seconds } = one;
        const { id } = question;
        if (snapshot.get(id)?.done === true) continue;
        try {
          await Promise.all([...firsts, ...seconds].map((counted) => countTo(counted, to, how)));
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          tell(id, { change: null, done: true, refused: error.message });
          continue;
        }
        tell(id, answerOf(one, plan));
      }
    }
  };
  const goOn = (): void => {
    isResting = false;
    if (stop !== null || held.length === 0) return;
    stop = new AbortController();
    const { signal } = stop;
    work(signal)
      // A thread that broke is told of by the play's own answer; what is missing here is asked again with the next question.
      .catch(() => undefined);
  };
  const drop = (): void => {
    stop?.abort();
    stop = null;
  };
  return {
    ask: (questions) => {
      drop();
      held = questions.map((question) => ({
        question,
        firsts: setupsOf(question.ask).map(countedOf),
        seconds: setupsOf(question.against).map(countedOf),
      }));
      snapshot = new Map(held.map((one) => [one.question.id, answerOf(one, plan)]));
      for (const listener of listeners) listener();
      if (!isResting) goOn();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    snapshot: () => snapshot,
    pause: () => {
      isResting = true;
      drop();
    },
    goOn,
  };
}

const nothingKnown: SideAnswer = { change: null, done: false, refused: null };

async function countTo(counted: Counted, to: number, work: Work): Promise<void> {
  if ((counted.tally?.to ?? 0) >= to) return;
  counted.tally = await extendTally(counted.setup, counted.tally, to, work, urgency.side);
}

/** What is known of a question by the trials that all of its setups have run. */
function answerOf({ question: { ask }, firsts, seconds }: Held, { side }: AnswerPlan): SideAnswer {
  const talliesOf = (all: readonly Counted[]): readonly Tally[] =>
    all.flatMap(({ tally }) => (tally === null ? [] : [tally]));
  const [one, other] = [talliesOf(firsts), talliesOf(seconds)];
  if (one.length === 0 || one.length < firsts.length || other.length < seconds.length) return nothingKnown;
  const change = compareGoals(one, other, ask.weights);
  if (change.trials < side.trials[0]!) return nothingKnown;
  const { low, high } = change.difference;
  const done = change.trials >= side.trials.at(-1)! || (high - low) / 2 <= side.halfWidth;
  return { change, done, refused: null };
}

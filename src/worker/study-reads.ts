import {
  type CarrierChance,
  type CarrierStudy,
  cardOfList,
  compareGoals,
  defaultSearchLimits,
  estimateGoals,
  type FakeGain,
  fakeGains,
  type Guidance,
  heldChances,
  type Interval,
  type Outcome,
  type Play,
  readsOfCard,
  type SearchLimits,
  type Tally,
  type ValuedDecisions,
  valueGuided,
} from '../engine/index.ts';
import { expectKind } from './expect-kind.ts';
import {
  type AskThreads,
  type GatherQuestion,
  gatherChances,
  gatherRanges,
  type WeighedSetup,
} from './gather-chances.ts';
import type { TrialRange, TrialSetup, WorkerRequest } from './protocol.ts';
import type { AnswerOptions, TrialPool } from './trial-pool.ts';

/** How much is simulated for the reads of one carrier. The same effort gives the same answer, for any number of threads. */
export interface ReadsEffort {
  /** Man-ups against each scheme that decisions are learnt from, and as many others that they are measured in. */
  readonly trials: number;
  /** What comes within so many seconds of a decision counts for it. */
  readonly horizon: number;
  readonly limits: SearchLimits;
}

/** What is usual: with more ordered lists the answer comes later and is the same; a card says what to look for, and nothing that hardly ever comes. */
const limits: SearchLimits = {
  ...defaultSearchLimits,
  absence: false,
  leastShare: 0.04,
  leastComings: 20,
  lists: 25_000,
};
/** The rest of a play, and no more. Seconds. */
const horizon = 8;

/** The usual effort with so many man-ups against each scheme. */
export function readsEffort(trials: number): ReadsEffort {
  return { trials, horizon, limits };
}

/** What one carrier's reads are worth, and what he makes in the full simulation by other guidance, in the same chances. */
export interface ReadsStudy extends CarrierStudy {
  /** By the reads that the play teaches him; `null` when it teaches him none. */
  readonly taught: ValuedDecisions | null;
  /** By those and by what he himself sees open. */
  readonly byEye: ValuedDecisions;
  /** By the longest card, played as reads of the play. */
  readonly cardPlayed: ValuedDecisions;
  /** What it buys to show the ball to each mate first. */
  readonly fakes: readonly FakeGain[];
  /** What comes of it in whole man-ups, in which everybody plays by eye and by what the play teaches. */
  readonly whole: WholeManUps;
}

/** A card in whole man-ups, played in full: what it is worth to the play and not to the moment. Goals a man-up; none of them was learnt from. */
export interface WholeManUps {
  /** The play as it teaches now. */
  readonly now: Interval;
  /** How much more it makes with each card in place of what it teaches him now: none, one, two ... reads. */
  readonly gain_byCard: readonly Interval[];
}

/**
 * Gathers what one carrier (offense index) of a play, as it is seen from the setups' side, could do against every setup and studies it; `null` when the play hardly ever brings him the
 * ball. Rejects with a RangeError for a man whom the play does not have, with a `RefusedSetup` when a setup names something that its playbook does
 * not have.
 */
export async function studyReads(
  pool: TrialPool,
  setups: readonly WeighedSetup[],
  { play, carrier }: { readonly play: Play; readonly carrier: number },
  effort: ReadsEffort,
  options: AnswerOptions & { readonly onPlan?: (requests: number) => void } = {},
): Promise<ReadsStudy | null> {
  if (play.spots[carrier] === undefined) {
    throw new RangeError(`unknown man: ${carrier} (expected 0 to ${play.spots.length - 1})`);
  }
  const { trials, horizon, limits } = effort;
  const ask: AskThreads = (requests) => {
    options.onPlan?.(requests.length);
    return pool.answer(requests, options);
  };
  const question: GatherQuestion<CarrierChance> = {
    request: (setup, range) => ({ kind: 'decisions', setup, carrier, range, horizon }),
    chances: (answer) => expectKind(answer, 'decisions').chances,
  };
  const learn = await gatherChances(ask, setups, { first: 0, trials }, question);
  const held = await gatherChances(ask, setups, { first: trials, trials }, question);
  const [first] = setups;
  if (first === undefined) return null;
  const [answer] = await ask([{ kind: 'study', setup: first.setup, carrier, learn, held, limits }]);
  const { study } = expectKind(answer!, 'study');
  if (study === null) return null;
  const chances = heldChances(carrier, { learn, held });
  const guided = async (guidance: Guidance): Promise<readonly Outcome[]> => {
    const requests = setups.map(({ setup }, at): WorkerRequest => {
      const played = held[at]!.chances.map(({ trial }) => trial);
      return { kind: 'guided', setup, carrier, guidance, trials: played, horizon };
    });
    return (await ask(requests)).flatMap((answer) => expectKind(answer, 'guided').outcomes);
  };
  const valued = async (guidance: Guidance) => valueGuided(chances, await guided(guidance));
  const longest = study.cards.at(-1)!.list;
  const isTaught = play.reads.some((read) => read.carrier === play.spots[carrier]?.id);
  const taught = isTaught ? await valued('taughtReads') : null;
  const byEye = await guided('eye');
  return {
    ...study,
    taught,
    byEye: valueGuided(chances, byEye),
    cardPlayed: await valued({ reads: readsOfCard(cardOfList(play, carrier, longest, study.at)) }),
    fakes: fakeGains(play, carrier, chances, byEye),
    whole: await playWhole(ask, setups, { play, carrier }, study, { from: trials, to: 2 * trials }),
  };
}

async function playWhole(
  ask: AskThreads,
  setups: readonly WeighedSetup[],
  { play, carrier }: { readonly play: Play; readonly carrier: number },
  { cards, at }: CarrierStudy,
  range: TrialRange,
): Promise<WholeManUps> {
  const tallies = async (request: (setup: TrialSetup) => WorkerRequest): Promise<readonly Tally[]> =>
    (await ask(setups.map(({ setup }) => request(setup)))).map((answer) => expectKind(answer, 'tally').tally);
  const weights = setups.map(({ weight }) => weight);
  const now = await tallies((setup) => ({ kind: 'tally', setup, range }));
  const gain_byCard: Interval[] = [];
  for (const { list } of cards) {
    const reads = readsOfCard(cardOfList(play, carrier, list, at));
    const taught = await tallies((setup) => ({ kind: 'taught', setup, carrier, reads, range }));
    gain_byCard.push(compareGoals(taught, now, weights).difference);
  }
  return { now: estimateGoals(now, weights), gain_byCard };
}

/** Requests that `studyReads` puts in all, against so many schemes, to a play that teaches the carrier something or nothing. */
export function requestsOfStudy(schemes: number, { trials, limits }: ReadsEffort, isTaught: boolean): number {
  const whole = 2 + limits.mostReads;
  return schemes * (2 * gatherRanges(0, trials).length + (isTaught ? 3 : 2) + whole) + 1;
}

import {
  type CarrierStudy,
  cardOfList,
  heldChances,
  learnKeeping,
  measureIn,
  type Outcome,
  readsOfCard,
  tableOf,
  type ValuedDecisions,
  valueGuided,
} from '../../src/engine/index.ts';
import { expectKind, readsEffort, type TrialPool } from '../../src/worker/index.ts';
import { type DemoCarrier, learnSeed, setupOf } from './demo-carriers.ts';
import { playHeld } from './guided-chances.ts';

/** What one man's reads are worth, learnt in one seed and measured in another. */
export interface StudiedCarrier extends DemoCarrier {
  readonly study: CarrierStudy;
  /** Gain over the play, goals a chance, that each card shows where it was learnt: too high. */
  readonly flattered_byCard: readonly number[];
  /** By the reads that the play teaches him; `null` when it teaches him none. */
  readonly taught: ValuedDecisions | null;
  readonly byEye: ValuedDecisions;
  /** Of each card of one read or more what every held chance comes to when it is played in the full simulation. */
  readonly played_byCard: readonly (readonly Outcome[])[];
}

/** Studies a man, and plays his reads and cards; `null` when the play hardly ever brings him the ball. */
export async function studyDemoCarrier(pool: TrialPool, carrier: DemoCarrier): Promise<StudiedCarrier | null> {
  const { play, man, learn, held } = carrier;
  const { limits } = readsEffort(1);
  const setup = setupOf(play, learn[0]!.scheme, learnSeed);
  const [answer] = await pool.answer([{ kind: 'study', setup, carrier: man, learn, held, limits }]);
  const { study } = expectKind(answer!, 'study');
  if (study === null) return null;
  const chances = heldChances(man, { learn, held });
  const valued = (outcomes: readonly Outcome[]) => valueGuided(chances, outcomes);
  const isTaught = play.reads.some((read) => read.carrier === play.spots[man]!.id);
  const played_byCard: (readonly Outcome[])[] = [];
  for (const { list } of study.cards.slice(1)) {
    played_byCard.push(await playHeld(pool, carrier, { reads: readsOfCard(cardOfList(play, man, list, study.at)) }));
  }
  const alone = goalsLeftToPlay(carrier);
  return {
    ...carrier,
    study,
    flattered_byCard: study.cards.map(({ learnt }) => learnt - alone),
    taught: isTaught ? valued(await playHeld(pool, carrier, 'taughtReads')) : null,
    byEye: valued(await playHeld(pool, carrier, 'eye')),
    played_byCard,
  };
}

/** Goals a chance when everything is left to the play, in the chances that were learnt from. */
function goalsLeftToPlay({ man, learn }: DemoCarrier): number {
  const table = tableOf(man, learn, learnKeeping(learn.flatMap(({ chances }) => chances)));
  return measureIn(table).goals(table.goOn_byChance).mean;
}

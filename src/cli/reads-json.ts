import { bestThere, betterRead, cardOfList, engineVersion, type Level, type Play } from '../engine/index.ts';
import type { ReadsStudy } from '../worker/index.ts';

/** What the numbers of a study depend on besides the playbook. */
export interface ReadsConditions {
  readonly seed: number;
  readonly hash: string;
  /** Seconds. */
  readonly penalty: number;
  readonly level: Level;
}

/** A carrier's reads for other programs. Goals from the moment that he can act, with 95 % intervals; the order of the keys is the contract. */
export function readsJson(
  study: ReadsStudy,
  play: Play,
  reads: number,
  { seed, hash, penalty, level }: ReadsConditions,
) {
  const { carrier, comes, learntFrom, measuredIn, at, goOn, best, cards, byScheme, taught, byEye, cardPlayed } = study;
  const { known, grades, fakes, worthHolding, whole } = study;
  const spot = (man: number): string => play.spots[man]!.id;
  const shown = Math.min(reads, cards.length - 1);
  return {
    engine: engineVersion,
    seed,
    inputHash: hash,
    play: play.id,
    carrier: play.spots[carrier]!.id,
    penaltySeconds: penalty,
    level,
    share: comes,
    learntFrom,
    measuredIn,
    playAlone: goOn,
    taught,
    byEye,
    best,
    cardPlayed,
    cards: cards.map(({ list, goals, gain, learnt }) => ({
      ...cardOfList(play, carrier, list, at),
      goals,
      gain,
      learnt,
    })),
    card: shown,
    readsWorthHolding: worthHolding,
    wholeManUps: { now: whole.now, gain: whole.gain_byCard },
    schemes: byScheme.map(({ scheme, goOn: alone, best: most, gain_byCard }) => ({
      scheme,
      playAlone: alone,
      best: most,
      gain: gain_byCard[shown],
    })),
    schemeKnown: {
      best: known.best,
      cardEach: known.cards[shown],
      schemes: known.byScheme.map(({ scheme, best: most, cards: own }) => ({
        scheme,
        best: most,
        card: cardOfList(play, carrier, own[shown]!.list, at),
        more: own[shown]!.more,
      })),
    },
    taughtReads: grades.map((grade) => ({
      read: play.reads[grade.read],
      share: grade.comes,
      there: grade.there && { ...grade.there, bestAction: bestThere(play, carrier, grade, at) },
      wrongWay: grade.wrongWay,
      gain: grade.gain,
      better: grade.better && { read: betterRead(play, carrier, grade, at), gain: grade.better.gain },
    })),
    fakes: fakes.map(({ toward, gain, byScheme: schemes }) => ({ toward: spot(toward), gain, schemes })),
  };
}

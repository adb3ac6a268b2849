import { cardOfList, engineVersion, type Level, type Play } from '../engine/index.ts';
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
): string {
  const { carrier, comes, learntFrom, measuredIn, at, goOn, best, cards, byScheme, taught, byEye, cardPlayed } = study;
  const shown = Math.min(reads, cards.length - 1);
  return `${JSON.stringify(
    {
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
      schemes: byScheme.map(({ scheme, goOn: alone, best: most, gain_byCard }) => ({
        scheme,
        playAlone: alone,
        best: most,
        gain: gain_byCard[shown],
      })),
    },
    null,
    2,
  )}\n`;
}

import {
  coveredOdds,
  type Estimate,
  guessCover,
  type KeeperQuarterId,
  keeperQuarterIds,
  shareDifference,
  wilsonInterval,
} from '../../engine/index.ts';
import { countQuarters, type KeeperShot } from '../../playbook/index.ts';

/** What a goalkeeper made of the shots that came into one quarter. */
export interface KeeperQuarter {
  readonly id: KeeperQuarterId;
  readonly shots: number;
  readonly goals: number;
  /** The share of them that are goals, 0 to 1; from 0 to 1 without shots. */
  readonly beaten: Estimate;
  /** Beside his other quarters: beaten more or less there for sure, or not to be told. */
  readonly verdict: 'more' | 'less' | 'cannotTell';
  /** Of balls that a keeper alike everywhere stops half of: the share that the simulation takes him to stop here, 0 to 1. */
  readonly stopsOfHalf: number;
}

/**
 * Four quarters are looked at, so that one of them would seem weak by luck four times as often: each is held to a quarter of the usual doubt (Bonferroni).
 */
const confidence = 1 - 0.05 / keeperQuarterIds.length;

/** Shots on a goalkeeper by quarters of the mouth, in the order of `keeperQuarterIds`. Those that were put outside of it count for none. */
export function keeperQuarters(shots: readonly KeeperShot[]): readonly KeeperQuarter[] {
  const counts = countQuarters(shots);
  const cover = guessCover(counts);
  const all = totalOf(keeperQuarterIds.map((id) => counts[id]));
  return keeperQuarterIds.map((id) => {
    const { hits, tries } = totalOf([counts[id]]);
    const apart = shareDifference({ hits, tries }, { hits: all.hits - hits, tries: all.tries - tries }, confidence);
    return {
      id,
      shots: tries,
      goals: hits,
      beaten: wilsonInterval(hits, tries),
      verdict: apart.low > 0 ? 'more' : apart.high < 0 ? 'less' : 'cannotTell',
      stopsOfHalf: coveredOdds(0.5, cover?.[id] ?? 1),
    };
  });
}

/** Goals (hits) of shots (tries). */
function totalOf(counts: readonly { readonly saves: number; readonly goals: number }[]): {
  readonly hits: number;
  readonly tries: number;
} {
  const hits = counts.reduce((sum, { goals }) => sum + goals, 0);
  return { hits, tries: counts.reduce((sum, { saves }) => sum + saves, hits) };
}

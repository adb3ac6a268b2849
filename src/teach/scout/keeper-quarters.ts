import { type Estimate, shareDifference, wilsonInterval } from '../../engine/index.ts';
import type { KeeperShot } from '../../playbook/index.ts';

/** A quarter of the goal mouth, as the shooter sees it. */
export const keeperQuarterIds = ['highLeft', 'highRight', 'lowLeft', 'lowRight'] as const;
export type KeeperQuarterId = (typeof keeperQuarterIds)[number];

/** What a goalkeeper made of the shots that came into one quarter. */
export interface KeeperQuarter {
  readonly id: KeeperQuarterId;
  readonly shots: number;
  readonly goals: number;
  /** The share of them that are goals, 0 to 1; from 0 to 1 without shots. */
  readonly beaten: Estimate;
  /** Beside his other quarters: beaten more or less there for sure, or not to be told. */
  readonly verdict: 'more' | 'less' | 'cannotTell';
}

/** Half the mouth's width and its height, feet. */
const [halfWidth, height] = [3, 6];

/**
 * Four quarters are looked at, so that one of them would seem weak by luck four times as often: each is held to a quarter of the usual doubt (Bonferroni).
 */
const confidence = 1 - 0.05 / keeperQuarterIds.length;

/** Shots on a goalkeeper by quarters of the mouth, in the order of `keeperQuarterIds`. Those that were put outside of it count for none. */
export function keeperQuarters(shots: readonly KeeperShot[]): readonly KeeperQuarter[] {
  const inside = shots.filter(({ at: [x, y] }) => Math.abs(x) <= halfWidth && y <= height);
  const counts = keeperQuarterIds.map((id) => countOf(inside.filter(({ at }) => quarterOf(at) === id)));
  return keeperQuarterIds.map((id, index) => {
    const { goals, shots: tries } = counts[index]!;
    const others = {
      hits: counts.reduce((sum, one, at) => (at === index ? sum : sum + one.goals), 0),
      tries: counts.reduce((sum, one, at) => (at === index ? sum : sum + one.shots), 0),
    };
    const apart = shareDifference({ hits: goals, tries }, others, confidence);
    return {
      id,
      shots: tries,
      goals,
      beaten: wilsonInterval(goals, tries),
      verdict: apart.low > 0 ? 'more' : apart.high < 0 ? 'less' : 'cannotTell',
    };
  });
}

/** The quarter of a place in the mouth; who stands right on a middle line belongs to the right and to the upper one. */
export function quarterOf([x, y]: KeeperShot['at']): KeeperQuarterId {
  if (y >= height / 2) return x < 0 ? 'highLeft' : 'highRight';
  return x < 0 ? 'lowLeft' : 'lowRight';
}

function countOf(shots: readonly KeeperShot[]): { readonly goals: number; readonly shots: number } {
  return { goals: shots.filter(({ result }) => result === 'goal').length, shots: shots.length };
}

import type { TeamSide } from '../../engine/index.ts';
import type { ChanceResult, ChanceStart } from '../../playbook/index.ts';
import type { BenchEvent, TappedLook } from './bench-event.ts';

/** A man-up as the taps tell it, still on or over. */
export interface BenchChance {
  /** Whose man-up it is. */
  readonly side: TeamSide;
  readonly start: ChanceStart;
  /** Seconds of play at its start; where the game's clock stood then. */
  readonly from: number;
  readonly period: number;
  readonly left: number;
  /** What the short side serves, as far as it is given: seconds of the longest, whether no goal ends it, men. */
  readonly penalty: { readonly seconds: number; readonly fixed: boolean; readonly men: number } | null;
  readonly call: Extract<BenchEvent, { kind: 'called' }> | null;
  /** The scheme that was tapped last while it was on. */
  readonly seen: string | null;
  readonly ticks: readonly { readonly cue: string; readonly isSo: boolean; readonly at: number }[];
  /** Shots after which the ball was kept; s of play at the first of all. */
  readonly shots: number;
  readonly firstShot: number | null;
  /** How it ended; `null` while it is on. */
  readonly result: ChanceResult | null;
  /** Seconds of play at its end. */
  readonly to: number | null;
  /** The time ended it, and nobody has tapped what happened. */
  readonly endedByTime: boolean;
  readonly look: TappedLook | null;
  readonly scorer: number | null;
}

/** Results that are shots. */
const shots: ReadonlySet<ChanceResult> = new Set(['goal', 'saved', 'wide', 'pipe', 'blocked']);

export function isShotResult(result: ChanceResult): boolean {
  return shots.has(result);
}

/** The chance once its result is tapped, at this second of play. */
export function endedBy(chance: BenchChance, result: ChanceResult, at: number): BenchChance {
  const firstShot = chance.firstShot ?? (isShotResult(result) ? at : null);
  return { ...chance, result, to: chance.to ?? at, endedByTime: false, firstShot };
}

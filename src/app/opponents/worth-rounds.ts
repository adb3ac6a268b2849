import type { Interval } from '../../engine/index.ts';

/** What is known of one play against an opponent's mix. */
export interface PlayWorth {
  /** Goals per chance; `null` before the first answer. */
  readonly goals: Interval | null;
  /** From a few trials only, or of the mix before its last change. */
  readonly coarse: boolean;
  /** It becomes no narrower, or there is no answer at all. */
  readonly ended: boolean;
  /** Why there is none, or what it leaves out; empty mostly. */
  readonly reason: string;
}

/** Half widths of the interval that all plays are brought to, one after the other; the first round only wants more than a guess. Goals. */
export const roundHalfWidths = [Number.POSITIVE_INFINITY, 0.06, 0.04, 0.03] as const;

/**
 * The play that is to be worked on next; undefined when all are known well enough. Every play has its first answer before one is
 * sharpened; after that only the `most` that may still be the best are.
 */
export function nextToSharpen(
  plays: readonly string[],
  known: ReadonlyMap<string, PlayWorth>,
  most: number,
): string | undefined {
  for (const [round, halfWidth] of roundHalfWidths.entries()) {
    const candidates = round === 0 ? plays : promising(plays, known, most);
    const found = candidates.find((play) => !isKnownTo(known.get(play), halfWidth));
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Plays with the best first: by goals per chance as it is written, then in the playbook's order; what is not known yet comes last. */
export function bestFirst(plays: readonly string[], known: ReadonlyMap<string, PlayWorth>): readonly string[] {
  const mean = (play: string): number => {
    const goals = known.get(play)?.goals;
    return goals === null || goals === undefined ? -1 : Math.round(100 * goals.mean);
  };
  return [...plays].sort((one, other) => mean(other) - mean(one));
}

/** Those that the best could be by the upper ends of their intervals, in the playbook's order. */
function promising(plays: readonly string[], known: ReadonlyMap<string, PlayWorth>, most: number): readonly string[] {
  const high = (play: string): number => known.get(play)?.goals?.high ?? -1;
  const kept = new Set([...plays].sort((one, other) => high(other) - high(one)).slice(0, most));
  return plays.filter((play) => kept.has(play));
}

function isKnownTo(worth: PlayWorth | undefined, halfWidth: number): boolean {
  if (worth === undefined) return false;
  if (worth.ended) return true;
  if (worth.goals === null || worth.coarse) return false;
  return (worth.goals.high - worth.goals.low) / 2 <= halfWidth;
}

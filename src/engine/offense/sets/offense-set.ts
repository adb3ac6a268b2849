import type { SafetyDuty, Spot, SpotNeeds } from '../play.ts';

/**
 * A man-up set: six named places that plays start from. Named top-down (first number = men on top).
 * Yards are working middles of the ranges that coaches use; no printed source gives yards (common practice, no source).
 */
export interface OffenseSet {
  readonly id: string;
  /** As a coach says it, counted top-down. */
  readonly name: string;
  /** Other names that mean this set and nothing else, lower case. */
  readonly aliases: readonly string[];
  /** Where the six stand, in words. */
  readonly summary: string;
  readonly goodFor: string;
  readonly drawback: string;
  /** Six spots, top to bottom. */
  readonly spots: readonly Spot[];
}

/** Half-width of the strip round the middle in which neither hand is the inside one, yd (the goal's own half-width is 1). */
const middleStrip = 1;

/**
 * The hand that belongs at a place by "stick to the middle": righties on the offense's left, lefties on its right,
 * either within 1 yd of the middle. Consistent with what coaches publish about lefty finishers working the right side.
 */
export function insideHand(x: number): Spot['hand'] {
  if (Math.abs(x) <= middleStrip) return 'either';
  return x > 0 ? 'left' : 'right';
}

/** What the kinds of spot ask for (common practice, no source). */
export const jobs = {
  /** Point: shoots, feeds and decides. */
  point: { feed: 2, shoot: 2, inside: 0, handle: 3 },
  /** Top shooter. */
  top: { feed: 1, shoot: 3, inside: 0, handle: 2 },
  /** Wing or low man: catches skips, shoots from the side, feeds the crease. */
  wing: { feed: 2, shoot: 2, inside: 1, handle: 1 },
  /** Finisher on the crease. */
  crease: { feed: 0, shoot: 1, inside: 3, handle: 0 },
  /** Feeder behind the goal: the quarterback. */
  feeder: { feed: 3, shoot: 0, inside: 0, handle: 3 },
} as const satisfies Record<string, SpotNeeds>;

export function createSpot(id: string, x: number, y: number, needs: SpotNeeds, safety: SafetyDuty): Spot {
  return { id, at: { x, y }, hand: insideHand(x), needs, safety };
}

/** The right spot and its exact mirror image on the left, ids `<stem>R` and `<stem>L`. */
export function createPair(
  stem: string,
  x: number,
  y: number,
  needs: SpotNeeds,
  safety: SafetyDuty,
): readonly [Spot, Spot] {
  return [createSpot(`${stem}R`, x, y, needs, safety), createSpot(`${stem}L`, -x, y, needs, safety)];
}

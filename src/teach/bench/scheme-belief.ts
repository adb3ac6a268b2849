/** How likely each scheme is, by its id: 0 to 1, 1 in all. */
export type Belief = Readonly<Record<string, number>>;

/** What there is to go by. Every scheme in question is in `prior`. */
export interface BeliefGround {
  /** What was believed before the game: weights beside each other, not all 0. */
  readonly prior: Readonly<Record<string, number>>;
  /** What they were seen to play in earlier man-ups of this game, one entry each. */
  readonly seenBefore: readonly string[];
  /** What the coach sees them play now. */
  readonly seenNow: string | null;
  /** Of each tick of this man-up: how likely it is under each scheme. A scheme that it says nothing of is left as it was. */
  readonly odds: readonly Readonly<Record<string, number>>[];
}

/** As many man-ups as the belief before the game counts for (our choice, no source): what they showed twice today counts as much. */
const priorCounts = 2;
/** How often a coach who names a scheme from the bench is right (common practice, no source). */
const rightBySight = 0.85;

/**
 * What to believe of their scheme. Each man-up is taken as a draw from a mix that is itself unknown: Dirichlet, the prior in the place of `priorCounts`
 * man-ups. What is seen now, and each tick, then counts by Bayes' rule. RangeError for a prior without weight.
 */
export function beliefOf({ prior, seenBefore, seenNow, odds }: BeliefGround): Belief {
  const schemes = Object.keys(prior);
  const all = sum(Object.values(prior));
  if (!(all > 0)) throw new RangeError('invalid prior: no scheme has any weight');
  const counted = schemes.map(
    (id) => (priorCounts * prior[id]!) / all + seenBefore.filter((seen) => seen === id).length,
  );
  const others = Math.max(1, schemes.length - 1);
  const bySight = counted.map((weight, at) => {
    if (seenNow === null || !schemes.includes(seenNow)) return weight;
    return weight * (schemes[at] === seenNow ? rightBySight : (1 - rightBySight) / others);
  });
  const byTicks = odds.reduce((weights, tick) => {
    const next = weights.map((weight, at) => weight * (tick[schemes[at]!] ?? 1));
    // Ticks that no scheme can explain together are a mistake of the hand: the last one is left out.
    return sum(next) > 0 ? next : weights;
  }, bySight);
  const total = sum(byTicks);
  return Object.fromEntries(schemes.map((id, at) => [id, byTicks[at]! / total]));
}

/** The likeliest schemes first; those that are alike stay in their order. */
export function likeliestFirst(belief: Belief): readonly (readonly [string, number])[] {
  return Object.entries(belief).sort(([, one], [, other]) => other - one);
}

function sum(values: readonly number[]): number {
  return values.reduce((before, value) => before + value, 0);
}

/**
 * Shares of several kinds after some were counted: the mean of a Dirichlet posterior whose prior has the shares `before`, worth as much as `strength` counts. A
 * kind that only one of the two names counts as 0 in the other. The result has every kind with a share above 0, and sums to 1.
 *
 * `before` are weights of any sum: 3 to 1 is .75 and .25; without any the counts alone speak. RangeError for a weight or count below 0 or a strength that is not above 0. With box 3 to
 * jump 1, worth 4, and 0 and 4 counted, it is .375 and .625.
 *
 * Source: Gelman et al., Bayesian Data Analysis, section 3.4.
 */
export function sharePosterior(
  before: Readonly<Record<string, number>>,
  strength: number,
  counted: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  if (!(strength > 0 && strength < Infinity)) throw new RangeError(`invalid strength: ${strength} (expected above 0)`);
  const weight = sumOf(before);
  const all = sumOf(counted) + (weight > 0 ? strength : 0);
  const kinds = [...new Set([...Object.keys(before), ...Object.keys(counted)])];
  const share = (kind: string): number => {
    const prior = weight > 0 ? (strength * (before[kind] ?? 0)) / weight : 0;
    return (prior + (counted[kind] ?? 0)) / all;
  };
  return Object.fromEntries(kinds.map((kind) => [kind, share(kind)] as const).filter(([, value]) => value > 0));
}

function sumOf(values: Readonly<Record<string, number>>): number {
  return Object.entries(values).reduce((sum, [kind, value]) => {
    if (!(value >= 0 && value < Infinity))
      throw new RangeError(`invalid weight: ${value} of ${kind} (expected 0 or more)`);
    return sum + value;
  }, 0);
}

/**
 * Sample quantile of numbers in ascending order, at p from 0 to 1 (included).
 *
 * Linear between the order statistics at 1 + (n - 1) p: type 7 of Hyndman and Fan 1996, The American Statistician 50:361.
 * Undefined for an empty list; RangeError for a p that is no probability.
 */
export function sortedQuantile(ascending: ArrayLike<number>, p: number): number | undefined {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`invalid probability: ${p} (expected 0 to 1)`);
  const last = ascending.length - 1;
  if (last < 0) return undefined;
  const place = last * p;
  const k = Math.min(Math.floor(place), Math.max(0, last - 1));
  const below = ascending[k]!;
  const above = ascending[Math.min(k + 1, last)]!;
  return below + (place - k) * (above - below);
}

/** The quartiles of numbers in any order; undefined for an empty list. */
export function quartiles(
  values: ArrayLike<number>,
): { readonly q1: number; readonly median: number; readonly q3: number } | undefined {
  if (values.length === 0) return undefined;
  const ascending = Float64Array.from(values).sort();
  return {
    q1: sortedQuantile(ascending, 0.25)!,
    median: sortedQuantile(ascending, 0.5)!,
    q3: sortedQuantile(ascending, 0.75)!,
  };
}

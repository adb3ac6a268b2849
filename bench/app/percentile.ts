/** The value that a share of all (0 to 1, both included) is at most, by nearest rank. Throws a RangeError for no values. */
export function percentile(values: readonly number[], share: number): number {
  if (values.length === 0) throw new RangeError('invalid values: none (expected at least one)');
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
}

/** Median of an odd number of values. */
export function median(values: readonly number[]): number {
  const ascending = [...values].sort((a, b) => a - b);
  return ascending[Math.floor(ascending.length / 2)] ?? Number.NaN;
}

/** The medians of several measurements, taken in turn so that a slow spell of the machine falls on all of them. */
export function medianInTurn(repeats: number, measurements: readonly (() => number)[]): readonly number[] {
  const results = measurements.map((): number[] => []);
  for (let repeat = 0; repeat < repeats; repeat++) {
    measurements.forEach((measurement, index) => {
      results[index]?.push(measurement());
    });
  }
  return results.map(median);
}

/** CPU seconds of this process, all threads, that `work` takes. */
export function cpuSeconds(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

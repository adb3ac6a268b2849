/**
 * Strictly rising ranks for items in the order that they shall have; `ranks` holds the rank that each had, undefined for a new one.
 *
 * As many as possible keep theirs, so that a move in one tab touches only what was moved. New ones go halfway between their neighbours;
 * when there is no number left between two, all are counted anew from 0.
 */
export function risingRanks(ranks: readonly (number | undefined)[]): readonly number[] {
  const kept = longestRise(ranks);
  const result: number[] = [];
  for (let from = 0; from < ranks.length; ) {
    if (kept.has(from)) {
      result.push(ranks[from]!);
      from++;
      continue;
    }
    let to = from;
    while (to < ranks.length && !kept.has(to)) to++;
    result.push(...spread(result.at(-1), to < ranks.length ? ranks[to] : undefined, to - from));
    from = to;
  }
  const rises = result.every((rank, index) => Number.isFinite(rank) && (index === 0 || rank > result[index - 1]!));
  return rises ? result : ranks.map((_, index) => index);
}

/** `count` ranks between two, either of which may be open. */
function spread(low: number | undefined, high: number | undefined, count: number): readonly number[] {
  const places = Array.from({ length: count }, (_, index) => index);
  if (low === undefined) return places.map((place) => (high === undefined ? place : high - count + place));
  if (high === undefined) return places.map((place) => low + 1 + place);
  return places.map((place) => low + ((high - low) * (place + 1)) / (count + 1));
}

/** Indices of a longest strictly rising subsequence of the ranks that there are: patience sorting, n log n. */
function longestRise(ranks: readonly (number | undefined)[]): ReadonlySet<number> {
  /** For each length, the index of the smallest rank that ends a rise of that length. */
  const ends: number[] = [];
  const previous = new Map<number, number | undefined>();
  for (const [index, rank] of ranks.entries()) {
    if (rank === undefined || !Number.isFinite(rank)) continue;
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (ranks[ends[middle]!]! < rank) low = middle + 1;
      else high = middle;
    }
    previous.set(index, ends[low - 1]);
    ends[low] = index;
  }
  const kept = new Set<number>();
  for (let at = ends.at(-1); at !== undefined; at = previous.get(at)) kept.add(at);
  return kept;
}

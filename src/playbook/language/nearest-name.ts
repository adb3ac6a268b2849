/** The name most like the one that was written, when it is like enough to be a slip of the finger; undefined when none is. */
export function nearestName(written: string, names: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.max(1, Math.floor(written.length / 3)) + 1;
  const wanted = written.slice(0, longest).toLowerCase();
  for (const name of names) {
    const distance = wanted === name.toLowerCase() ? 0 : editDistance(wanted, name.toLowerCase());
    // A name of which no letter is right is no slip: X for C, Q for P.
    if (distance < least && distance < wanted.length) {
      least = distance;
      best = name;
    }
  }
  return best;
}

/** Names are compared up to this length, so that a hostile one cannot make the comparison slow. */
const longest = 40;

/** Insertions, deletions, replacements and swaps of neighbours (optimal string alignment) from one text to the other. */
function editDistance(one: string, other: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i++) {
    const current = [i];
    for (let j = 1; j <= other.length; j++) {
      const replaced = previous[j - 1]! + (one[i - 1] === other[j - 1] ? 0 : 1);
      let cost = Math.min(replaced, previous[j]! + 1, current[j - 1]! + 1);
      const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
      if (swapped) cost = Math.min(cost, before[j - 2]! + 1);
      current.push(cost);
    }
    before = previous;
    previous = current;
  }
  return previous[other.length]!;
}

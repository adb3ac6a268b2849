/** A block that is to have a place in a practice. Times in halves of a minute. */
export interface BlockTime {
  /** Shorter it is left out. */
  readonly least: number;
  /** It grows to this before anything more is begun, and to the most after. */
  readonly usual: number;
  readonly most: number;
  /** What a minute more of it is worth beside the others. */
  readonly worth: number;
  /** It begins only with, and as soon as, the block before it: the goalkeeper's warm-up with the shots that need it. */
  readonly withNext?: boolean;
}

/**
 * How long each block is when there are so many halves of a minute; 0 for what is left out. First the `core` gets its least, in this order; then it grows by worth to
 * what is usual; then the `more` begin, in their order; then all grow by worth to their most.
 *
 * It is one sequence of steps that more time only goes further along: more time never gives less of anything. What is left where the next step does not fit is
 * free. Growth goes by Webster's method (`apportion`). RangeError for a time that is no whole number from 0.
 */
export function fitBlocks(
  halves: number,
  core: readonly BlockTime[],
  more: readonly BlockTime[] = [],
): { readonly core: readonly number[]; readonly more: readonly number[]; readonly free: number } {
  if (!Number.isInteger(halves) || halves < 0) throw new RangeError(`invalid time: ${halves} (expected 0 and more)`);
  const all = [...core, ...more];
  const got = all.map(() => 0);
  let free = halves;
  const take = (at: number, time: number): void => {
    got[at]! += time;
    free -= time;
  };
  const begin = (from: number, to: number): boolean => {
    for (let at = from; at < to; at++) {
      const group = groupAt(all, at, to);
      const least = group.reduce((sum, one) => sum + all[one]!.least, 0);
      if (least > free) return false;
      for (const one of group) take(one, all[one]!.least);
      at += group.length - 1;
    }
    return true;
  };
  const grow = (limit: 'usual' | 'most'): boolean => {
    for (;;) {
      const next = nextToGrow(all, got, limit);
      if (next < 0) return true;
      if (free < 1) return false;
      take(next, 1);
    }
  };
  // Each stage is gone into only when the one before it was gone through.
  const stages = [
    () => begin(0, core.length),
    () => grow('usual'),
    () => begin(core.length, all.length),
    () => grow('most'),
  ];
  stages.every((isThrough) => isThrough());
  return { core: got.slice(0, core.length), more: got.slice(core.length), free };
}

/** The blocks that begin together with the one at `at`, itself the first. */
function groupAt(all: readonly BlockTime[], at: number, to: number): readonly number[] {
  const group = [at];
  while (all[group.at(-1)!]!.withNext === true && group.at(-1)! + 1 < to) group.push(group.at(-1)! + 1);
  return group;
}

/** Of those that have begun and may still grow the one with the highest worth / (2 x grown + 1); of equals the first; -1 for none. */
function nextToGrow(all: readonly BlockTime[], got: readonly number[], limit: 'usual' | 'most'): number {
  let best = -1;
  let highest = Number.NEGATIVE_INFINITY;
  for (const [at, block] of all.entries()) {
    if (got[at] === 0 || got[at]! >= block[limit]) continue;
    const priority = block.worth / (2 * (got[at]! - block.least) + 1);
    if (priority <= highest) continue;
    best = at;
    highest = priority;
  }
  return best;
}

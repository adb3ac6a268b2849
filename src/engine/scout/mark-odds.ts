/** How far marks lie from men, and how often they do not belong to any. Yards and shares. */
export interface MarkSpread {
  /** Standard deviation of a mark from where the man was, along each axis. */
  readonly error: number;
  /** The same of a man from where a rehearsal has him. */
  readonly model: number;
  /** Share of men who are somewhere else altogether: a man who lost his way, a mark set on the wrong man. */
  readonly astray: number;
  /** How much wider those lie. */
  readonly astrayTimes: number;
  /** Share of men who are not marked, when the number of marks says nothing else. */
  readonly missing: number;
  /** Marks that belong to nobody, on average a moment. */
  readonly extra: number;
}

/** Ground on which a mark that belongs to nobody may lie, square yards: 30 by 20 in front of the goal. */
const ground = 600;

/** The widest subset of defenders that is kept apart: six of them. */
const mostSubsets = 64;

const now = new Float64Array(mostSubsets);
const next = new Float64Array(mostSubsets);

/**
 * How likely these marks are when the men are at these places, whoever of them each mark is: the sum over every way to give marks to men, with men who were not
 * marked and marks that belong to nobody. A density, so only its ratios say anything.
 *
 * The multi-Bernoulli with clutter of the tracking of many targets (Mahler 2007, Statistical Multisource-Multitarget Information Fusion, 12; from memory), summed
 * exactly over subsets of the men. `places` holds `men` men from `from` on, x and y each; `marks` x and y each; `leftOut` is a mark that counts as not set, or -1.
 */
export function oddsOfMarks(
  marks: Float64Array,
  leftOut: number,
  places: Float64Array,
  from: number,
  men: number,
  spread: MarkSpread,
): number {
  const subsets = 1 << men;
  const narrow = spread.error * spread.error + spread.model * spread.model;
  const wide = narrow * spread.astrayTimes * spread.astrayTimes;
  const narrowTop = ((1 - spread.astray) * (1 - spread.missing)) / (2 * Math.PI * narrow);
  const wideTop = (spread.astray * (1 - spread.missing)) / (2 * Math.PI * wide);
  const nobody = spread.extra / ground;
  now.fill(0, 0, subsets);
  now[0] = 1;
  for (let mark = 0; mark < marks.length / 2; mark++) {
    if (mark === leftOut) continue;
    for (let subset = 0; subset < subsets; subset++) next[subset] = now[subset]! * nobody;
    for (let man = 0; man < men; man++) {
      const dx = marks[2 * mark]! - places[from + 2 * man]!;
      const dy = marks[2 * mark + 1]! - places[from + 2 * man + 1]!;
      const square = dx * dx + dy * dy;
      const odds = narrowTop * Math.exp(-square / (2 * narrow)) + wideTop * Math.exp(-square / (2 * wide));
      const bit = 1 << man;
      for (let subset = 0; subset < subsets; subset++) {
        if ((subset & bit) === 0) next[subset | bit]! += now[subset]! * odds;
      }
    }
    now.set(next.subarray(0, subsets));
  }
  let sum = 0;
  for (let subset = 0; subset < subsets; subset++) sum += now[subset]! * spread.missing ** (men - bitsOf(subset));
  return sum;
}

function bitsOf(subset: number): number {
  let bits = 0;
  for (let rest = subset; rest > 0; rest >>= 1) bits += rest & 1;
  return bits;
}

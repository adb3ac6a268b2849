/** One of those among whom whole things are shared out. */
export interface Claim {
  /** What it is worth beside the others, 0 and more. */
  readonly worth: number;
  /** It gets so many before anybody gets more. Whole, 0 and more. */
  readonly least: number;
  /** And never more than this; without end when absent. */
  readonly most?: number;
}

/**
 * Shares `total` whole things out by worth: first everybody gets his least, the worthiest first, then the rest goes by Webster's method, one at a time to
 * whoever has the highest worth / (2 x got + 1). In the order of the claims; the sum is `total` unless nobody may have more.
 *
 * Not by largest remainders: with these, one rep more for all can take a rep away from somebody (the Alabama paradox), and then more practice would mean less
 * of something. Source: M. Balinski, H. P. Young, Fair Representation (1982), chapters 5 and 9. RangeError for a total that is no whole number from 0.
 */
export function apportion(total: number, claims: readonly Claim[]): readonly number[] {
  if (!Number.isInteger(total) || total < 0) throw new RangeError(`invalid total: ${total} (expected 0 and more)`);
  const got = claims.map(() => 0);
  let left = total;
  const worthiest = claims.map((_, at) => at).sort((a, b) => claims[b]!.worth - claims[a]!.worth || a - b);
  for (const at of worthiest) {
    const first = Math.min(left, capped(claims[at]!.least, claims[at]!));
    got[at] = first;
    left -= first;
  }
  for (; left > 0; left -= 1) {
    const next = nextOf(claims, got);
    if (next < 0) break;
    got[next]! += 1;
  }
  return got;
}

/** Who gets the next one; -1 when nobody may. Of equals the first. */
function nextOf(claims: readonly Claim[], got: readonly number[]): number {
  let best = -1;
  let highest = Number.NEGATIVE_INFINITY;
  for (const [at, claim] of claims.entries()) {
    if (got[at]! >= (claim.most ?? Number.POSITIVE_INFINITY)) continue;
    const priority = Math.max(claim.worth, leastWorth) / (2 * got[at]! + 1);
    if (priority <= highest) continue;
    best = at;
    highest = priority;
  }
  return best;
}

/** What is worth nothing still gets something where nobody is worth anything. Beside goals a man-up it is nothing. */
const leastWorth = 1e-9;

function capped(count: number, { most = Number.POSITIVE_INFINITY }: Claim): number {
  return Math.min(count, most);
}

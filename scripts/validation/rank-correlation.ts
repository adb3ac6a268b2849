/**
 * How alike two rows of numbers are in their order: 1 the same, 0 nothing in common, -1 turned over. Spearman's coefficient; equal numbers share
 * the mean of their places (Spearman 1904, Am. J. Psychology 15:72). `undefined` when one row is all alike, which has no order. RangeError when the lengths differ.
 */
export function rankCorrelation(ones: readonly number[], others: readonly number[]): number | undefined {
  if (ones.length !== others.length) {
    throw new RangeError(`invalid pairs: ${ones.length} against ${others.length} numbers`);
  }
  const [a, b] = [fromMiddle(placesOf(ones)), fromMiddle(placesOf(others))];
  const spread = Math.sqrt(product(a, a) * product(b, b));
  return spread > 0 ? product(a, b) / spread : undefined;
}

/** Place of each number from 0; equal ones share the mean of theirs. */
function placesOf(values: readonly number[]): readonly number[] {
  return values.map((value) => {
    const below = values.filter((other) => other < value).length;
    const alike = values.filter((other) => other === value).length;
    return below + (alike - 1) / 2;
  });
}

function fromMiddle(places: readonly number[]): readonly number[] {
  return places.map((place) => place - (places.length - 1) / 2);
}

function product(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, each, at) => sum + each * b[at]!, 0);
}

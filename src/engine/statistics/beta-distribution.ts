import { logGamma } from './log-gamma.ts';

/**
 * The share of a Beta(a, b) distribution below x: the regularized incomplete beta function.
 *
 * a, b > 0; x from 0 to 1 (included). Absolute error about 1e-14. RangeError otherwise.
 * Source: the continued fraction DLMF 8.17.22 by Lentz's rule, on the side of the mean where it converges fast.
 */
export function betaCdf(x: number, a: number, b: number): number {
  checkShape(a, b);
  if (!(x >= 0 && x <= 1)) throw new RangeError(`invalid share: ${x} (expected 0 to 1)`);
  if (x === 0 || x === 1) return x;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
}

/**
 * The value below which the share p of a Beta(a, b) distribution lies.
 *
 * a, b > 0; p from 0 to 1 (included). Absolute error under 1e-12; RangeError otherwise.
 * Newton's rule inside a bracket that halving keeps.
 */
export function betaQuantile(p: number, a: number, b: number): number {
  checkShape(a, b);
  if (!(p >= 0 && p <= 1)) throw new RangeError(`invalid probability: ${p} (expected 0 to 1)`);
  if (p === 0 || p === 1) return p;
  const logNorm = logGamma(a + b) - logGamma(a) - logGamma(b);
  let [low, high] = [0, 1];
  let x = a / (a + b);
  for (let round = 0; round < mostRounds && high - low > 1e-16; round++) {
    const above = betaCdf(x, a, b) - p;
    if (above === 0) return x;
    if (above > 0) high = x;
    else low = x;
    const density = Math.exp(logNorm + (a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x));
    const next = x - above / density;
    const inside = next > low && next < high;
    const better = inside ? next : (low + high) / 2;
    if (Math.abs(better - x) < 1e-15) return better;
    x = better;
  }
  return x;
}

const mostRounds = 200;

function checkShape(a: number, b: number): void {
  if (!(a > 0 && a < Infinity && b > 0 && b < Infinity)) {
    throw new RangeError(`invalid shape: (${a}, ${b}) (expected numbers above 0)`);
  }
}

function fraction(x: number, a: number, b: number): number {
  // Lentz's rule with a floor that keeps its denominators off zero.
  const floor = 1e-300;
  const guard = (value: number) => (Math.abs(value) < floor ? floor : value);
  let c = 1;
  let d = 1 / guard(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guard(1 + even * d);
    c = guard(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guard(1 + odd * d);
    c = guard(1 + odd / c);
    const factor = d * c;
    result *= factor;
    if (Math.abs(factor - 1) < 1e-16) break;
  }
  return result;
}

import { normalCdf, normalDensity } from './normal-cdf.ts';

/** A bivariate normal: where a shot comes down around its aim. */
export interface Scatter {
  readonly meanX: number;
  readonly meanY: number;
  readonly deviationX: number;
  readonly deviationY: number;
  /** Correlation, -1 to 1, both excluded. */
  readonly correlation: number;
}

export interface Rectangle {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export interface Ellipse {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/**
 * Mass of a bivariate normal over a rectangle (sides may be infinite), to about 1e-12.
 *
 * The integral over x of phi(x) [Phi((top - m(x)) / s) - Phi((bottom - m(x)) / s)], with the conditional mean
 * m = mu_y + rho sy/sx (x - mu_x) and deviation s = sy sqrt(1 - rho^2), by Gauss-Legendre panels.
 * This is the slow exact form; tables and draws use `aim.ts`.
 */
export function rectangleOdds(scatter: Scatter, area: Rectangle): number {
  const from = Math.max((area.left - scatter.meanX) / scatter.deviationX, -tailEdge);
  const to = Math.min((area.right - scatter.meanX) / scatter.deviationX, tailEdge);
  if (to <= from) return 0;
  return integrate(from, to, (z) => normalDensity(z) * conditional(scatter, z, area.bottom, area.top));
}

/**
 * Mass of a bivariate normal over the part of an ellipse that lies in a rectangle, to about 1e-12.
 *
 * With x = cx + a sin t, which takes the roots out of the ends; split where the ellipse crosses the rectangle's edges.
 */
export function ellipseOdds(scatter: Scatter, ellipse: Ellipse, area: Rectangle = everywhere): number {
  const { x, y, halfWidth, halfHeight } = ellipse;
  if (halfWidth <= 0 || halfHeight <= 0) return 0;
  const from = Math.asin(clampUnit((area.left - x) / halfWidth));
  const to = Math.asin(clampUnit((area.right - x) / halfWidth));
  const marks = [from, to];
  for (const edge of [area.bottom, area.top]) {
    const cosine = Math.abs(edge - y) / halfHeight;
    if (cosine < 1) marks.push(-Math.acos(cosine), Math.acos(cosine));
  }
  const inner = marks.filter((mark) => mark >= from && mark <= to).sort((a, b) => a - b);
  const density = (t: number): number => {
    const half = halfHeight * Math.cos(t);
    const bottom = Math.max(y - half, area.bottom);
    const top = Math.min(y + half, area.top);
    if (top <= bottom) return 0;
    const z = (x + halfWidth * Math.sin(t) - scatter.meanX) / scatter.deviationX;
    return ((normalDensity(z) * halfWidth * Math.cos(t)) / scatter.deviationX) * conditional(scatter, z, bottom, top);
  };
  let sum = 0;
  for (let i = 1; i < inner.length; i++) {
    const start = inner[i - 1];
    const end = inner[i];
    if (end > start) sum += integrate(start, end, density);
  }
  return sum;
}

/** The whole plane. */
export const everywhere: Rectangle = {
  left: Number.NEGATIVE_INFINITY,
  right: Number.POSITIVE_INFINITY,
  bottom: Number.NEGATIVE_INFINITY,
  top: Number.POSITIVE_INFINITY,
};

/** Beyond this many deviations nothing is left at double precision. */
const tailEdge = 9;

function conditional(scatter: Scatter, z: number, bottom: number, top: number): number {
  const mean = scatter.meanY + scatter.correlation * scatter.deviationY * z;
  const deviation = scatter.deviationY * Math.sqrt(1 - scatter.correlation * scatter.correlation);
  return normalCdf((top - mean) / deviation) - normalCdf((bottom - mean) / deviation);
}

function clampUnit(value: number): number {
  return Math.min(1, Math.max(-1, value));
}

const panels = 24;

/** Composite 8-point Gauss-Legendre (Abramowitz and Stegun 25.4.30). */
function integrate(from: number, to: number, f: (x: number) => number): number {
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = from + (2 * panel + 1) * half;
    for (let i = 0; i < nodes.length; i++)
      sum += weights[i] * (f(middle - half * nodes[i]) + f(middle + half * nodes[i]));
  }
  return sum * half;
}

const nodes = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const weights = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

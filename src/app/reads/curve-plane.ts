import type { Interval } from '../../engine/index.ts';

/** Where something of a curve is drawn: across in percent of the whole width, down in pixels. */
export interface CurvePlane {
  /** Height of all. Pixels. */
  readonly height: number;
  /** Goals a chance at the upper edge; the lower edge is as far below none. */
  readonly reach: number;
  readonly across: (seconds: number) => string;
  readonly down: (goals: number) => number;
}

/** Pixels above and below the curve, and of the curve. */
const margin = { above: 10, below: 26 };
const tall = 150;
/** Percent of the width at which the first and the last moment lie: the goals are written left of the first. */
const edges = { first: 22, last: 97 };

/** The plane for gains from none to `longest` seconds: none lies in the middle, and the farthest interval still fits. */
export function curvePlane(gains: readonly Interval[], longest: number, least: number): CurvePlane {
  // A whole hundredth, so that what is written at the edges is where it is written.
  const farthest = Math.max(least, ...gains.flatMap(({ low, high }) => [-low, high]));
  const reach = Math.ceil(farthest * 100 - 1e-9) / 100;
  return {
    height: margin.above + tall + margin.below,
    reach,
    across: (seconds) => `${edges.first + ((edges.last - edges.first) * seconds) / longest}%`,
    down: (goals) => margin.above + (tall * (reach - goals)) / (2 * reach),
  };
}

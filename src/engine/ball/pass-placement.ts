/** Where a pass comes down against where it should: yards across and along the way from passer to receiver. */
export interface Placement {
  /** To the right of the way (+x for a pass flying along +y), yd. */
  across: number;
  /** Too long when positive, too short when negative, yd. */
  along: number;
}

export interface PlacementParameters {
  /** Scatter along the axis of the swing over scatter across it. */
  readonly alongOverAcross: number;
  /** Exponent of the growth of scatter with pass speed over the thrower's firm pass, on the along axis only. */
  readonly speedPower: number;
  /** Scatter that does not grow with distance (release point, a man's last step), yd. */
  readonly floor: number;
}

/**
 * Error and scatter of lacrosse passes grow with speed along one axis, that of the swing, and players' skill shows there
 * (Tomioka, Koda and Kida 2025, doi 10.3390/jfmk11010008, abstract). The factors themselves are assumptions.
 */
export const defaultPlacementParameters: PlacementParameters = { alongOverAcross: 1.5, speedPower: 1, floor: 0.1 };

export function createPlacement(): Placement {
  return { across: 0, along: 0 };
}

/**
 * Draws where a pass comes down from two standard normals.
 *
 * `scatter` is the thrower's standard deviation of direction, rad; `speedShare` the pass's speed over his firm pass;
 * `widening` multiplies the scatter (off hand, hurried, on the run; 1 for none).
 */
export function drawPlacementInto(
  out: Placement,
  distance: number,
  scatter: number,
  speedShare: number,
  widening: number,
  normalAcross: number,
  normalAlong: number,
  parameters: PlacementParameters = defaultPlacementParameters,
): void {
  out.across = normalAcross * acrossScatter(distance, scatter, widening, parameters);
  out.along = normalAlong * alongScatter(distance, scatter, speedShare, widening, parameters);
}

/** Mean square of the placement error, yd2: what a carrier who decides can expect of himself. */
export function meanSquareError(
  distance: number,
  scatter: number,
  speedShare: number,
  widening: number,
  parameters: PlacementParameters = defaultPlacementParameters,
): number {
  const across = acrossScatter(distance, scatter, widening, parameters);
  const along = alongScatter(distance, scatter, speedShare, widening, parameters);
  return across * across + along * along;
}

function acrossScatter(distance: number, scatter: number, widening: number, parameters: PlacementParameters): number {
  const angular = scatter * widening * Math.max(0, distance);
  return Math.sqrt(parameters.floor * parameters.floor + angular * angular);
}

function alongScatter(
  distance: number,
  scatter: number,
  speedShare: number,
  widening: number,
  parameters: PlacementParameters,
): number {
  const growth = Math.max(0, speedShare) ** parameters.speedPower;
  return acrossScatter(distance, scatter, widening * growth, parameters) * parameters.alongOverAcross;
}

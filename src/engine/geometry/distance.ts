/** Distance between (ax, ay) and (bx, by), yd. The plain root: no field is so large that a square overflows. */
export function distance(ax: number, ay: number, bx: number, by: number): number {
  const x = bx - ax;
  const y = by - ay;
  return Math.sqrt(x * x + y * y);
}

/** Square of the distance between (ax, ay) and (bx, by), yd^2, for comparisons. */
export function distanceSquared(ax: number, ay: number, bx: number, by: number): number {
  const x = bx - ax;
  const y = by - ay;
  return x * x + y * y;
}

import { samePlaceSquared } from '../tolerance.ts';

/**
 * How far along the segment from (ax, ay) to (bx, by) the point nearest to (x, y) lies: 0 at a, 1 at b, both included.
 *
 * A segment without length answers 0.
 */
export function nearestOnSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const alongX = bx - ax;
  const alongY = by - ay;
  const squared = alongX * alongX + alongY * alongY;
  if (!(squared > samePlaceSquared)) return 0;
  const share = ((x - ax) * alongX + (y - ay) * alongY) / squared;
  return Math.min(1, Math.max(0, share));
}

/** Distance from (x, y) to the segment from (ax, ay) to (bx, by), yd. */
export function distanceToSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const share = nearestOnSegment(x, y, ax, ay, bx, by);
  const awayX = x - ax - share * (bx - ax);
  const awayY = y - ay - share * (by - ay);
  return Math.sqrt(awayX * awayX + awayY * awayY);
}

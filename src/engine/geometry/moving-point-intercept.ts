/**
 * The first time at which a runner from (x, y) at a constant speed can meet a point that moves in a straight line, s.
 *
 * The point is at (pointX, pointY) now and moves at (velocityX, velocityY); `speed` >= 0, yd/s. Infinity when he never can.
 * The smallest t >= 0 of |point - runner + velocity t| = speed t: a quadratic, solved in the form that keeps its digits
 * when the speeds are nearly equal. From (7.5, 2) at 5 against a ball at (15, 0) from the origin: 0.439389.
 */
export function interceptTime(
  x: number,
  y: number,
  speed: number,
  pointX: number,
  pointY: number,
  velocityX: number,
  velocityY: number,
): number {
  const awayX = pointX - x;
  const awayY = pointY - y;
  const gap = awayX * awayX + awayY * awayY;
  if (gap === 0) return 0;
  const half = awayX * velocityX + awayY * velocityY;
  const spare = velocityX * velocityX + velocityY * velocityY - speed * speed;
  const discriminant = half * half - spare * gap;
  if (!(discriminant >= 0)) return Infinity;
  const root = Math.sqrt(discriminant);
  // t = gap / (-half +- root): the other form of the quadratic's roots, with no division by `spare`.
  const soonest = -half + root;
  const other = -half - root;
  if (spare >= 0) return soonest > 0 ? gap / soonest : Infinity;
  return soonest > 0 ? gap / soonest : gap / other;
}

/**
 * The angle that the goal's mouth fills as seen from (x, y), rad: 0 on the goal line outside the pipes, pi between them.
 *
 * `width` is the goal's, 2 yd when absent. The same from behind the goal as from in front, since pipes hide nothing;
 * that no shot scores from there is the shot model's business. From 10 yd straight in front: 0.199.
 *
 * The angle between the lines to the two pipes: atan2 of cross and dot product, width y over x^2 + y^2 - width^2 / 4.
 */
export function goalMouthAngle(x: number, y: number, width = 2): number {
  return Math.atan2(width * Math.abs(y), x * x + y * y - (width * width) / 4);
}

/** The keeper's arc: half an ellipse from pipe to pipe in front of the goal line. */
export interface KeeperArc {
  /** Half-width along the goal line, yd: hugging a pipe he still has his body inside it. */
  readonly halfWidth: number;
  /** Distance off the goal line with the ball in front, yd. */
  readonly depth: number;
  /** Distance off the goal line with the ball behind, yd. */
  readonly depthBehind: number;
}

/** Common practice, no source: about a yard off the line in front, on the line for a ball behind. */
export const defaultKeeperArc: KeeperArc = { halfWidth: 0.8, depth: 1.05, depthBehind: 0.3 };

/**
 * Where the keeper wants to stand for a ball at (ballX, ballY), written to out[offset], out[offset + 1], yd.
 *
 * On the line from the ball to the middle of the goal, at the arc; the arc shrinks to the goal line as the ball goes behind.
 */
export function keeperSpotInto(
  out: Float64Array,
  offset: number,
  ballX: number,
  ballY: number,
  arc: KeeperArc = defaultKeeperArc,
): void {
  const distance = Math.sqrt(ballX * ballX + ballY * ballY);
  const sine = distance === 0 ? 0 : ballX / distance;
  const cosine = distance === 0 ? 1 : Math.max(0, ballY / distance);
  out[offset] = arc.halfWidth * sine;
  out[offset + 1] = arc.depthBehind + (arc.depth - arc.depthBehind) * cosine;
}

/**
 * How far the keeper is from where he wants to be, seen from the shooter, yd: positive when he stands too far to +x
 * of the line from the ball to his spot.
 */
export function keeperLag(
  keeperX: number,
  keeperY: number,
  ballX: number,
  ballY: number,
  arc: KeeperArc = defaultKeeperArc,
): number {
  const distance = Math.sqrt(ballX * ballX + ballY * ballY);
  if (distance === 0) return 0;
  const sine = ballX / distance;
  const cosine = ballY / distance;
  const x = keeperX - arc.halfWidth * sine;
  const y = keeperY - (arc.depthBehind + (arc.depth - arc.depthBehind) * Math.max(0, cosine));
  return x * cosine - y * sine;
}

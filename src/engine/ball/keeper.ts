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
 * Where the keeper wants to stand for a ball at (ballX, ballY), written to out[0] and out[1], yd.
 *
 * On the line from the ball to the middle of the goal, at the arc; the arc shrinks to the goal line as the ball goes behind.
 */
export function keeperPlaceInto(
  out: Float64Array,
  ballX: number,
  ballY: number,
  arc: KeeperArc = defaultKeeperArc,
): void {
  out[0] = ballX;
  out[1] = ballY;
  turnToKeeperPlace(out, arc);
}

/** The same in place: `place` is where the ball is, and then where he wants to stand for it. No number crosses the call. */
export function turnToKeeperPlace(place: Float64Array, arc: KeeperArc = defaultKeeperArc): void {
  const distance = Math.sqrt(place[0] * place[0] + place[1] * place[1]);
  const sine = distance === 0 ? 0 : place[0] / distance;
  const cosine = distance === 0 ? 1 : place[1] / distance;
  const along = alongLine(sine, cosine, arc);
  place[0] = along * sine;
  place[1] = Math.max(arc.depthBehind, along * cosine);
}

/** The same of the shot in `query`, from the keeper's place at `at` in `motion`: no number crosses the call. */
export function lagInto(
  query: { readonly x: number; readonly y: number; keeperLag: number },
  motion: Float64Array,
  at: number,
): void {
  query.keeperLag = keeperLag(motion[at], motion[at + 1], query.x, query.y);
}

/**
 * How far the keeper is off his place, across the line of a shot from the ball, yd.
 *
 * Positive when he stands too far to the side the ball is not on (he trails a ball that came across), negative when he
 * has gone too far; with the ball straight in front there is no far side and it is the plain distance across.
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
  const along = alongLine(sine, cosine, arc);
  const offX = keeperX - along * sine;
  const offY = keeperY - Math.max(arc.depthBehind, along * cosine);
  const across = offX * cosine - offY * sine;
  if (ballX === 0) return Math.abs(across);
  return ballX > 0 ? -across : across;
}

/** Where the line from the middle of the goal to the ball meets the arc; with the ball behind, its share of the half-width. */
function alongLine(sine: number, cosine: number, arc: KeeperArc): number {
  if (cosine <= 0) return arc.halfWidth;
  const a = sine / arc.halfWidth;
  const b = cosine / arc.depth;
  return 1 / Math.sqrt(a * a + b * b);
}

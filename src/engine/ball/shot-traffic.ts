/** What stands in the way of a shot; overwritten by `shotTrafficInto`. */
export interface ShotTraffic {
  /** Odds that a body or stick stops the ball, 0 to 1. */
  block: number;
  /** Share of the shooter's fan behind which the keeper cannot see the release, 0 to 1. */
  screen: number;
  /** Odds that it is this agent who stops it; agents outside the range get 0. */
  readonly block_byAgent: Float64Array;
}

export interface ShotTrafficParameters {
  /** Half-width of a body, yd. */
  readonly bodyHalfWidth: number;
  /** Odds that a ball that comes at a body, or at the stick beside it, is stopped. */
  readonly bodyStops: number;
  readonly stickStops: number;
  /** Share of the stick's reach that is up beside the body. */
  readonly stickShare: number;
  /** A man nearer than this to the shooter is shot around, yd. */
  readonly shotAround: number;
}

/** All assumptions: no source counts blocked shots (docs/models/shot.md). */
export const defaultShotTrafficParameters: ShotTrafficParameters = {
  bodyHalfWidth: 0.35,
  bodyStops: 0.12,
  stickStops: 0.03,
  stickShare: 0.45,
  shotAround: 0.75,
};

export function createShotTraffic(agents: number): ShotTraffic {
  return { block: 0, screen: 0, block_byAgent: new Float64Array(agents) };
}

/**
 * Odds that a shot from (x, y) is blocked, by whom, and how much of its release is hidden from the keeper.
 *
 * The fan of shots opens from the stick to the pipes. At a man's distance his body, and the stick beside it, cover a share
 * of the fan; covered balls are stopped with the odds of body or stick. The fan is at least a body wide, so that a man is
 * never a wall. `motion` holds x, y, vx, vy per agent; `first` included to `end` excluded.
 */
export function shotTrafficInto(
  out: ShotTraffic,
  x: number,
  y: number,
  motion: Float64Array,
  stickReach_byAgent: Float64Array,
  first: number,
  end: number,
  parameters: ShotTrafficParameters = defaultShotTrafficParameters,
): void {
  out.block_byAgent.fill(0);
  out.block = 0;
  out.screen = 0;
  const distance = Math.sqrt(x * x + y * y);
  if (distance === 0 || y <= 0) return;
  let through = 1;
  let seen = 1;
  let odds = 0;
  for (let agent = first; agent < end; agent++) {
    const toX = motion[agent * 4] - x;
    const toY = motion[agent * 4 + 1] - y;
    const along = -(toX * x + toY * y) / distance;
    if (along <= parameters.shotAround || along >= distance) continue;
    const across = Math.abs(toX * y - toY * x) / distance;
    const fan = Math.max(parameters.bodyHalfWidth, (along / distance) * (y / distance));
    const body = coveredShare(across, parameters.bodyHalfWidth, fan);
    const wide = parameters.bodyHalfWidth + parameters.stickShare * stickReach_byAgent[agent];
    const stick = coveredShare(across, wide, fan) - body;
    const stops = body * parameters.bodyStops + stick * parameters.stickStops;
    out.block_byAgent[agent] = stops;
    odds += stops;
    through *= 1 - stops;
    seen *= 1 - body;
  }
  out.screen = 1 - seen;
  if (odds === 0) return;
  out.block = 1 - through;
  for (let agent = first; agent < end; agent++) out.block_byAgent[agent] *= out.block / odds;
}

/** Share of the fan [-fan, fan] that lies within `half` of `across`. */
function coveredShare(across: number, half: number, fan: number): number {
  const from = Math.max(-fan, across - half);
  const to = Math.min(fan, across + half);
  return to > from ? (to - from) / (2 * fan) : 0;
}

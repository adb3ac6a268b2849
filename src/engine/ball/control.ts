/** One team's men who race for the ball: when each can be there, and how fast he then takes it. */
export interface ControlSide {
  /** Earliest arrival at the ball's place, s; a function of time when the ball moves. */
  readonly arrivals: readonly ((time: number) => number)[];
  /** Rate at which a man who is there takes control, 1/s. */
  readonly rate: number;
  /** Before this time the side cannot take the ball, s (a receiver waits for it). */
  readonly from?: number;
}

export interface ControlOdds {
  readonly attack: number;
  readonly defence: number;
}

/**
 * Odds that each side takes control of a ball: Spearman's pitch control, general and exact, for checks against the literature.
 *
 * dP_i/dT = (1 - sum P) f_i(T) lambda_i with f_i = 1 / (1 + exp(-pi / (sqrt3 sigma) (T - tau_i))) (Spearman et al. 2017;
 * Spearman 2018), from `start` to `start + horizon`. Solved in its survival form P_i = integral of
 * lambda_i f_i exp(-sum of lambda f so far), by Simpson's rule in steps of `controlStep`. It allocates; the hot loop uses `laneInto`.
 */
export function controlOdds(
  attack: ControlSide,
  defence: ControlSide,
  sigma: number,
  start: number,
  horizon = 10,
): ControlOdds {
  const sharpness = Math.PI / (Math.sqrt(3) * sigma);
  // A side that must wait starts on a step's edge, so that no step straddles the jump.
  const edges = [start, attack.from ?? start, defence.from ?? start, start + horizon].sort((a, b) => a - b);
  let hazardSoFar = 0;
  let won = 0;
  let lost = 0;
  for (let part = 1; part < edges.length; part++) {
    const from = Math.max(start, edges[part - 1]);
    const to = Math.min(start + horizon, edges[part]);
    if (to <= from) continue;
    const steps = Math.max(1, Math.ceil((to - from) / controlStep));
    const step = (to - from) / steps;
    const during = (from + to) / 2;
    const ours = (time: number) => sideRate(attack, sharpness, time, during);
    const theirs = (time: number) => sideRate(defence, sharpness, time, during);
    let a0 = ours(from);
    let d0 = theirs(from);
    for (let i = 0; i < steps; i++) {
      const time = from + i * step;
      const a1 = ours(time + step / 2);
      const d1 = theirs(time + step / 2);
      const a2 = ours(time + step);
      const d2 = theirs(time + step);
      // Hazard gained by the middle and by the end of the step, both of third order or better.
      const half = (step / 24) * (5 * (a0 + d0) + 8 * (a1 + d1) - (a2 + d2));
      const full = (step / 6) * (a0 + d0 + 4 * (a1 + d1) + a2 + d2);
      const s0 = Math.exp(-hazardSoFar);
      const s1 = Math.exp(-hazardSoFar - half);
      const s2 = Math.exp(-hazardSoFar - full);
      won += (step / 6) * (a0 * s0 + 4 * a1 * s1 + a2 * s2);
      lost += (step / 6) * (d0 * s0 + 4 * d1 * s1 + d2 * s2);
      hazardSoFar += full;
      a0 = a2;
      d0 = d2;
    }
  }
  return { attack: won, defence: lost };
}

/** Arrival by the tutorial's rule: straight on for the reaction time, then at top speed (the models' common simplification). */
export function simpleArrival(
  x: number,
  y: number,
  vx: number,
  vy: number,
  targetX: number,
  targetY: number,
  reaction: number,
  topSpeed: number,
): number {
  const dx = targetX - x - vx * reaction;
  const dy = targetY - y - vy * reaction;
  return reaction + Math.sqrt(dx * dx + dy * dy) / topSpeed;
}

const controlStep = 0.005;

function sideRate(side: ControlSide, sharpness: number, time: number, during: number): number {
  if (during < (side.from ?? Number.NEGATIVE_INFINITY)) return 0;
  let sum = 0;
  for (const arrival of side.arrivals) sum += 1 / (1 + Math.exp(-sharpness * (time - arrival(time))));
  return sum * side.rate;
}

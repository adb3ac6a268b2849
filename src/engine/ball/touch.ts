import { type Lane, laneSamples } from './lane.ts';

/** The first stick on a thrown ball. */
export interface Touch {
  /** Agent whose stick it was; -1 when the ball gets through. */
  by: number;
  /** Time since release, s; the flight time when it gets through. */
  time: number;
  /** Where, yd; the target when it gets through. */
  x: number;
  y: number;
}

export function createTouch(): Touch {
  return { by: -1, time: 0, x: 0, y: 0 };
}

/**
 * Draws the first touch from a lane, exactly as its hazard says: in time order, each sample's touches shared by whose they are.
 *
 * `uniform` is one draw from 0 (included) to 1 (excluded). The ball gets through for the top `completion` of the draws.
 */
export function drawTouchInto(out: Touch, lane: Lane, uniform: number): void {
  let survived = 1;
  for (let sample = 0; sample < laneSamples; sample++) {
    const total = touchesAt(lane, sample);
    if (total === 0) continue;
    const next = survived * Math.exp(-total);
    if (1 - next > uniform) {
      settle(out, lane, sample, ((uniform - (1 - survived)) / (survived - next)) * total);
      return;
    }
    survived = next;
  }
  out.by = -1;
  out.time = lane.time;
  out.x = lane.toX;
  out.y = lane.toY;
}

/**
 * Odds that each agent is the first to touch the ball, written to `touch_byAgent` (one entry per agent; agents outside
 * the lane's range get 0). Together with the completion they sum to 1.
 */
export function touchOddsInto(touch_byAgent: Float64Array, lane: Lane): void {
  touch_byAgent.fill(0);
  let survived = 1;
  for (let sample = 0; sample < laneSamples; sample++) {
    const total = touchesAt(lane, sample);
    if (total === 0) continue;
    const next = survived * Math.exp(-total);
    for (let agent = lane.first; agent < lane.end; agent++) {
      touch_byAgent[agent] += ((survived - next) * touchesOf(lane, agent, sample)) / total;
    }
    survived = next;
  }
}

function settle(out: Touch, lane: Lane, sample: number, mark: number): void {
  let by = -1;
  let sum = 0;
  for (let agent = lane.first; agent < lane.end; agent++) {
    const touches = touchesOf(lane, agent, sample);
    if (touches === 0) continue;
    by = agent;
    sum += touches;
    if (sum > mark) break;
  }
  const share = lane.distance_bySample[sample] / lane.length;
  out.by = by;
  out.time = lane.time_bySample[sample];
  out.x = lane.fromX + (lane.toX - lane.fromX) * share;
  out.y = lane.fromY + (lane.toY - lane.fromY) * share;
}

function touchesAt(lane: Lane, sample: number): number {
  let total = 0;
  for (let agent = lane.first; agent < lane.end; agent++) total += touchesOf(lane, agent, sample);
  return total;
}

function touchesOf(lane: Lane, agent: number, sample: number): number {
  if (sample < lane.windowFirst_byAgent[agent] || sample >= lane.windowEnd_byAgent[agent]) return 0;
  return lane.touches_byAgentSample[agent * laneSamples + sample];
}

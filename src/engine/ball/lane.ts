import { dragPerYard, flightTime, speedForTime, timeForArch } from './flight.ts';

/** What the lane needs to know about each agent; one entry per agent, same numbering as the motion array. */
export interface LaneMovers {
  /** Top speed of the drag model, yd/s. */
  readonly topSpeed_byAgent: Float64Array;
  /** Drag constant, 1/s. */
  readonly drag_byAgent: Float64Array;
  /** Delay from release to the first move that answers it, s. */
  readonly reaction_byAgent: Float64Array;
  /** Distance from body centre at which the stick can touch the ball, yd. */
  readonly stickReach_byAgent: Float64Array;
}

export interface LaneParameters {
  /** Touches per second of a stick that has the ball well inside its reach, 1/s. */
  readonly touchRate: number;
  /** How far inside the stick's utmost reach the ball must be for the full rate, yd. */
  readonly touchDepth: number;
  /** A man in the very way of the ball: touches per second when it would go through his middle, 1/s, and how far from it none are left, yd. */
  readonly bodyRate: number;
  readonly bodyReach: number;
  /** Share of the stick's reach that is covered before its owner has reacted, 0 to 1. */
  readonly heldShare: number;
  /** Time for the stick to go from where it is held to its utmost reach, s. */
  readonly swing: number;
  /** No stick can be on the ball in the first yards of its flight: the passer steps and throws around, yd. */
  readonly releaseClear: number;
  /** In the last yards the receiver's own stick is between: who stands there is traffic at the catch, yd. */
  readonly catchClear: number;
  /** A man this far behind the passer or beyond the receiver no longer counts; in between he fades, yd. */
  readonly endFade: number;
  /** How far a lob rises above the sticks' level at its top, yd. */
  readonly lobRise: number;
  /** What a stick's overhead reach above the level of a flat pass falls short of its sideways reach, yd. */
  readonly overheadLoss: number;
}

/** Defaults; what each was fitted to or assumed from stands in docs/models/lane.md. */
export const defaultLaneParameters: LaneParameters = {
  touchRate: 6,
  touchDepth: 2.5,
  bodyRate: 20,
  bodyReach: 0.6,
  heldShare: 0.5,
  swing: 0.15,
  releaseClear: 3,
  catchClear: 1,
  endFade: 1,
  lobRise: 2.1,
  overheadLoss: 0.7,
};

/** Points along the flight at which sticks are looked for; chosen by measurement (docs/models/lane.md). */
export const laneSamples = 12;

/** A pass's way through the sticks: made once by `createLane`, overwritten by every `laneInto`. */
export interface Lane {
  /** Odds that no defender gets a stick on the ball, 0 to 1; 0 for a ball without speed, which never arrives. */
  completion: number;
  /** Expected touches of all defenders over the flight. */
  touches: number;
  /** Flight time, s. */
  time: number;
  /** Length of the way, yd, and speed at release, yd/s (less than asked for when lobbed). */
  length: number;
  speed: number;
  fromX: number;
  fromY: number;
  toX: number;
  toY: number;
  /** Head start of the defenders, s. */
  readAhead: number;
  /** First agent and one past the last agent that were looked at. */
  first: number;
  end: number;
  /** Distance flown at each sample, yd. */
  readonly distance_bySample: Float64Array;
  /** Time since release at each sample, s. */
  readonly time_bySample: Float64Array;
  /** Height above the sticks' level at each sample, yd. */
  readonly rise_bySample: Float64Array;
  /** Expected touches by each agent in each sample: agent * laneSamples + sample; only inside the agent's window. */
  readonly touches_byAgentSample: Float64Array;
  /** First sample of each agent's window and one past its last; equal when he cannot touch the ball. */
  readonly windowFirst_byAgent: Int32Array;
  readonly windowEnd_byAgent: Int32Array;
}

export function createLane(agents: number): Lane {
  return {
    completion: 1,
    touches: 0,
    time: 0,
    length: 0,
    speed: 0,
    fromX: 0,
    fromY: 0,
    toX: 0,
    toY: 0,
    readAhead: 0.5,
    first: 0,
    end: 0,
    distance_bySample: new Float64Array(laneSamples),
    time_bySample: new Float64Array(laneSamples),
    rise_bySample: new Float64Array(laneSamples),
    touches_byAgentSample: new Float64Array(laneSamples * agents),
    windowFirst_byAgent: new Int32Array(agents),
    windowEnd_byAgent: new Int32Array(agents),
  };
}

/**
 * Odds that a pass gets through the defenders' sticks, from one integral of touch hazard along its flight.
 *
 * The same numbers serve the carrier who decides (with what he perceives in `motion`) and, at release, the draw of the
 * pass's fate (`drawTouchInto`, with the truth). A touch is a stick on the ball, caught or not.
 *
 * A defender keeps his velocity until he has reacted; from then on he can be anywhere in the disc of the drag model,
 * centre r + v phi, radius V (t - phi), phi = (1 - e^{-at}) / a (Fujimura and Sugihara 2005, doi 10.1002/scj.20254),
 * and his stick goes out to its reach. Where the ball is inside, touches come at `touchRate` times the cube of the
 * depth, and at `bodyRate` more where it would have to go through himself. Completion = e^{-integral}, as in path-integrated pass models (Spearman et al. 2017).
 *
 * `motion` holds x, y, vx, vy per agent; agents `first` (included) to `end` (excluded) are looked at.
 * `readAhead` is the head start of defenders who saw the pass coming, s (0 for none).
 */
export function laneInto(
  out: Lane,
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
  speed: number,
  lob: boolean,
  motion: Float64Array,
  movers: LaneMovers,
  first: number,
  end: number,
  readAhead: number,
  parameters: LaneParameters = defaultLaneParameters,
): void {
  layFlight(out, fromX, fromY, toX, toY, speed, lob, parameters);
  out.readAhead = readAhead;
  out.first = first;
  out.end = end;
  out.touches = 0;
  for (let agent = first; agent < end; agent++) addTouches(out, agent, motion, movers, parameters);
  if (!(out.time < Number.POSITIVE_INFINITY)) out.completion = 0;
  else out.completion = out.touches === 0 ? 1 : Math.exp(-out.touches);
}

/** Where the ball is at each sample: equal times between leaving the passer's own room and reaching the receiver's. */
function layFlight(
  out: Lane,
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
  speed: number,
  lob: boolean,
  parameters: LaneParameters,
): void {
  const dx = toX - fromX;
  const dy = toY - fromY;
  const length = Math.sqrt(dx * dx + dy * dy);
  let time = flightTime(length, speed);
  if (lob) time = Math.max(time, timeForArch(parameters.lobRise));
  out.fromX = fromX;
  out.fromY = fromY;
  out.toX = toX;
  out.toY = toY;
  out.length = length;
  out.time = time;
  out.speed = lob ? speedForTime(length, time) : speed;

  // With u = k L, the share s of the length flown in the share p of the time is ln(1 + p (e^u - 1)) / u, which no longer
  // holds the speed: samples stay at the same places however fast the ball is, so faster can never look worse.
  const u = dragPerYard * length;
  const clear = length === 0 ? 0 : Math.min(parameters.releaseClear, length / 4) / length;
  const guarded = length === 0 ? 0 : Math.min(parameters.catchClear, length / 4) / length;
  const opens = clear * (1 - ((1 - clear) * u) / 2);
  const closes = 1 - guarded * (1 + ((1 - guarded) * u) / 2);
  const arch = 4 * parameters.lobRise;
  for (let sample = 0; sample < laneSamples; sample++) {
    const p = opens + (closes - opens) * ((sample + 0.5) / laneSamples);
    const bend = p * (1 - p) * u;
    out.distance_bySample[sample] = length * (p + bend * (1 / 2 + ((1 - 2 * p) * u) / 6));
    out.time_bySample[sample] = p * time;
    out.rise_bySample[sample] = lob ? arch * p * (1 - p) : 0;
  }
}

/** Add the expected touches of one defender over the flight; fills his window and his samples. */
function addTouches(
  out: Lane,
  agent: number,
  motion: Float64Array,
  movers: LaneMovers,
  parameters: LaneParameters,
): void {
  out.windowFirst_byAgent[agent] = 0;
  out.windowEnd_byAgent[agent] = 0;
  const length = out.length;
  if (length === 0 || !(out.time < Number.POSITIVE_INFINITY)) return;

  const topSpeed = movers.topSpeed_byAgent[agent];
  const drag = movers.drag_byAgent[agent];
  const reach = movers.stickReach_byAgent[agent];
  const reaction = Math.max(0, movers.reaction_byAgent[agent] - out.readAhead);
  const px = motion[agent * 4] - out.fromX;
  const py = motion[agent * 4 + 1] - out.fromY;
  const vx = motion[agent * 4 + 2];
  const vy = motion[agent * 4 + 3];
  const ux = (out.toX - out.fromX) / length;
  const uy = (out.toY - out.fromY) / length;

  // Where he is when he answers, along the way and across it.
  const cx = px + vx * reaction;
  const cy = py + vy * reaction;
  const along = cx * ux + cy * uy;
  const across = cx * uy - cy * ux;
  const beyond = Math.max(-along, along - length);
  if (beyond >= parameters.endFade) return;
  const fade = beyond > 0 ? 1 - beyond / parameters.endFade : 1;

  // Nothing outside this circle around that place can be touched before the catch: most samples fall out here.
  const moving = Math.max(0, out.time - reaction);
  const phiEnd = (1 - Math.exp(-drag * moving)) / drag;
  const speed = Math.sqrt(vx * vx + vy * vy);
  const bound = Math.max(speed * reaction, speed * phiEnd + topSpeed * (moving - phiEnd)) + reach;
  const chord = bound * bound - across * across;
  if (chord <= 0) return;
  const half = Math.sqrt(chord);
  const distances = out.distance_bySample;
  let sample = 0;
  while (sample < laneSamples && distances[sample] < along - half) sample++;
  out.windowFirst_byAgent[agent] = sample;

  const times = out.time_bySample;
  const step = times[1] - times[0];
  const decay = Math.exp(-drag * step);
  const overhead = Math.max(overheadRoomFloor, reach - parameters.overheadLoss);
  const base = agent * laneSamples;
  const rate = parameters.touchRate * fade * step;
  const perDepth = 1 / parameters.touchDepth;
  let left = -1;
  let touches = 0;
  for (; sample < laneSamples && distances[sample] <= along + half; sample++) {
    const rise = out.rise_bySample[sample];
    if (rise >= overhead) {
      // Over his head: only the running power of e^{-a t} has to keep step.
      if (left > 0) left *= decay;
      out.touches_byAgentSample[base + sample] = 0;
      continue;
    }
    const distance = distances[sample];
    const since = times[sample] - reaction;
    let x: number;
    let y: number;
    let covered: number;
    let share: number;
    if (since <= 0) {
      x = cx + vx * since;
      y = cy + vy * since;
      covered = 0;
      share = parameters.heldShare;
    } else {
      // e^{-a t} goes on by one factor a step: samples are equally spaced in time.
      left = left < 0 ? Math.exp(-drag * since) : left * decay;
      const phi = (1 - left) / drag;
      x = cx + vx * phi;
      y = cy + vy * phi;
      covered = topSpeed * (since - phi);
      share = Math.min(1, parameters.heldShare + ((1 - parameters.heldShare) * since) / parameters.swing);
    }
    const dx = ux * distance - x;
    const dy = uy * distance - y;
    let stick = reach * share;
    if (rise > 0) {
      const lift = rise / overhead;
      stick *= Math.sqrt(1 - lift * lift);
    }
    // Most samples end here: the root is taken only when the ball is inside his reach.
    const room = covered + stick;
    const square = dx * dx + dy * dy;
    let expected = 0;
    if (room > 0 && square < room * room) {
      const inside = Math.min(1, (room - Math.sqrt(square)) * perDepth);
      expected = rate * inside * inside * inside;
    }
    out.touches_byAgentSample[base + sample] = expected;
    touches += expected;
  }
  out.windowEnd_byAgent[agent] = sample;
  out.touches += touches;
  standInTheWay(out, agent, motion, movers, parameters);
}

/**
 * Add the touches of a man through whom the ball would have to go, where it passes him. By the closed form, because the samples lie farther
 * apart than he is wide: the hazard falls in a straight line from `bodyRate` in his middle to nothing at `bodyReach`, and the ball crosses
 * it at `away` yards from his middle.
 */
function standInTheWay(
  out: Lane,
  agent: number,
  motion: Float64Array,
  movers: LaneMovers,
  { bodyRate, bodyReach, overheadLoss }: LaneParameters,
): void {
  const { length, distance_bySample: distances, time_bySample: times } = out;
  const ux = (out.toX - out.fromX) / length;
  const uy = (out.toY - out.fromY) / length;
  const px = motion[agent * 4] - out.fromX;
  const py = motion[agent * 4 + 1] - out.fromY;
  const vx = motion[agent * 4 + 2];
  const vy = motion[agent * 4 + 3];
  const along = px * ux + py * uy;
  let sample = 0;
  while (sample < laneSamples && distances[sample] < along) sample++;
  // In the passer's room and in the receiver's he is thrown around.
  if (sample === 0 || sample === laneSamples) return;
  // Until he has answered he goes on as he went; what he does after that is his stick's business.
  const moved = Math.min(times[sample], Math.max(0, movers.reaction_byAgent[agent] - out.readAhead));
  const away = Math.abs((px + vx * moved) * uy - (py + vy * moved) * ux);
  if (away >= bodyReach) return;
  const half = Math.sqrt(bodyReach * bodyReach - away * away);
  const slope = away > 0 ? away * away * Math.log((bodyReach + half) / away) : 0;
  const crossed = 2 * half - (half * bodyReach + slope) / bodyReach;
  const speed = (distances[sample] - distances[sample - 1]) / (times[sample] - times[sample - 1]);
  const overhead = Math.max(overheadRoomFloor, movers.stickReach_byAgent[agent] - overheadLoss);
  const under = Math.max(0, 1 - out.rise_bySample[sample] / overhead);
  const expected = (bodyRate * crossed * under) / speed;
  const last = out.windowEnd_byAgent[agent] - 1;
  const at = Math.min(last, Math.max(out.windowFirst_byAgent[agent], sample));
  if (at < 0 || last < out.windowFirst_byAgent[agent]) return;
  out.touches_byAgentSample[agent * laneSamples + at] += expected;
  out.touches += expected;
}

/** A stick always gets this far above the level of a flat pass, however short it is, yd (assumption). */
const overheadRoomFloor = 0.4;

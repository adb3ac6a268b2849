import { type DutyBoard, duty } from './duty.ts';

/** What a target needs to know beside the duty; made once per defender and reused. */
export interface TargetParams {
  /** How far out the carrier is met, yards from the middle of the goal. */
  readonly extends: number;
  /** Distance kept from the carrier: about a stick's length, yards. */
  readonly standoff: number;
  /** +1, or -1 when the chance is mirrored: decides ties at x = 0. */
  readonly sense: 1 | -1;
}

// Places a man-down defense teaches, yards (doctrine 3.0 and 3.2; common practice, no source for the yards).
/** Where a defender waits for a ball behind the goal: outside the pipe, just above the goal line. */
export const pipeStand = { x: 2.2, y: 1.2 } as const;
/** A defender who is not locked on never goes lower than this. */
const floor = 0.7;
/** Distance off a man one pass away grows by `perYard` with the ball's distance; a corner at (5, 10) is 4.5 off a wing at (9, 12). */
const sag = { base: 2.5, perYard: 0.15 } as const;
/** A man in front of the goal is played tight, and the allowance grows with his distance from it. */
const tight = { gap: 1.2, within: 6, perYard: 2 } as const;
/** How much the way to the ball counts beside the way to the goal when playing a man. */
const towardBall = 0.6;
/** A splitter sinks to the goal by this share of his distance, more the farther the ball. */
const sink = { base: 0.1, perYard: 0.02, most: 0.5 } as const;
/** A man behind the goal can't shoot: for a splitter he counts as this much farther away. */
const behindDiscount = 8;
/** Body-to-body distance of a lock, and of fronting a crease man. */
const lockGap = 1.2;
const frontGap = 1;
/** A lock man who may cheat to the free man between star and ball goes this share of the way. */
const cheat = 0.25;
/** Part of the ball's lane in which a stick is worth having: not at the passer, not at the catcher. */
const laneFrom = 0.35;
const laneTo = 0.8;
const laneSink = 0.85;
/** Off the ball nobody plays farther out than this much inside the distance at which the ball is met. */
const offBallInside = 1.2;
/** From where on a man counts as at the doorstep, and from where not at all, yards from the goal. */
const doorstep = { full: 5, none: 7 } as const;
/** Closer than this two points are the same place. */
const same = 1e-6;

/**
 * Where the duty of `defender` asks him to be now, written to `out[0]`, `out[1]`, yards.
 *
 * `offense` holds the six attackers as he perceives them (x at 2i, y at 2i+1), `ball` the ball (x, y). A duty without a valid man holds
 * its place (x, y). Mirrors exactly with `params.sense`; never NaN for finite input.
 */
export function targetInto(
  out: Float64Array,
  board: DutyBoard,
  defender: number,
  offense: Float64Array,
  ball: Float64Array,
  params: TargetParams,
): void {
  // From here on places are handed over as arrays and who they are of: a number handed to a function that is not inlined is put on the heap.
  const a = board.a[defender];
  const kind = a < 0 ? duty.place : board.kind[defender];
  switch (kind) {
    case duty.ball:
      meetInto(out, offense, a, sideOfPlace(board, defender), params);
      return;
    case duty.man:
      manInto(out, offense, a, ball, params);
      holdIn(out, params);
      return;
    case duty.split: {
      const b = board.b[defender];
      if (b < 0 || b === a) manInto(out, offense, a, ball, params);
      else splitInto(out, offense, a, b, ball);
      holdIn(out, params);
      return;
    }
    case duty.lane:
      laneInto(out, offense, a, ball, board, defender, params);
      holdIn(out, params);
      return;
    case duty.lock:
      lockInto(out, offense, a, ball, params);
      cheatInto(out, offense, board.b[defender]);
      return;
    case duty.pipe:
      pipeInto(out, offense, a, board, defender);
      return;
    case duty.front:
      frontInto(out, offense, a, ball);
      return;
    default:
      out[0] = board.x[defender];
      out[1] = board.y[defender];
  }
}

/** Stick length off the carrier on his line to the middle of the goal, never past `extends`, never behind the goal. */
function meetInto(out: Float64Array, offense: Float64Array, man: number, pipe: Side, params: TargetParams): void {
  const x = offense[2 * man];
  const y = offense[2 * man + 1];
  if (y < 0) {
    // Nobody chases behind: he waits at the ball-side pipe, or at his own while the carrier is straight behind.
    const side = x > 1.5 ? 1 : x < -1.5 ? -1 : pipe !== 0 ? pipe : params.sense;
    out[0] = side * pipeStand.x;
    out[1] = pipeStand.y;
    return;
  }
  const distance = Math.sqrt(x * x + y * y);
  if (distance < same) {
    setInto(out, 0, floor);
    return;
  }
  // In close he stays between man and goal at half way rather than behind the goal line.
  const off = Math.max(distance - params.standoff, 0.5 * distance);
  const share = Math.min(off, params.extends) / distance;
  setInto(out, x * share, Math.max(y * share, floor));
}

/** Goal side of the man and toward the ball, farther off the farther the ball and the man's shot are. */
function manInto(
  out: Float64Array,
  offense: Float64Array,
  man: number,
  ball: Float64Array,
  params: TargetParams,
): void {
  const x = offense[2 * man];
  const y = offense[2 * man + 1];
  const distance = Math.sqrt(x * x + y * y);
  if (y < 0 || distance < same) {
    // A man behind the goal is played from the pipe that he and the ball are nearer to.
    const side = sideOf(2 * x + ball[0]);
    setInto(out, (side !== 0 ? side : params.sense) * pipeStand.x, pipeStand.y);
    return;
  }
  let bx = ball[0] - x;
  let by = ball[1] - y;
  const ballDistance = Math.sqrt(bx * bx + by * by);
  if (ballDistance < params.standoff) {
    meetInto(out, offense, man, 0, params);
    return;
  }
  bx /= ballDistance;
  by /= ballDistance;
  const gap = Math.min(
    sag.base + sag.perYard * ballDistance,
    tight.gap + tight.perYard * Math.max(0, distance - tight.within),
    0.6 * distance,
  );
  let ux = towardBall * bx - x / distance;
  let uy = towardBall * by - y / distance;
  const length = Math.sqrt(ux * ux + uy * uy); // At least 1 - towardBall, so never zero.
  ux /= length;
  uy /= length;
  setInto(out, x + gap * ux, Math.max(y + gap * uy, floor));
}

/** Between two men, nearer the more dangerous one, sunk to the goal by the ball's distance. */
function splitInto(out: Float64Array, offense: Float64Array, a: number, b: number, ball: Float64Array): void {
  const ax = offense[2 * a];
  const ay = offense[2 * a + 1];
  const bx = offense[2 * b];
  const by = offense[2 * b + 1];
  const weightA = 1 / (2 + Math.sqrt(ax * ax + ay * ay) + (ay < 0 ? behindDiscount : 0));
  const weightB = 1 / (2 + Math.sqrt(bx * bx + by * by) + (by < 0 ? behindDiscount : 0));
  const share = weightA / (weightA + weightB);
  const x = share * ax + (1 - share) * bx;
  const y = share * ay + (1 - share) * by;
  const dx = ball[0] - x;
  const dy = ball[1] - y;
  const keep = 1 - Math.min(sink.most, sink.base + sink.perYard * Math.sqrt(dx * dx + dy * dy));
  setInto(out, keep * x, Math.max(keep * y, pipeStand.y));
}

/** On the ball's way to the man, at the point nearest the defender's own place, a little sunk. */
function laneInto(
  out: Float64Array,
  offense: Float64Array,
  man: number,
  ball: Float64Array,
  board: DutyBoard,
  defender: number,
  params: TargetParams,
): void {
  const ballX = ball[0];
  const ballY = ball[1];
  const dx = offense[2 * man] - ballX;
  const dy = offense[2 * man + 1] - ballY;
  const square = dx * dx + dy * dy;
  if (square < params.standoff * params.standoff) {
    meetInto(out, offense, man, sideOfPlace(board, defender), params);
    return;
  }
  const along = ((board.x[defender] - ballX) * dx + (board.y[defender] - ballY) * dy) / square;
  const share = Math.min(laneTo, Math.max(laneFrom, along));
  setInto(out, laneSink * (ballX + share * dx), Math.max(laneSink * (ballY + share * dy), floor));
}

/** Between man and ball, at arm's length, wherever he goes; a locked man with the ball is met. */
function lockInto(
  out: Float64Array,
  offense: Float64Array,
  man: number,
  ball: Float64Array,
  params: TargetParams,
): void {
  const x = offense[2 * man];
  const y = offense[2 * man + 1];
  const dx = ball[0] - x;
  const dy = ball[1] - y;
  const distance = Math.sqrt(dx * dx + dy * dy);
  if (distance < params.standoff) {
    const own = Math.sqrt(x * x + y * y);
    if (y < 0 || own < same) {
      meetInto(out, offense, man, 0, params);
      return;
    }
    const share = Math.max(own - lockGap, 0.5 * own) / own;
    setInto(out, share * x, share * y);
    return;
  }
  const share = Math.min(lockGap, 0.5 * distance) / distance;
  setInto(out, x + share * dx, y + share * dy);
}

/** A part of the way from where he locks to the man he cheats to. */
function cheatInto(out: Float64Array, offense: Float64Array, toward: number): void {
  if (toward < 0) return;
  out[0] += cheat * (offense[2 * toward] - out[0]);
  out[1] += cheat * (offense[2 * toward + 1] - out[1]);
}

/** At his place, but tight on the man as he comes to the doorstep. */
function pipeInto(out: Float64Array, offense: Float64Array, man: number, board: DutyBoard, defender: number): void {
  const x = offense[2 * man];
  const y = offense[2 * man + 1];
  const placeX = board.x[defender];
  const placeY = board.y[defender];
  const distance = Math.sqrt(x * x + y * y);
  if (y < 0 || distance < same || distance >= doorstep.none) {
    setInto(out, placeX, placeY);
    return;
  }
  const go = Math.min(1, (doorstep.none - distance) / (doorstep.none - doorstep.full));
  const keep = Math.max(distance - 1, 0.7 * distance) / distance;
  setInto(out, placeX + go * (keep * x - placeX), placeY + go * (Math.max(keep * y, floor) - placeY));
}

/** Ball side of the crease man, his stick in the feed's lane. */
function frontInto(out: Float64Array, offense: Float64Array, man: number, ball: Float64Array): void {
  const x = offense[2 * man];
  const y = offense[2 * man + 1];
  const dx = ball[0] - x;
  const dy = ball[1] - y;
  const distance = Math.sqrt(dx * dx + dy * dy);
  if (distance < same) {
    setInto(out, 0.8 * x, Math.max(0.8 * y, floor));
    return;
  }
  const share = Math.min(frontGap, 0.5 * distance) / distance;
  setInto(out, x + share * dx, Math.max(y + share * dy, floor));
}

/** Pull a place off the ball in to what the scheme's size allows. */
function holdIn(out: Float64Array, params: TargetParams): void {
  const most = params.extends - offBallInside;
  const square = out[0] * out[0] + out[1] * out[1];
  if (square <= most * most) return;
  const share = most / Math.sqrt(square);
  setInto(out, share * out[0], Math.max(share * out[1], floor));
}

/** A side of the field, or 0 for the middle, where `sense` decides. */
type Side = 1 | 0 | -1;

function sideOf(x: number): Side {
  return x > 0 ? 1 : x < 0 ? -1 : 0;
}

/** The side of the place that the duty names. */
function sideOfPlace(board: DutyBoard, defender: number): Side {
  return sideOf(board.x[defender]);
}

function setInto(out: Float64Array, x: number, y: number): void {
  out[0] = x;
  out[1] = y;
}

import { defaultCatchParameters, expectedCatchOdds } from '../ball/catch.ts';
import { speedAfter } from '../ball/flight.ts';
import { lagInto } from '../ball/keeper.ts';
import { laneInto } from '../ball/lane.ts';
import { meanSquareError } from '../ball/pass-placement.ts';
import { lookUpShot } from '../ball/shot-table.ts';
import { crossesCage } from '../field/cage.ts';
import { phiAt } from '../people/reach.ts';
import { stepDown, stepIn, stepShare } from './goalward-step.ts';
import { meetPassInto } from './meet-pass.ts';
import { type ChanceModel, timeLeft } from './model.ts';
import type { Options } from './options.ts';
import { continuation } from './parameters.ts';
import type { ShotAhead } from './shot-ahead.ts';
import { isOffHand } from './shot-hand.ts';
import { type ChanceState, stride } from './state.ts';

/** The passer's eyes and wind-up give the defense this much of their reaction for free. Seconds. */
export const telegraph = 0.08;
/**
 * What a carrier reckons with beyond what he sees, because defenders are already on their way when he has seen them: so much more head
 * start for the sticks in the lane, and for the man who comes to the receiver. Seconds. Set so that of the passes into a look that he
 * believes in at .91 about .9 are caught (docs/models/chance.md); without it .87 of those that he believed in at .96.
 */
const laneDoubt = 0.1;
const trafficDoubt = 0.3;

/** A unit that has lost its shot's ball and got it back needs this long to threaten again. Seconds. */
const secondChanceDelay = 6;

/**
 * Weigh what the carrier can do, in the picture `motion` (what he sees, or the truth when looks are measured).
 *
 * A pass is weighed when the receiver's shot, if the ball surely came, would beat going on by more than `margin`, or when his bit in
 * `wanted` is set (bit i for mate i); the others get odds and worth 0: nobody throws them, and most of the time that is most of them. Allocates nothing.
 */
export function weighInto(
  out: Options,
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  motion: Float64Array,
  wanted: number,
  margin: number,
): void {
  const left = timeLeft(model, state);
  out.left = left;
  out.holdValue = continuation(model.parameters, left);
  out.floor = out.holdValue + margin;
  weighShot(out, model, carrier, motion, left);
  for (let mate = 0; mate < 6; mate++) {
    out.value_byMate[mate] = 0;
    out.completion_byMate[mate] = 0;
    out.shotOdds_byMate[mate] = 0;
    out.lob_byMate[mate] = 0;
    if (mate !== carrier) weighPass(out, model, state, carrier, mate, motion, (wanted & (1 << mate)) !== 0);
  }
}

function weighShot(out: Options, model: ChanceModel, carrier: number, motion: Float64Array, left: number): void {
  const x = motion[stride * carrier];
  const y = motion[stride * carrier + 1];
  const release = model.athletes[carrier].shotRelease;
  const step = stepShare(x, y, stepDown);
  const { ahead } = model.scratch;
  ahead.seconds = release;
  // The keeper is judged by where the ball is now, the room by where it will be let go.
  placeShot(ahead, x, y);
  measureLag(ahead, model, motion);
  placeShot(ahead, x * step, y * step);
  measureRush(ahead, model, motion);
  out.shotRush = ahead.shot.rush;
  out.shotOdds = inRange(model, x, y) ? hurriedOdds(ahead, model, carrier) : 0;
  out.shotValue = worthOfShot(model, out.shotOdds, left - release);
  weighStepIn(out, model, carrier, motion, x, y, left);
}

const stepInSeconds = 0.65;

/** What running in and shooting is worth, if everyone closes on him as hard as he can. */
function weighStepIn(
  out: Options,
  model: ChanceModel,
  carrier: number,
  motion: Float64Array,
  x: number,
  y: number,
  left: number,
): void {
  out.stepInValue = 0;
  const share = stepShare(x, y, stepIn);
  if (share === 1 || y < x * lowAngle || y < -x * lowAngle) return;
  if (
    gapAt(model, motion, x * share, y * share, stepInSeconds, model.parameters.freeDistance) <
    model.parameters.pressDistance
  )
    return;
  const release = stepInSeconds + model.athletes[carrier].shotRelease;
  const endX = x * share;
  const endY = y * share;
  const { ahead } = model.scratch;
  ahead.seconds = release;
  placeShot(ahead, endX, endY);
  measureLag(ahead, model, motion);
  measureRush(ahead, model, motion);
  const odds = inRange(model, endX, endY) ? hurriedOdds(ahead, model, carrier) : 0;
  out.stepInValue = worthOfShot(model, odds, left - release);
}

/** From lower than this slope (y over |x|) running in only makes the angle worse. */
const lowAngle = 0.5;

/** Odds of the goal plus what the ball that comes back is worth. */
function worthOfShot(model: ChanceModel, odds: number, timeLeft: number): number {
  const again = model.parameters.keptShare * continuation(model.parameters, timeLeft - secondChanceDelay);
  return odds + (1 - odds) * again;
}

/**
 * Weigh one pass into `out`, in which `weighInto` has weighed the rest of this moment; when it is not `wanted` only if its receiver's shot
 * could be worth more than `out.floor`.
 */
export function weighPass(
  out: Options,
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  mate: number,
  motion: Float64Array,
  wanted: boolean,
): void {
  const { point, ahead } = model.scratch;
  const awayX = motion[stride * mate] - motion[stride * carrier];
  const awayY = motion[stride * mate + 1] - motion[stride * carrier + 1];
  const roughFlight = Math.sqrt(awayX * awayX + awayY * awayY) / model.athletes[carrier].passSpeed;
  ahead.seconds = roughFlight;
  meetPassInto(point, model, state, mate, motion);
  const passRelease = model.athletes[mate].shotRelease * quickShare;
  ahead.seconds = roughFlight + passRelease;
  ahead.rest = out.left - roughFlight - passRelease;
  ahead.floor = wanted ? 0 : out.floor;
  placeShot(ahead, point[0], point[1]);
  if (couldBeEnough(ahead, model, mate, motion)) weighThrow(out, model, carrier, mate, motion);
}

/** Weigh a pass to the place in `scratch.point` that could be worth it, with the shot off it in `scratch.ahead`: its lane and its catch. */
function weighThrow(out: Options, model: ChanceModel, carrier: number, mate: number, motion: Float64Array): void {
  const { point, ahead } = model.scratch;
  const x = point[0];
  const y = point[1];
  const rough = ahead.shot.odds;
  const passRelease = model.athletes[mate].shotRelease * quickShare;
  const fromX = motion[stride * carrier];
  const fromY = motion[stride * carrier + 1];
  chooseHeight(out, model, mate, fromX, fromY, x, y, model.athletes[carrier].passSpeed, motion);
  const flight = out.flight_byMate[mate];
  if (out.lob_byMate[mate] === 1) {
    ahead.seconds = flight + passRelease;
    ahead.floor = 0;
    placeShot(ahead, x, y);
    couldBeEnough(ahead, model, mate, motion);
  }
  const odds = out.lob_byMate[mate] === 1 ? ahead.shot.odds : rough;
  const caught = out.completion_byMate[mate] * catchOddsAt(model, carrier, mate, motion, x, y, flight);
  out.completion_byMate[mate] = caught;
  out.shotOdds_byMate[mate] = odds;
  const after = out.left - flight;
  out.value_byMate[mate] =
    caught * Math.max(worthOfShot(model, odds, after - passRelease), continuation(model.parameters, after));
}

/**
 * Look at the shot of a mate who catches at the place in `ahead`: its odds if the ball surely comes. False when it could not be worth
 * more than `ahead.floor`; the cheap question, whether it could be if nobody came to hurry him, is asked first.
 */
function couldBeEnough(ahead: ShotAhead, model: ChanceModel, mate: number, motion: Float64Array): boolean {
  const { shot, rest, floor } = ahead;
  shot.odds = 0;
  if (inRange(model, shot.x, shot.y)) {
    const step = stepShare(shot.x, shot.y, stepDown * quickShare);
    placeShot(ahead, shot.x * step, shot.y * step);
    measureLag(ahead, model, motion);
    shot.rush = 0;
    lookUpShot(model.shotTables[mate], shot);
  }
  if (floor > 0 && worthOfShot(model, shot.odds, rest) <= floor) return false;
  // What is worth nothing unhurried is worth nothing hurried; and who is not hurried shoots as reckoned.
  if (shot.odds === 0) return true;
  measureRush(ahead, model, motion);
  if (shot.rush === 0 && !isOffHand(model.offSide_byMan[mate], shot.x)) return true;
  shot.odds = hurriedOdds(ahead, model, mate);
  return !(floor > 0 && worthOfShot(model, shot.odds, rest) <= floor);
}

/** A man who shoots off the catch with his feet set needs this share of his full release. */
const quickShare = 0.75;

/** Goal odds of the shot in `ahead`, whose lag and rush are known: what gets off, and what goes in of it. */
function hurriedOdds({ shot }: ShotAhead, model: ChanceModel, shooter: number): number {
  // A check reaches his stick by the room there is; his hand counts for the shot alone.
  const getsOff = 1 - blockedShare * shot.rush * shot.rush;
  if (isOffHand(model.offSide_byMan[shooter], shot.x)) shot.rush += model.offHandRush_byMan[shooter];
  lookUpShot(model.shotTables[shooter], shot);
  return shot.odds * getsOff;
}

/** Share of the shots with a man on the hands that never get off, or are blocked, as a shooter reckons (see `checkedShare`). */
const blockedShare = 0.3;

/** Odds that a pass that gets through is caught: by the thrower's scatter and the traffic when it comes down. */
function catchOddsAt(
  model: ChanceModel,
  carrier: number,
  mate: number,
  motion: Float64Array,
  x: number,
  y: number,
  flight: number,
): number {
  const { lane } = model.scratch;
  const meanSquare = meanSquareError(lane.length, model.athletes[carrier].passScatter, 1, 1);
  const traffic = gapAt(model, motion, x, y, flight + trafficDoubt, trafficMatters);
  return expectedCatchOdds(model.athletes[mate].catching, speedAfter(lane.length, lane.speed), meanSquare, traffic);
}

/** A defender farther than this does not make a catch harder (`defaultCatchParameters`). Yards. */
const trafficMatters = defaultCatchParameters.trafficDistance;

/** Throw flat, or over the sticks when that is clearly safer. */
function chooseHeight(
  out: Options,
  model: ChanceModel,
  mate: number,
  fromX: number,
  fromY: number,
  x: number,
  y: number,
  speed: number,
  motion: Float64Array,
): void {
  const { lane } = model.scratch;
  const end = model.agents;
  laneInto(
    lane,
    fromX,
    fromY,
    x,
    y,
    speed,
    false,
    motion,
    model.laneMovers,
    6,
    end,
    telegraph + laneDoubt,
    model.laneParameters,
  );
  // A flat ball does not go through the net.
  out.completion_byMate[mate] = crossesCage(fromX, fromY, x, y) ? 0 : lane.completion;
  out.flight_byMate[mate] = lane.time;
  out.lob_byMate[mate] = 0;
  if (lane.completion > lobBelow || lane.length < lobLength) return;
  laneInto(
    lane,
    fromX,
    fromY,
    x,
    y,
    speed,
    true,
    motion,
    model.laneMovers,
    6,
    end,
    telegraph + laneDoubt,
    model.laneParameters,
  );
  const trusted = lane.completion * lobTrust;
  if (trusted <= out.completion_byMate[mate] + lobGain) {
    // The flat throw stands, and arrives as fast as it is thrown.
    lane.speed = speed;
    return;
  }
  out.completion_byMate[mate] = trusted;
  out.flight_byMate[mate] = lane.time;
  out.lob_byMate[mate] = 1;
}

/** A lob is thrown for at least this gain, over at least this many yards. */
const lobGain = 0.08;
const lobLength = 8;
/** A ball that hangs for a second gives everyone time to change his mind: of the lobs believed in at .95 seven in ten came down safely. */
const lobTrust = 0.78;
/** Nor can it gain as much where the flat pass is better than this. */
const lobBelow = lobTrust - lobGain;

function inRange(model: ChanceModel, x: number, y: number): boolean {
  const range = model.parameters.shotRange + stepDown;
  return y > 0 && x * x + y * y < range * range;
}

function placeShot({ shot }: ShotAhead, x: number, y: number): void {
  shot.x = x;
  shot.y = y;
}

/**
 * How hurried a shot from a place will be, released `seconds` from now: by how near the nearest defender can be by then.
 * 0 with `freeDistance` of room or more, 1 from `handsDistance` on: a stick on his hands.
 */
export function rushAt(model: ChanceModel, motion: Float64Array, x: number, y: number, seconds: number): number {
  const { ahead } = model.scratch;
  ahead.seconds = seconds;
  placeShot(ahead, x, y);
  measureRush(ahead, model, motion);
  return ahead.shot.rush;
}

/** The same of the shot in `ahead`. */
function measureRush(ahead: ShotAhead, model: ChanceModel, motion: Float64Array): void {
  const { freeDistance, handsDistance } = model.parameters;
  ahead.most = freeDistance;
  measureGap(ahead, model, motion);
  const { gap } = ahead;
  ahead.shot.rush = gap <= handsDistance ? 1 : (freeDistance - gap) / (freeDistance - handsDistance);
}

/** Room that will be left at (x, y) after `seconds`, when every defender goes there as hard as he can; at most `most` yards. */
export function gapAt(
  model: ChanceModel,
  motion: Float64Array,
  x: number,
  y: number,
  seconds: number,
  most: number,
): number {
  const { ahead } = model.scratch;
  ahead.seconds = seconds;
  ahead.most = most;
  placeShot(ahead, x, y);
  measureGap(ahead, model, motion);
  return ahead.gap;
}

/** The same at the place in `ahead`. */
function measureGap(ahead: ShotAhead, model: ChanceModel, motion: Float64Array): void {
  const { x, y } = ahead.shot;
  const { seconds } = ahead;
  const { reaction_byAgent, phi } = model;
  const { topSpeed } = model.movers;
  const end = 6 + model.covering;
  let gap = ahead.most;
  for (let agent = 6; agent < end; agent++) {
    const reaction = reaction_byAgent[agent];
    const moving = seconds - reaction;
    const coasting = Math.min(seconds, reaction);
    const dx = motion[stride * agent] + motion[stride * agent + 2] * coasting - x;
    const dy = motion[stride * agent + 1] + motion[stride * agent + 3] * coasting - y;
    const square = dx * dx + dy * dy;
    // Too far for even a full sprint to matter: most defenders fall out here.
    const reach = gap + (moving > 0 ? topSpeed[agent] * moving : 0);
    if (square >= reach * reach) continue;
    const closed = moving > 0 ? topSpeed[agent] * (moving - phiAt(phi, agent, moving)) : 0;
    const left = Math.sqrt(square) - closed;
    if (left < gap) gap = left;
  }
  ahead.gap = gap;
}

/** How far the keeper will still trail the ball (see `keeperLag`) when it is shot from the place in `ahead`. */
function measureLag(ahead: ShotAhead, model: ChanceModel, motion: Float64Array): void {
  const { shot } = ahead;
  const { keeper } = model;
  lagInto(shot, motion, stride * keeper);
  const lag = shot.keeperLag;
  const moving = ahead.seconds - model.reaction_byAgent[keeper];
  const covered = moving > 0 ? model.movers.topSpeed[keeper] * (moving - phiAt(model.phi, keeper, moving)) : 0;
  shot.keeperLag = lag > covered ? lag - covered : lag < -covered ? lag + covered : 0;
}

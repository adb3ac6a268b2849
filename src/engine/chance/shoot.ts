import { flightTime } from '../ball/flight.ts';
import { drawShotInto, shotOddsInto } from '../ball/shot.ts';
import { shotTrafficInto } from '../ball/shot-traffic.ts';
import { faceKeeperInto, releaseInto } from '../ball/shot-view.ts';
import { bodyRadius } from '../people/contact.ts';
import { block, standardNormal, uniform, unit as unitOf } from '../random/draws.ts';
import { sendBackUps } from './back-up.ts';
import { alertDefense } from './coverage.ts';
import { restart } from './create-state.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import { stepDown, stepShare } from './goalward-step.ts';
import { dropBall } from './loose-ball.ts';
import type { ChanceModel } from './model.ts';
import { loseBall } from './possession.ts';
import { isOffHand } from './shot-hand.ts';
import { ballMode, type ChanceState, phase, stride } from './state.ts';
import { driveIn, nearestDefenderIndex } from './unit-tasks.ts';
import { rushAt } from './weigh.ts';

/** Beyond this a shot counts as one from outside (the held-out anchor of docs/validation.md). Yards. */
export const farShot = 16;
/** A shot within this time of the catch was made by the pass. Seconds. */
const assistedWithin = 3;
/** A man who is pressed lets go this much sooner than his full release, and pays for it in rush. */
const hurriedRelease = 0.55;
/** A shooter faster than this is on the run. Yards a second. */
const onTheRun = 2.5;

/** Start a shot: it leaves the stick after his release time, sooner when a man is on him. */
export function windUpShot(model: ChanceModel, state: ChanceState): void {
  const { ball, unit } = state;
  const shooter = ball.holder;
  const full = model.athletes[shooter].shotRelease;
  const hurry = model.scratch.options.shotRush;
  ball.mode = ballMode.shotWindUp;
  ball.from = shooter;
  ball.endAt = state.time + full * (1 - (1 - hurriedRelease) * hurry);
  unit.mustShoot[shooter] = 0;
  const x = state.bodies.motion[stride * shooter];
  const y = state.bodies.motion[stride * shooter + 1];
  driveIn(state, shooter, stepShare(x, y, stepDown * 2));
  sendBackUps(model, state, shooter);
}

/** The ball leaves the stick: what becomes of it is drawn here, from where everyone really is. */
export function releaseShot(model: ChanceModel, state: ChanceState): void {
  const { ball, counts } = state;
  const { shotOdds, shot, outcome } = model.scratch;
  const shooter = ball.from;
  if (isChecked(model, state, shooter)) return;
  describeShot(model, state, shooter);
  shotOddsInto(shotOdds, shot, model.shotParameters);
  block(
    model.draws,
    state.trial,
    shooter,
    drawKind.shotPlacement,
    drawAddress(model, state, drawKind.shotPlacement, shooter),
  );
  const across = standardNormal(model.draws.words[0]) * model.sense;
  const up = standardNormal(model.draws.words[1]);
  const luck = unitOf(model.draws.words[2]);
  drawShotInto(outcome, shotOdds, shot, across, up, luck, model.shotParameters);
  countShot(state, shooter);
  const distance = Math.sqrt(shot.x * shot.x + shot.y * shot.y);
  state.recorder?.event({
    kind: 'shot',
    time: state.time,
    who: shooter,
    goalOdds: shotOdds.goal,
    distance,
    pressed: model.scratch.rush > pressed,
    assistedBy: ball.assistedBy,
  });
  ball.mode = ballMode.shot;
  ball.holder = -1;
  ball.fromX = shot.x;
  ball.fromY = shot.y;
  ball.toX = outcome.result === 'wide' ? outcome.x : 0;
  ball.toY = outcome.result === 'wide' ? outcome.y : 0;
  ball.startAt = state.time;
  ball.arriveAt = state.time + flightTime(distance, shot.speed);
  ball.endAt = ball.arriveAt;
  ball.goalOdds = shotOdds.goal;
  counts.goalOddsSum += shotOdds.goal;
}

/** A rush above this is a pressed shot when it is told. */
const pressed = 0.5;

function describeShot(model: ChanceModel, state: ChanceState, shooter: number): void {
  const { bodies } = state;
  const { shot, traffic } = model.scratch;
  const athlete = model.athletes[shooter];
  const at = stride * shooter;
  const keeper = stride * model.keeper;
  const vx = bodies.motion[at + 2];
  const vy = bodies.motion[at + 3];
  const run = vx * vx + vy * vy > onTheRun * onTheRun ? 1 : 0;
  const rush = rushAt(model, bodies.motion, bodies.motion[at], bodies.motion[at + 1], 0);
  model.scratch.rush = rush;
  shot.x = bodies.motion[at];
  shot.y = bodies.motion[at + 1];
  shot.keeperX = bodies.motion[keeper];
  shot.keeperY = bodies.motion[keeper + 1];
  shotTrafficInto(traffic, shot.x, shot.y, bodies.motion, model.laneMovers.stickReach_byAgent, 6, 6 + model.covering);
  shot.block = traffic.block;
  shot.sense = model.sense;
  shot.lateCue = model.shotParameters.screenDelay * traffic.screen + unsetDelay * unsetShare(model, bodies.motion);
  releaseInto(
    shot,
    athlete.shotSpeed,
    athlete.shotScatter,
    rush,
    run,
    isOffHand(model.offSide_byMan[shooter], shot.x) ? athlete.offHand : 1,
    model.shotParameters,
  );
  faceKeeperInto(shot, model.matchup.keeper);
}

/** A man on the shooter's hands checks this share of his shots before they leave the stick (assumption). */
const checkedShare = 0.25;
/** From farther than this a check comes too late. Yards. */
const checkDistance = 1.6;

/** Whether the ball is checked out of his stick before the shot leaves it: `checkedShare` body to body, never from `checkDistance` on. */
function isChecked(model: ChanceModel, state: ChanceState, shooter: number): boolean {
  const { motion } = state.bodies;
  const x = motion[stride * shooter];
  const y = motion[stride * shooter + 1];
  const defender = nearestDefenderIndex(model, motion, x, y);
  const dx = motion[stride * defender] - x;
  const dy = motion[stride * defender + 1] - y;
  const gap = Math.sqrt(dx * dx + dy * dy);
  if (gap >= checkDistance) return false;
  const odds = checkedShare * Math.min(1, (checkDistance - gap) / (checkDistance - contactGap));
  const address = drawAddress(model, state, drawKind.strip, shooter);
  if (uniform(model.draws, state.trial, shooter, drawKind.strip, address) >= odds) return false;
  state.recorder?.event({ kind: 'stripped', time: state.time, by: defender - 6 });
  dropBall(model, state, x, y, 'stripped');
  return true;
}

/** Two bodies that touch are this far apart. Yards. */
const contactGap = 2 * bodyRadius;

/** A keeper who is not on his toes sees it .06 to .10 s late (laxgoaltending.com, coach timing). Seconds. */
const unsetDelay = 0.08;
/** Moving this fast along his arc he is not on his toes at all. Yards a second. */
const unsetSpeed = 2.5;

/** How far the keeper is from standing set, 0 to 1, by how fast he is still moving. */
function unsetShare(model: ChanceModel, motion: Float64Array): number {
  const at = stride * model.keeper;
  const vx = motion[at + 2];
  const vy = motion[at + 3];
  return Math.min(1, Math.sqrt(vx * vx + vy * vy) / unsetSpeed);
}

function countShot(state: ChanceState, shooter: number): void {
  const { counts, ball, bodies } = state;
  counts.shots++;
  if (!(counts.firstShot >= 0)) counts.firstShot = state.time;
  if (state.time - ball.heldSince > assistedWithin) ball.assistedBy = -1;
  if (ball.assistedBy >= 0) counts.assistedShots++;
  const x = bodies.motion[stride * shooter];
  const y = bodies.motion[stride * shooter + 1];
  ball.far = x * x + y * y > farShot * farShot;
  if (ball.far) counts.farShots++;
}

/** The shot has come to its end. */
export function endShot(model: ChanceModel, state: ChanceState): void {
  const { outcome } = model.scratch;
  switch (outcome.result) {
    case 'goal':
      scoreGoal(model, state);
      return;
    case 'save':
      saveShot(model, state);
      return;
    case 'wide':
      missWide(model, state);
      return;
    case 'pipe':
      state.recorder?.event({ kind: 'pipe', time: state.time, who: state.ball.from, kept: false });
      renewShotClock(model, state);
      dropBall(model, state, outcome.x, outcome.y, 'rebound');
      return;
    case 'block':
      state.recorder?.event({ kind: 'blocked', time: state.time, by: blocker(model) });
      dropBall(model, state, outcome.x, outcome.y, 'blocked');
      return;
  }
}

/** The defender who was most in the way of the shot. */
function blocker(model: ChanceModel): number {
  const { block_byAgent } = model.scratch.traffic;
  let best = 6;
  for (let agent = 6; agent < 6 + model.covering; agent++) if (block_byAgent[agent] > block_byAgent[best]) best = agent;
  return best - 6;
}

function scoreGoal(model: ChanceModel, state: ChanceState): void {
  const { counts, ball } = state;
  counts.goals++;
  counts.onTarget++;
  if (!(counts.firstGoal >= 0)) counts.firstGoal = state.time;
  if (ball.assistedBy >= 0) counts.assistedGoals++;
  if (ball.far) counts.farGoals++;
  state.recorder?.event({ kind: 'goal', time: state.time, who: ball.from, assistedBy: ball.assistedBy });
  if (model.matchup.penalty.releasable || model.flagDown || state.time >= state.penaltyEnds) {
    state.end = 'goal';
    return;
  }
  faceOff(model, state);
}

/** A penalty that a goal does not end: the ball is faced off, and the unit has it again or the chance is lost. */
function faceOff(model: ChanceModel, state: ChanceState): void {
  const address = drawAddress(model, state, drawKind.faceOff, 0);
  if (uniform(model.draws, state.trial, 0, drawKind.faceOff, address) < model.parameters.faceOff) {
    restart(model, state, model.program.starter);
    state.shotClockEnds = state.time + (model.matchup.penalty.shotClock ?? Number.POSITIVE_INFINITY);
    return;
  }
  state.end = 'goal';
}

function saveShot(model: ChanceModel, state: ChanceState): void {
  const { outcome } = model.scratch;
  const { counts, ball } = state;
  counts.onTarget++;
  counts.saves++;
  state.recorder?.event({ kind: 'save', time: state.time, who: ball.from, kept: outcome.held });
  renewShotClock(model, state);
  ball.x = outcome.x;
  ball.y = outcome.y;
  if (!outcome.held) {
    dropBall(model, state, outcome.x, outcome.y, 'saved');
    return;
  }
  ball.holder = model.keeper;
  loseBall(model, state, 'saved');
}

/**
 * A shot that goes out belongs to the side whose man is nearest to where it crosses the line.
 * Dead-ball time is not penalty time: everyone is in his place again when it is put in play there.
 */
function missWide(model: ChanceModel, state: ChanceState): void {
  const { outcome } = model.scratch;
  const { ball } = state;
  ball.x = outcome.x;
  ball.y = outcome.y;
  const nearest = nearestTo(model, state, outcome.x, outcome.y);
  const kept = nearest < 6;
  state.recorder?.event({ kind: 'wide', time: state.time, who: ball.from, kept });
  // Under a flag the whistle blows when the ball goes out (NFHS 7-8 as told by officials, rmloa.org/goodies): no turnover of theirs.
  if (!kept || model.flagDown) {
    loseBall(model, state, 'wide');
    return;
  }
  // By the time it is put in play the released man is in his place too.
  if (state.time >= state.penaltyEnds) {
    state.end = 'penaltyOver';
    return;
  }
  restartAt(model, state, nearest, outcome.x, outcome.y);
}

function nearestTo(model: ChanceModel, state: ChanceState, x: number, y: number): number {
  const { motion, present } = state.bodies;
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let agent = 0; agent < model.agents; agent++) {
    if (present[agent] === 0) continue;
    const dx = motion[stride * agent] - x;
    const dy = motion[stride * agent + 1] - y;
    const square = dx * dx + dy * dy;
    if (square < least) {
      least = square;
      nearest = agent;
    }
  }
  return nearest;
}

/** Put the ball in play where it went out, with everyone else at home: from there it is swung to the man who restarts the play. */
function restartAt(model: ChanceModel, state: ChanceState, who: number, x: number, y: number): void {
  restart(model, state, who, x, y);
  // Everyone is set, and the look round the ring was had before: the play runs as soon as its man has the ball.
  state.unit.phase = model.program.resetAgain ? phase.resetting : phase.free;
  alertDefense(state);
}

/**
 * A shot that the keeper or the frame has touched starts the shot clock again; one that goes wide does not
 * (NCAA fall memo 2018, docslib.org/doc/12930869).
 */
function renewShotClock(model: ChanceModel, state: ChanceState): void {
  const { shotClock } = model.matchup.penalty;
  if (shotClock !== null) state.shotClockEnds = state.time + Math.min(shotClock, renewedShotClock);
}

/** NCAA since 2022: 60 s after a shot that the offense keeps (usalacrosse.com, "NCAA approves 60-second shot clock reset"). */
const renewedShotClock = 60;

import { adjustDuty, watchBallInto } from '../defense/discipline.ts';
import type { DutyBoard } from '../defense/duty.ts';
import { targetInto } from '../defense/targets.ts';
import { readOffense } from '../defense/view.ts';
import { block, unit as unitOf } from '../random/draws.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import type { ChanceModel } from './model.ts';
import { ballMode, type ChanceState, historySteps, stride } from './state.ts';
import { aim, driftOpen } from './unit-tasks.ts';

/** A man who bites on a fake goes this far toward the man it was meant for. Yards. */
const biteLunge = 2.2;
/** Speed at which defenders hold and adjust their places, and at which they go to a man; shares of top speed. */
const slideEffort = 1;

/** A defender corrects his way every other step: feet do not turn faster. */
const steerEvery = 2;

/** Let the defense look round when it is time, take up duties that are due, and steer every defender. */
export function steerDefense(model: ChanceModel, state: ChanceState): void {
  const { coverage } = state;
  const looks = state.time >= coverage.nextLook;
  const steers = state.step % steerEvery === 0;
  if (looks || steers) seeAttack(model, state);
  if (looks) {
    lookRound(model, state);
    driftOpen(model, state);
    coverage.nextLook = state.time + model.parameters.defenseEvery;
  }
  for (let defender = 0; defender < model.covering; defender++) {
    if (takeUpDuty(model, state, defender) || steers) steerDefender(model, state, defender);
  }
}

/** Before a whistle everyone has had time to look: the scheme's first duties are taken up and their places stood in. */
export function settleDefense(model: ChanceModel, state: ChanceState): void {
  const { coverage, bodies } = state;
  const { seenBall } = coverage;
  seeAttack(model, state);
  shareOutDuties(model, state);
  const { point } = model.scratch;
  for (let defender = 0; defender < model.covering; defender++) {
    copyDuty(coverage.wanted, coverage.noticed, defender);
    copyDuty(coverage.wanted, coverage.played, defender);
    targetInto(point, coverage.played, defender, coverage.seen, seenBall, model.targetParams);
    bodies.motion[stride * (6 + defender)] = point[0];
    bodies.motion[stride * (6 + defender) + 1] = point[1];
    aim(state, 6 + defender, point[0], point[1], 1, slideEffort);
  }
  coverage.adoptAt.fill(Number.POSITIVE_INFINITY);
  coverage.nextLook = state.time + model.parameters.defenseEvery;
}

/** Something happened that the defense answers at once (each man after his own reaction). */
export function alertDefense(state: ChanceState): void {
  state.coverage.nextLook = state.time;
}

/**
 * Where the attackers are as the defense knows it: the place and speed of a reaction ago, carried on to now.
 * A steady run deceives nobody; a change of direction is seen late.
 */
function seeAttack(model: ChanceModel, state: ChanceState): void {
  const past = seenByDefense(model, state);
  const { seen } = state.coverage;
  const ahead = model.defenseDelay;
  for (let who = 0; who < 6; who++) {
    seen[2 * who] = past[stride * who] + past[stride * who + 2] * ahead;
    seen[2 * who + 1] = past[stride * who + 1] + past[stride * who + 3] * ahead;
  }
  seeBall(model, state);
}

/** The picture of a reaction ago. */
function seenByDefense(model: ChanceModel, state: ChanceState): Float64Array {
  return state.bodies.history[(state.step - model.defenseSteps) & (historySteps - 1)];
}

/** A ball whose flight has been seen to begin is followed on its way; until then it is with the man who threw it. */
function seeBall(model: ChanceModel, state: ChanceState): void {
  const { seen, seenBall } = state.coverage;
  const holder = state.holder_byStep[(state.step - model.defenseSteps) & (historySteps - 1)];
  const isSeenHeld = holder >= 0 && holder < 6;
  seenBall[0] = isSeenHeld ? seen[2 * holder] : state.ball.x;
  seenBall[1] = isSeenHeld ? seen[2 * holder + 1] : state.ball.y;
}

function lookRound(model: ChanceModel, state: ChanceState): void {
  shareOutDuties(model, state);
  for (let defender = 0; defender < model.covering; defender++) notice(model, state, defender);
}

/** Ask the scheme what it wants of everyone now. */
function shareOutDuties(model: ChanceModel, state: ChanceState): void {
  const { coverage, ball, bodies } = state;
  const { view } = coverage;
  const answering = answeredMan(state);
  if (answering !== view.ball) {
    if (view.ball >= 0) view.previousBall = view.ball;
    view.ball = answering;
    coverage.ballSince = state.time;
  }
  view.carrying = ball.mode === ballMode.held && isRunning(seenByDefense(model, state), ball.holder);
  view.timeLeft = state.penaltyEnds - state.time;
  view.offense.set(coverage.seen);
  for (let defender = 0; defender < model.covering; defender++) {
    view.defense[2 * defender] = bodies.motion[stride * (6 + defender)];
    view.defense[2 * defender + 1] = bodies.motion[stride * (6 + defender) + 1];
  }
  readOffense(view);
  model.matchup.scheme.assign(view, coverage.memory, coverage.wanted);
}

/** The man whom the defense plays as the ball: the receiver from the moment that the ball leaves the stick. */
function answeredMan(state: ChanceState): number {
  const { ball } = state;
  if (ball.mode === ballMode.pass) return ball.to;
  return ball.holder >= 0 && ball.holder < 6 ? ball.holder : ball.from;
}

/** A carrier faster than this is running with the ball. Yards a second. */
const carrySpeed = 2;

function isRunning(motion: Float64Array, agent: number): boolean {
  const vx = motion[stride * agent + 2];
  const vy = motion[stride * agent + 3];
  return vx * vx + vy * vy > carrySpeed * carrySpeed;
}

/** If the scheme wants something new of this man, start the time that he needs to answer. */
function notice(model: ChanceModel, state: ChanceState, defender: number): void {
  const { coverage } = state;
  if (sameDuty(coverage.wanted, coverage.noticed, defender)) {
    // A place that shifts a little is not a new duty: he follows it without a delay of its own, once he knows who has the ball.
    if (state.time < coverage.ballSince + model.reaction_byAgent[6 + defender]) return;
    copyPlace(coverage.wanted, coverage.noticed, defender);
    if (sameDuty(coverage.wanted, coverage.played, defender)) copyPlace(coverage.wanted, coverage.played, defender);
    return;
  }
  copyDuty(coverage.wanted, coverage.noticed, defender);
  coverage.changedAt[defender] = state.time;
  if (coverage.adoptAt[defender] === Number.POSITIVE_INFINITY) prepareDuty(model, state, defender);
}

function prepareDuty(model: ChanceModel, state: ChanceState, defender: number): void {
  const { coverage } = state;
  const agent = 6 + defender;
  block(model.draws, state.trial, agent, drawKind.dutyChange, drawAddress(model, state, drawKind.dutyChange, agent));
  const { words } = model.draws;
  const change = model.scratch.dutyChange;
  adjustDuty(model.matchup.discipline[defender], unitOf(words[0]), unitOf(words[1]), unitOf(words[2]), change);
  if (change.keepOld) copyDuty(coverage.played, coverage.pending, defender);
  else copyDuty(coverage.noticed, coverage.pending, defender);
  if (change.wrongMan) takeWrongMan(coverage.pending, defender);
  coverage.lateBy[defender] = change.late;
  coverage.preparedAt[defender] = state.time;
  const seenAt = Math.max(state.time, coverage.changedAt[defender] + model.reaction_byAgent[agent]);
  coverage.adoptAt[defender] = seenAt + change.late;
}

/** A split played wrong: he commits to the second man of the pair and forgets the first. */
function takeWrongMan(board: DutyBoard, defender: number): void {
  if (board.b[defender] < 0) return;
  board.a[defender] = board.b[defender];
}

/** Whether he takes up a new duty at this step. */
function takeUpDuty(model: ChanceModel, state: ChanceState, defender: number): boolean {
  const { coverage } = state;
  if (state.time < coverage.adoptAt[defender]) return false;
  copyDuty(coverage.pending, coverage.played, defender);
  coverage.adoptAt[defender] = Number.POSITIVE_INFINITY;
  state.recorder?.event({
    kind: 'duty',
    time: state.time,
    by: defender,
    duty: coverage.played.kind[defender],
    a: coverage.played.a[defender],
    b: coverage.played.b[defender],
    late: coverage.lateBy[defender],
  });
  // While he took up one duty the next may have been called: begin to answer that one too.
  if (coverage.changedAt[defender] > coverage.preparedAt[defender]) prepareDuty(model, state, defender);
  return true;
}

function steerDefender(model: ChanceModel, state: ChanceState, defender: number): void {
  const { coverage } = state;
  const { seenBall } = coverage;
  const agent = 6 + defender;
  const { point } = model.scratch;
  targetInto(point, coverage.played, defender, coverage.seen, seenBall, model.targetParams);
  watchBallInto(point, model.matchup.discipline[defender], seenBall);
  if (state.time < coverage.bittenUntil[defender] && state.time >= coverage.bittenFrom[defender])
    lungeInto(point, state, defender);
  aim(state, agent, point[0], point[1], 1, slideEffort);
}

function lungeInto(point: Float64Array, state: ChanceState, defender: number): void {
  const { coverage, bodies } = state;
  const agent = 6 + defender;
  const x = bodies.motion[stride * agent];
  const y = bodies.motion[stride * agent + 1];
  const toward = coverage.bittenTo[defender];
  const dx = coverage.seen[2 * toward] - x;
  const dy = coverage.seen[2 * toward + 1] - y;
  const distance = Math.sqrt(dx * dx + dy * dy);
  const scale = distance > biteLunge ? biteLunge / distance : 1;
  point[0] = x + dx * scale;
  point[1] = y + dy * scale;
}

function sameDuty(one: DutyBoard, other: DutyBoard, defender: number): boolean {
  return (
    one.kind[defender] === other.kind[defender] &&
    one.a[defender] === other.a[defender] &&
    one.b[defender] === other.b[defender]
  );
}

function copyPlace(from: DutyBoard, to: DutyBoard, defender: number): void {
  to.x[defender] = from.x[defender];
  to.y[defender] = from.y[defender];
}

function copyDuty(from: DutyBoard, to: DutyBoard, defender: number): void {
  to.kind[defender] = from.kind[defender];
  to.a[defender] = from.a[defender];
  to.b[defender] = from.b[defender];
  copyPlace(from, to, defender);
}

import type { ChanceModel } from './model.ts';
import type { Options } from './options.ts';
import { passReason, windUpPass } from './pass.ts';
import { clearOrders, startScript } from './script.ts';
import { ballMode, type ChanceState, type Phase, phase, stride, task } from './state.ts';
import type { RefusedPass } from './trace.ts';
import { weighPass } from './weigh.ts';

/** A man counts as in his place within this distance. Yards. */
const inPlace = 2;
/** A ball that is not wanted anywhere in particular goes on round; a pass worse than this is not thrown. */
const swingFloor = 0.95;
/** The longer he holds it, the less sure a pass has to be: by this much a second, down to this. */
const impatience = 0.15;
const leastFloor = 0.05;
/** A neighbour is thrown to without looking farther when the pass is as sure as this. */
const sure = 0.93;
/** A reset waits no longer than this for stragglers. Seconds. */
const resetPatience = 4;
/** When the man who starts the play can't be given the ball for this long, as when he is shut off, the others play on without it. Seconds. */
const restartPatience = 7;

/** The script cannot go on: everyone to his home, ball to the man who restarts it. */
export function startReset(model: ChanceModel, state: ChanceState, refused: RefusedPass | null = null): void {
  const { unit } = state;
  clearOrders(state);
  enterPhase(state, runsAgain(model) ? phase.resetting : phase.free);
  unit.lastProgress = state.time;
  sendHome(model, state);
  state.recorder?.event({ kind: 'reset', time: state.time, refused });
}

/** Whether the play is run again when it could not go on; a free shot under a flag is not waited for so long. */
function runsAgain({ program, flagDown }: ChanceModel): boolean {
  return program.resetAgain && !flagDown;
}

/** The ball goes where no beat sends it: from there the unit plays what comes open, and runs the play anew after that. */
export function leaveScript(state: ChanceState): void {
  if (state.unit.phase !== phase.script) return;
  clearOrders(state);
  enterPhase(state, phase.free);
  state.recorder?.event({ kind: 'leave', time: state.time });
}

/** Everyone to his spot. */
function sendHome(model: ChanceModel, state: ChanceState): void {
  const { unit, bodies, ball } = state;
  unit.station.set(model.program.homes);
  unit.post.set(model.program.homes);
  for (let who = 0; who < 6; who++) {
    if (unit.task[who] !== task.receive || ball.to !== who) unit.task[who] = task.stay;
    bodies.planted[who] = 0;
  }
}

/** Whether the set is up and the right man has the ball. */
function setIsUp(model: ChanceModel, state: ChanceState, ballMan: number, patience: number): boolean {
  const { ball, unit } = state;
  if (ball.mode !== ballMode.held || ball.holder !== ballMan) return false;
  if (state.time - unit.phaseSince >= patience) return true;
  for (let who = 0; who < 6; who++) if (!isHome(model, state, who)) return false;
  return true;
}

function isHome(model: ChanceModel, state: ChanceState, who: number): boolean {
  const { motion } = state.bodies;
  const dx = motion[stride * who] - model.program.homes[2 * who];
  const dy = motion[stride * who + 1] - model.program.homes[2 * who + 1];
  return dx * dx + dy * dy < inPlace * inPlace;
}

/** Move the chance on: set up, swing the ball round to see what it faces, run the script, reset and run it again. */
export function advancePhase(model: ChanceModel, state: ChanceState): void {
  const { unit } = state;
  const since = state.time - unit.phaseSince;
  switch (unit.phase) {
    case phase.settingUp:
      if (since >= state.setUpTime && setIsUp(model, state, model.program.starter, model.parameters.setUpPatience))
        startProbing(state);
      return;
    case phase.probing:
      if (since >= state.probeTime) enterPhase(state, phase.resetting);
      return;
    case phase.resetting:
      if (hasMoved(state) && setIsUp(model, state, restartMan(model, state), resetPatience)) startScript(state);
      else if (since > restartPatience) enterPhase(state, phase.free);
      return;
    case phase.free:
      if (runsAgain(model) && since > freePatience && isIdle(state)) startReset(model, state);
      return;
    default:
      return;
  }
}

/** Whether somebody has the ball and has had the time to see that nothing comes open. */
function isIdle({ ball, time }: ChanceState): boolean {
  return ball.mode === ballMode.held && time - ball.heldSince > idleAfter;
}

/** A play that could not go on is not begun again against the same picture: the ball goes round first. At the start it has. */
function hasMoved({ unit, counts, scriptSince }: ChanceState): boolean {
  return !(scriptSince >= 0) || counts.passes > unit.phasePasses;
}

function startProbing(state: ChanceState): void {
  state.recorder?.event({ kind: 'setUp', time: state.time });
  // There is no time to look round in the last ten seconds.
  if (state.lastTen) startScript(state);
  else enterPhase(state, phase.probing);
}

function enterPhase(state: ChanceState, next: Phase): void {
  state.unit.phase = next;
  state.unit.phaseSince = state.time;
  state.unit.phasePasses = state.counts.passes;
}

/** Who must have the ball for the script to begin: its starter at first, the man of the reset after that. */
function restartMan(model: ChanceModel, state: ChanceState): number {
  return state.scriptSince >= 0 ? model.program.resetTo : model.program.starter;
}

/** After a scramble the unit plays on this long before it sets up again. Seconds. */
const freePatience = 4;
const idleAfter = 1;

/** Without a script: to the man who restarts the play, or on round the ring the way the ball was going. */
export function swingOn(model: ChanceModel, state: ChanceState, carrier: number, options: Options): void {
  const { unit, ball } = state;
  const held = state.time - ball.heldSince - model.parameters.swingTempo;
  if (held < 0 || (held < resetPatience && !isHome(model, state, carrier))) return;
  const floor = model.passNorm * Math.max(leastFloor, swingFloor - impatience * held);
  const to =
    unit.phase === phase.resetting
      ? towardRestart(model, state, carrier, options, floor)
      : onRound(model, state, carrier, options, floor);
  if (to >= 0) windUpPass(model, state, to, 0, passReason.safe);
}

/** To the man who restarts the play, or to the next man on the shorter way round to him; or on round. */
function towardRestart(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  options: Options,
  floor: number,
): number {
  const goal = restartMan(model, state);
  if (carrier === goal) return hasMoved(state) ? -1 : onRound(model, state, carrier, options, floor);
  // The longer he is waited for, the harder a pass is tried.
  const waited = state.time - state.unit.phaseSince;
  const pressing = Math.min(floor, model.passNorm * Math.max(leastPressing, swingFloor - pressingRate * waited));
  if (judge(model, state, carrier, goal, options) >= pressing) return goal;
  const next = nextToward(state, carrier, goal);
  if (next >= 0 && next !== state.ball.passer && judge(model, state, carrier, next, options) >= pressing) return next;
  return onRound(model, state, carrier, options, floor);
}

/** How fast, and down to what, the odds fall that are asked of a pass toward the man who restarts the play. */
const pressingRate = 0.04;
const leastPressing = 0.8;

/** The carrier's neighbour on the shorter way round the ring to `goal`; -1 when one of them is not in it. */
function nextToward(state: ChanceState, carrier: number, goal: number): number {
  const { ring, ringSize } = state.coverage.view;
  const from = seatOf(ring, ringSize, carrier);
  const to = seatOf(ring, ringSize, goal);
  if (from < 0 || to < 0) return -1;
  const ahead = (to - from + ringSize) % ringSize;
  return ring[(from + (2 * ahead <= ringSize ? 1 : ringSize - 1)) % ringSize];
}

/** The next man in the ring away from where the ball came from, or the safest neighbour. */
function onRound(model: ChanceModel, state: ChanceState, carrier: number, options: Options, floor: number): number {
  const { view } = state.coverage;
  const seat = seatOf(view.ring, view.ringSize, carrier);
  if (seat < 0) return safest(model, state, carrier, options, floor);
  const size = view.ringSize;
  const next = view.ring[(seat + 1) % size];
  const back = view.ring[(seat + size - 1) % size];
  const first = state.ball.passer === next ? back : next;
  const second = first === next ? back : next;
  const enough = Math.max(floor, sure * model.passNorm);
  if (judge(model, state, carrier, first, options) >= enough) return first;
  if (judge(model, state, carrier, second, options) >= enough) return second;
  return safest(model, state, carrier, options, floor);
}

/** Odds of a pass in the carrier's picture, weighed now if nothing asked for it before. */
function judge(model: ChanceModel, state: ChanceState, carrier: number, mate: number, options: Options): number {
  if (mate !== carrier && options.completion_byMate[mate] === 0) {
    weighPass(options, model, state, carrier, mate, model.scratch.foreseen, true);
  }
  return options.completion_byMate[mate];
}

/** The surest pass to a man of the ring: a ball thrown in to the crease for want of anything better is a ball given away. */
function safest(model: ChanceModel, state: ChanceState, carrier: number, options: Options, floor: number): number {
  const { view } = state.coverage;
  let best = -1;
  let most = floor;
  for (let seat = 0; seat < view.ringSize; seat++) {
    const mate = view.ring[seat];
    if (judge(model, state, carrier, mate, options) > most) {
      most = options.completion_byMate[mate];
      best = mate;
    }
  }
  return best;
}

function seatOf(ring: Int8Array, size: number, who: number): number {
  for (let seat = 0; seat < size; seat++) if (ring[seat] === who) return seat;
  return -1;
}

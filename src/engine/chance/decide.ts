import { cueHolds } from './cues.ts';
import { fakeTo } from './fake.ts';
import { leaveScript, startReset, swingOn } from './flow.ts';
import { stepIn, stepShare } from './goalward-step.ts';
import { type ChanceModel, timeLeft } from './model.ts';
import type { Options } from './options.ts';
import { passReason, windUpPass } from './pass.ts';
import { foresee, likelyShare, wholeShare } from './perceive.ts';
import type { CompiledOrder, CompiledRead } from './program.ts';
import { beatIsComing, giveOrder, passStyles } from './script.ts';
import { windUpShot } from './shoot.ts';
import { ballGoesRound, ballMode, type ChanceState, phase, stride, task } from './state.ts';
import { lastStride, windUpShare } from './timing.ts';
import { driveIn } from './unit-tasks.ts';
import { weighInto, weighPass } from './weigh.ts';

/**
 * Let the man with the ball look round and act, if it is time: first the reads he was taught, then what is plainly
 * better than going on, then what the script asks of him, then the swing of a unit without a script.
 */
export function decide(model: ChanceModel, state: ChanceState): void {
  const { ball } = state;
  if (ball.mode !== ballMode.held || ball.holder >= 6) return;
  if (state.time < ball.nextDecision && !forcedIsDue(state)) return;
  ball.nextDecision = state.time + model.parameters.decideEvery;
  const carrier = ball.holder;
  // The ball is walked in first: nobody acts on what he sees there, so it is not weighed.
  if (state.unit.phase === phase.settingUp && !forcedIsDue(state)) return;
  const { options, foreseen } = model.scratch;
  // A ball that is thrown now leaves the stick a wind-up later: he judges the picture of that moment.
  const windUp = model.athletes[carrier].passRelease * windUpShare;
  const seen = foresee(model, state, carrier, windUp, likelyShare, foreseen);
  const isToldOf = state.recorder?.look !== undefined;
  const wanted = isToldOf ? everyMate : wantedMates(state, carrier);
  weighInto(options, model, state, carrier, seen, wanted, openingMargin(model, state));
  if (isToldOf) state.recorder?.look?.(carrier, seen);
  if (takeForced(model, state, carrier)) return;
  if (state.unit.phase === phase.settingUp) return;
  if (!state.watching) {
    if (takeRead(model, state, carrier, seen, options)) return;
    if (!state.byReadsAlone && takeOpening(model, state, carrier, options)) return;
  }
  if (followScript(model, state, carrier, options)) return;
  swingOn(model, state, carrier, options);
}

const everyMate = 0b111111;

/** A look that is being valued is taken at its moment, not at the carrier's next look round. */
function forcedIsDue({ forced, time, ball }: ChanceState): boolean {
  return forced !== null && time >= forced.time && time >= ball.readyAt;
}

/** The mates whose passes matter to him whatever they lead to: those his script and his reads ask about. One bit each. */
function wantedMates(state: ChanceState, carrier: number): number {
  const { unit } = state;
  let wanted = unit.script.readMates_byCarrier[carrier];
  if (unit.passTo[carrier] >= 0) wanted |= 1 << unit.passTo[carrier];
  if (state.forced !== null) wanted |= 1 << state.forced.to;
  return wanted;
}

function takeForced(model: ChanceModel, state: ChanceState, carrier: number): boolean {
  const { forced } = state;
  if (forced === null || state.time < forced.time) return false;
  state.forced = null;
  state.watching = false;
  // The ball has already gone on: the look was missed, and the trial is worth what it is worth without it.
  if (carrier !== forced.from) return false;
  if (forced.order !== undefined) return obey(model, state, carrier, forced.order);
  takeLook(model, state, carrier, forced.to);
  return true;
}

/** Shoot, or throw to the man who will; a pass that the script asks for anyway is the script's. */
function takeLook(model: ChanceModel, state: ChanceState, carrier: number, to: number): void {
  const { unit } = state;
  if (to === carrier) {
    windUpShot(model, state);
  } else if (to === unit.passTo[carrier]) {
    windUpPass(model, state, to, unit.passStyle[carrier], passReason.script);
  } else {
    windUpPass(model, state, to, 0, passReason.open);
    leaveScript(state);
  }
}

function takeRead(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  seen: Float64Array,
  options: Options,
): boolean {
  const { unit } = state;
  const reads = unit.script.reads;
  // They are reads of the play: while the ball only goes round, nobody is where they were taught for.
  if (unit.phase !== phase.script && unit.phase !== phase.free) return false;
  for (let index = 0; index < reads.length; index++) {
    const read = reads[index];
    if (read.carrier !== carrier || !belongsNow(state, read)) continue;
    if (!allCuesHold(model, state, carrier, seen, read, options)) continue;
    if (!obey(model, state, carrier, read.then)) continue;
    state.recorder?.event({ kind: 'read', time: state.time, who: carrier, read: index, lastTen: state.lastTen });
    return true;
  }
  return false;
}

function belongsNow(state: ChanceState, read: CompiledRead): boolean {
  const { unit } = state;
  return read.during < 0 || (unit.phase === phase.script && unit.newestBeat === read.during);
}

function allCuesHold(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  seen: Float64Array,
  read: CompiledRead,
  options: Options,
): boolean {
  for (let cue = 0; cue < read.cues.length; cue++) {
    if (!cueHolds(model, state, carrier, seen, read.cues[cue], options)) return false;
  }
  return true;
}

/** Do what a read says; false when it is already being done. */
function obey(model: ChanceModel, state: ChanceState, carrier: number, action: CompiledOrder): boolean {
  const { unit } = state;
  switch (action.kind) {
    case 'pass':
      windUpPass(model, state, action.to, passStyles.indexOf(action.style), passReason.read);
      return true;
    case 'shot':
      windUpShot(model, state);
      return true;
    case 'runIn':
      // Once: else he would be sent in for as long as he sees it.
      return !state.ball.ranIn && runIn(state, carrier);
    case 'reset':
      // Once it has been given up there is nothing more to give up.
      if (unit.phase !== phase.script) return false;
      startReset(model, state);
      return true;
    case 'fake':
      if (state.time < unit.fakedUntil[carrier]) return false;
      fakeTo(model, state, action.toward);
      return true;
    default:
      if (unit.task[carrier] === task.carry || state.time < unit.holdUntil[carrier]) return false;
      // A man who has come where the read sends him reads on: else he would be sent there for as long as he is free.
      if ('path' in action && hasRun(state, carrier, action.path)) return false;
      giveOrder(state, action);
      return true;
  }
}

/** Whether his station is the end of this path, as it is once he has run it and until he has thrown the ball. */
function hasRun(state: ChanceState, who: number, path: Float64Array): boolean {
  const { station } = state.unit;
  return station[2 * who] === path[path.length - 2] && station[2 * who + 1] === path[path.length - 1];
}

/** How much better than going on a look must be to be taken now. */
function openingMargin(model: ChanceModel, state: ChanceState): number {
  if (state.unit.phase === phase.script) return model.parameters.playMargin;
  return waitsForPlay(model, state) ? model.parameters.probeMargin : model.parameters.greedyMargin;
}

/** Whether the unit has a play to run and the time to run it: then only what is plainly there is taken before. */
function waitsForPlay(model: ChanceModel, state: ChanceState): boolean {
  return ballGoesRound(state.unit) && timeLeft(model, state) > playTime;
}

/** A play that cannot begin with this much left is not waited for. Seconds. */
const playTime = 10;

/** Take the best look when it beats going on by more than the margin; run in when that will make one. */
function takeOpening(model: ChanceModel, state: ChanceState, carrier: number, options: Options): boolean {
  const to = bestLook(model, carrier, options);
  const best = to === carrier ? options.shotValue : options.value_byMate[to];
  const floor = options.holdValue + openingMargin(model, state);
  const canRunIn = !state.ball.ranIn && options.stepInValue > Math.max(best, floor);
  if (canRunIn) return runIn(state, carrier);
  if (best <= floor || !staysOpen(model, state, carrier, to, options, floor)) return false;
  takeLook(model, state, carrier, to);
  return true;
}

/** Whether a look is still worth it at the second look, in the worse of the two pictures. */
function staysOpen(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  to: number,
  options: Options,
  floor: number,
): boolean {
  if (to === carrier) return true;
  const believed = options.completion_byMate[to];
  lookAgain(model, state, carrier, to, options);
  const worse = Math.min(believed, options.completion_byMate[to]);
  options.completion_byMate[to] = worse;
  return worse >= model.parameters.openFloor * model.passNorm && options.value_byMate[to] > floor;
}

/**
 * Weigh a pass anew into `options`, as it is if every defender carries on the way he is going. Without the second look carriers throw
 * into closing windows (docs/decisions/0010-look-twice.md).
 */
function lookAgain(model: ChanceModel, state: ChanceState, carrier: number, to: number, options: Options): void {
  const windUp = model.athletes[carrier].passRelease * windUpShare;
  const motion = foresee(model, state, carrier, windUp, wholeShare, model.scratch.secondLook);
  weighPass(options, model, state, carrier, to, motion, true);
}

/** The man whose shot is worth most from here: the carrier himself, or a mate who can be reached. */
function bestLook(model: ChanceModel, carrier: number, options: Options): number {
  let best = options.shotValue;
  let to = carrier;
  for (let mate = 0; mate < 6; mate++) {
    if (
      options.shotOdds_byMate[mate] === 0 ||
      options.completion_byMate[mate] < model.parameters.openFloor * model.passNorm
    )
      continue;
    if (options.value_byMate[mate] <= best) continue;
    best = options.value_byMate[mate];
    to = mate;
  }
  return to;
}

/** Step in with the stick up; he looks again on the way, so a defender who comes makes a pass of it. */
function runIn(state: ChanceState, carrier: number): boolean {
  const { motion } = state.bodies;
  state.ball.ranIn = true;
  driveIn(state, carrier, stepShare(motion[stride * carrier], motion[stride * carrier + 1], stepIn));
  return true;
}

/** Do what the script asks of this carrier now. True when he is busy with it. */
function followScript(model: ChanceModel, state: ChanceState, carrier: number, options: Options): boolean {
  const { unit } = state;
  if (unit.phase !== phase.script) return false;
  if (state.time < unit.holdUntil[carrier]) return true;
  if (unit.fakeTo[carrier] >= 0) {
    fakeTo(model, state, unit.fakeTo[carrier]);
    return true;
  }
  if (unit.mustShoot[carrier] === 1 && unit.task[carrier] !== task.carry) {
    windUpShot(model, state);
    return true;
  }
  if (unit.passTo[carrier] >= 0) return throwScripted(model, state, carrier, options);
  if (unit.task[carrier] === task.carry) return true;
  if (state.time - unit.lastProgress < model.parameters.stallPatience || beatIsComing(state)) return true;
  startReset(model, state);
  return false;
}

function throwScripted(model: ChanceModel, state: ChanceState, carrier: number, options: Options): boolean {
  const { unit, ball } = state;
  const to = unit.passTo[carrier];
  // A pass on the end of a carry waits for the carry; a pass that has been given up waits for nothing.
  if (unit.task[carrier] === task.carry && carryLeft(state, carrier)) return true;
  if (isThereTwice(model, state, carrier, to, options)) {
    windUpPass(model, state, to, unit.passStyle[carrier], passReason.script);
    return true;
  }
  const since = Math.max(unit.passSince[carrier], ball.readyAt);
  if (state.time - since < model.parameters.passPatience) return true;
  unit.passTo[carrier] = -1;
  // Only a trace asks why: nothing is made for the trials that are counted.
  startReset(model, state, state.recorder && { from: carrier, to, believed: options.completion_byMate[to] });
  return false;
}

/** Whether a scripted pass is open enough, at the first look and at the second. */
function isThereTwice(model: ChanceModel, state: ChanceState, carrier: number, to: number, options: Options): boolean {
  const floor = model.parameters.passFloor * model.passNorm;
  if (options.completion_byMate[to] < floor) return false;
  lookAgain(model, state, carrier, to, options);
  return options.completion_byMate[to] >= floor;
}

/** A carrier throws in his last stride, not before. */
function carryLeft(state: ChanceState, carrier: number): boolean {
  const path = state.unit.path[carrier];
  if (path === null) return false;
  const { motion } = state.bodies;
  const dx = path[path.length - 2] - motion[stride * carrier];
  const dy = path[path.length - 1] - motion[stride * carrier + 1];
  return dx * dx + dy * dy > lastStride * lastStride;
}

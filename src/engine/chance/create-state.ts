import { createDutyBoard } from '../defense/duty.ts';
import { createSchemeView, resetSchemeView } from '../defense/view.ts';
import { normalPair, unit } from '../random/draws.ts';
import { settleDefense } from './coverage.ts';
import { drawKind, drawKinds } from './draw-kinds.ts';
import type { ChanceModel } from './model.ts';
import { rememberAll } from './perceive.ts';
import { passStyles } from './script.ts';
import {
  type BallState,
  type Bodies,
  ballMode,
  type ChanceState,
  type Counts,
  type Coverage,
  historySteps,
  onCatch,
  phase,
  stride,
  task,
  type Unit,
} from './state.ts';

/** Memory for the trials of one model; `resetState` makes it ready for each. */
export function createChanceState(model: ChanceModel): ChanceState {
  return {
    bodies: createBodies(model.agents),
    unit: createUnit(model),
    ball: createBall(),
    coverage: createCoverage(model),
    counts: createCounts(),
    begun_byBeat: new Uint8Array(model.program.script.beats.length),
    drawsUsed: new Int32Array(drawKinds * model.agents),
    holder_byStep: new Int8Array(historySteps),
    trial: 0,
    step: 0,
    time: 0,
    penaltyEnds: 0,
    shotClockEnds: 0,
    setUpTime: 0,
    probeTime: 0,
    clearFailsAt: Number.POSITIVE_INFINITY,
    scriptSince: 0,
    lastTen: false,
    lastTenDue: false,
    end: null,
    recorder: null,
    forced: null,
    forcedRun: null,
    byReadsAlone: false,
    watching: false,
  };
}

function createBodies(agents: number): Bodies {
  return {
    motion: new Float64Array(stride * agents),
    history: Array.from({ length: historySteps }, () => new Float64Array(stride * agents)),
    target: new Float64Array(2 * agents),
    arrive: new Uint8Array(agents),
    effort: new Float64Array(agents),
    planted: new Uint8Array(agents),
    present: new Uint8Array(agents),
  };
}

function createUnit(model: ChanceModel): Unit {
  const { script, lastTen } = model.program;
  const beats = Math.max(script.beats.length, lastTen === null ? 0 : lastTen.beats.length);
  return {
    task: new Uint8Array(6),
    path: [null, null, null, null, null, null],
    onCatch: new Uint8Array(6),
    leg: new Uint8Array(6),
    station: new Float64Array(12),
    post: new Float64Array(12),
    drift: new Float64Array(12),
    goBy: new Float64Array(6),
    goFrom: new Float64Array(6),
    partner: new Int8Array(6),
    passTo: new Int8Array(6),
    passStyle: new Uint8Array(6),
    passSince: new Float64Array(6),
    fakeTo: new Int8Array(6),
    fakedUntil: new Float64Array(6),
    holdUntil: new Float64Array(6),
    mustShoot: new Uint8Array(6),
    beatStarted: new Float64Array(beats),
    script,
    newestBeat: -1,
    lastProgress: 0,
    phase: phase.settingUp,
    phaseSince: 0,
    phasePasses: 0,
  };
}

function createBall(): BallState {
  return {
    mode: ballMode.held,
    x: 0.5,
    y: 0.5,
    height: 0.5,
    holder: 0,
    passer: -1,
    heldSince: 0.5,
    readyAt: 0.5,
    nextDecision: 0.5,
    nextStrip: 0.5,
    ranIn: false,
    from: 0,
    to: 0,
    fromX: 0.5,
    fromY: 0.5,
    toX: 0.5,
    toY: 0.5,
    startAt: 0.5,
    endAt: 0.5,
    arriveAt: 0.5,
    lob: false,
    speedAtEnd: 0.5,
    style: 0,
    why: 0,
    fate: 0,
    fateBy: -1,
    fateX: 0.5,
    fateY: 0.5,
    goalOdds: 0.5,
    luck: 0.5,
    completion: 0.5,
    believed: 0.5,
    winner: -1,
    lossKind: 'dropped',
    far: false,
    assistedBy: -1,
  };
}

function createCoverage(model: ChanceModel): Coverage {
  const defenders = model.covering;
  return {
    view: createSchemeView(defenders),
    memory: new Int8Array(model.matchup.scheme.memorySize),
    wanted: createDutyBoard(defenders),
    noticed: createDutyBoard(defenders),
    pending: createDutyBoard(defenders),
    played: createDutyBoard(defenders),
    adoptAt: new Float64Array(defenders),
    changedAt: new Float64Array(defenders),
    preparedAt: new Float64Array(defenders),
    lateBy: new Float64Array(defenders),
    bittenFrom: new Float64Array(defenders),
    bittenUntil: new Float64Array(defenders),
    bittenTo: new Int8Array(defenders),
    seen: new Float64Array(12),
    seenBall: new Float64Array(2),
    ballSince: 0,
    nextLook: 0,
  };
}

function createCounts(): Counts {
  return {
    goals: 0,
    shots: 0,
    turnovers: 0,
    firstShot: Number.NaN,
    firstGoal: Number.NaN,
    onTarget: 0,
    saves: 0,
    assistedGoals: 0,
    assistedShots: 0,
    goalOddsSum: 0,
    farShots: 0,
    farGoals: 0,
    passes: 0,
    playPasses: 0,
    passesCaught: 0,
    turnover: null,
    back: 0,
  };
}

/** Spread of the times that a unit takes to set up and to look, as shares of their means (assumption: organized, not a machine). */
const setUpSpread = 0.3;
const probeSpread = 0.5;
/** However long the penalty, the ball is not swung longer than this before the play is run. Seconds. */
const longestProbe = 20;

/** Draw how long this unit takes to set up, and how long it then looks at what it faces: longer when it has more time. */
function drawTempo(model: ChanceModel, state: ChanceState): void {
  const { setUpSeconds, probeShare } = model.parameters;
  normalPair(model.draws, state.trial, 0, drawKind.start, 0);
  const [setUp, probe] = model.draws.normals;
  const usualProbe = Math.min(longestProbe, probeShare * model.matchup.penalty.seconds);
  state.setUpTime = model.flagDown ? 0 : setUpSeconds * Math.max(0.3, 1 + setUpSpread * setUp);
  state.probeTime = model.flagDown ? 0 : usualProbe * Math.max(0.1, 1 + probeSpread * probe);
  state.clearFailsAt = Number.POSITIVE_INFINITY;
  if (model.matchup.penalty.start !== 'clear') return;
  state.setUpTime += clearSeconds;
  if (unit(model.draws.words[2]) >= clearingShare) state.clearFailsAt = clearSeconds;
}

/** Bringing the ball from the midline to the box takes about this long: 25 yd at a walk and a run (assumption). Seconds. */
const clearSeconds = 6;
/** Clears that succeed: .863 over 72 NCAA Division I men's teams, 2022-23 (SCORE Network repository), all clears, a man up or not. */
const clearingShare = 0.863;

/** Make a state ready for one trial: everyone at his start, ball with the starter, nothing counted. */
export function resetState(model: ChanceModel, state: ChanceState, trial: number): void {
  const { penalty } = model.matchup;
  state.trial = trial;
  state.step = 0;
  state.time = 0;
  state.drawsUsed.fill(0);
  state.penaltyEnds = model.flagDown ? Number.POSITIVE_INFINITY : penalty.seconds;
  state.shotClockEnds = penalty.shotClock ?? Number.POSITIVE_INFINITY;
  state.scriptSince = Number.NaN;
  state.lastTen = false;
  state.lastTenDue = false;
  state.end = null;
  state.forced = null;
  state.forcedRun = null;
  state.byReadsAlone = false;
  state.watching = false;
  Object.assign(state.counts, createCounts());
  state.begun_byBeat.fill(0);
  resetCoverage(model, state);
  restart(model, state, model.program.starter);
  drawTempo(model, state);
}

function resetCoverage(model: ChanceModel, state: ChanceState): void {
  const { coverage } = state;
  coverage.memory.fill(0);
  resetSchemeView(coverage.view);
  coverage.view.ball = model.program.starter;
  coverage.view.sense = model.sense;
  coverage.view.star = model.star;
  for (const board of [coverage.wanted, coverage.noticed, coverage.pending, coverage.played]) {
    board.kind.fill(0);
    board.a.fill(-1);
    board.b.fill(-1);
    for (let defender = 0; defender < model.covering; defender++) {
      board.x[defender] = model.starts[12 + 2 * defender];
      board.y[defender] = model.starts[12 + 2 * defender + 1];
    }
  }
  coverage.adoptAt.fill(Number.POSITIVE_INFINITY);
  coverage.changedAt.fill(0);
  coverage.preparedAt.fill(0);
  coverage.lateBy.fill(0);
  coverage.ballSince = 0;
}

/** Put the ball in play: everyone where he stands at a restart, `holder` with the ball (at x, y when it went out there). */
export function restart(model: ChanceModel, state: ChanceState, holder: number, x?: number, y?: number): void {
  const { bodies, unit, ball } = state;
  const homes = x === undefined ? model.starts : model.homes;
  for (let agent = 0; agent < model.agents; agent++) placeAgent(state, agent, homes[2 * agent], homes[2 * agent + 1]);
  if (x !== undefined && y !== undefined) placeAgent(state, holder, x, y);
  bodies.present.fill(1);
  if (model.released >= 0) bodies.present[model.released] = 0;
  bodies.planted.fill(0);
  unit.task.fill(task.stay);
  unit.onCatch.fill(onCatch.stand);
  unit.drift.fill(0);
  unit.station.set(model.program.homes);
  unit.post.set(model.program.homes);
  unit.passTo.fill(-1);
  unit.fakeTo.fill(-1);
  unit.mustShoot.fill(0);
  unit.holdUntil.fill(0);
  unit.fakedUntil.fill(0);
  state.coverage.bittenUntil.fill(0);
  unit.script = state.lastTen && model.program.lastTen !== null ? model.program.lastTen : model.program.script;
  unit.beatStarted.fill(Number.NaN);
  unit.newestBeat = -1;
  unit.phase = phase.settingUp;
  unit.phaseSince = state.time;
  unit.phasePasses = state.counts.passes;
  unit.lastProgress = state.time;
  ball.mode = ballMode.held;
  ball.holder = holder;
  ball.from = holder;
  ball.passer = -1;
  ball.assistedBy = -1;
  ball.x = bodies.motion[stride * holder];
  ball.y = bodies.motion[stride * holder + 1];
  ball.heldSince = state.time;
  ball.ranIn = false;
  ball.readyAt = state.time;
  ball.nextDecision = state.time;
  ball.nextStrip = state.time + 0.5;
  ball.style = passStyles.indexOf('adjacent');
  state.holder_byStep.fill(holder);
  rememberAll(state);
  settleDefense(model, state);
  rememberAll(state);
  state.recorder?.event({ kind: 'restart', time: state.time, who: holder });
}

function placeAgent(state: ChanceState, agent: number, x: number, y: number): void {
  const { motion, target } = state.bodies;
  motion[stride * agent] = x;
  motion[stride * agent + 1] = y;
  motion[stride * agent + 2] = 0;
  motion[stride * agent + 3] = 0;
  target[2 * agent] = x;
  target[2 * agent + 1] = y;
}

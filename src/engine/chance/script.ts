import type { CompiledAction, CompiledBeat, CompiledTrigger } from './program.ts';
import { ballMode, type ChanceState, onCatch, phase, task } from './state.ts';
import { runPatience } from './timing.ts';

/** What has just happened to the ball or a runner that a beat may wait for. */
export type ScriptEvent = 'start' | 'catch' | 'pass' | 'arrival';

/** Numbers under which the style of a pass is kept in typed arrays. */
export const passStyles = ['adjacent', 'skip', 'feed'] as const;

/** Begin the script from its first beat. */
export function startScript(state: ChanceState): void {
  const { unit } = state;
  clearOrders(state);
  unit.beatStarted.fill(Number.NaN);
  unit.newestBeat = -1;
  unit.phase = phase.script;
  unit.phaseSince = state.time;
  unit.lastProgress = state.time;
  state.scriptSince = state.time;
  fireTriggers(state, 'start', -1, -1);
}

/** Forget every order that a script or a read gave. */
export function clearOrders(state: ChanceState): void {
  const { unit } = state;
  unit.passTo.fill(-1);
  unit.fakeTo.fill(-1);
  unit.mustShoot.fill(0);
  unit.holdUntil.fill(0);
}

/** Start every beat that waited for this: `a` caught, threw or arrived; `b` is the receiver of a pass. */
export function fireTriggers(state: ChanceState, event: ScriptEvent, a: number, b: number): void {
  const { unit } = state;
  if (unit.phase !== phase.script) return;
  const beats = unit.script.beats;
  for (let index = 0; index < beats.length; index++) {
    if (unit.beatStarted[index] >= 0) continue;
    if (!triggerMatches(beats[index].trigger, event, a, b)) continue;
    // A run that ended with the ball in his stick begins nothing that another man was to do with that ball.
    if (event === 'arrival' && state.ball.holder === a && needsBallOf(beats[index], a)) continue;
    startBeat(state, index);
  }
}

/** Whether a beat asks somebody else than `holder` to do what only the man with the ball can. */
function needsBallOf({ actions }: CompiledBeat, holder: number): boolean {
  for (let each = 0; each < actions.length; each++) {
    const { kind, by } = actions[each];
    if (by !== holder && (kind === 'pass' || kind === 'fake' || kind === 'shot' || kind === 'carry')) return true;
  }
  return false;
}

/** Whether a beat is on its way without the ball: its call has been counted down from, or the man it waits for is running. */
export function beatIsComing({ unit }: ChanceState): boolean {
  const beats = unit.script.beats;
  for (let index = 0; index < beats.length; index++) {
    if (unit.beatStarted[index] >= 0) continue;
    const { trigger } = beats[index];
    if (trigger.kind === 'call' && unit.beatStarted[trigger.beat] >= 0) return true;
    if (trigger.kind === 'arrival' && isSent(unit.task[trigger.who])) return true;
  }
  return false;
}

function isSent(kind: number): boolean {
  return kind === task.path || kind === task.waitToRun || kind === task.carry;
}

/** Start the beats whose call has come. */
export function fireCalls(state: ChanceState): void {
  const { unit } = state;
  if (unit.phase !== phase.script) return;
  const beats = unit.script.beats;
  for (let index = 0; index < beats.length; index++) {
    const trigger = beats[index].trigger;
    if (trigger.kind !== 'call' || unit.beatStarted[index] >= 0) continue;
    if (state.time >= unit.beatStarted[trigger.beat] + trigger.seconds) startBeat(state, index);
  }
}

function triggerMatches(trigger: CompiledTrigger, event: ScriptEvent, a: number, b: number): boolean {
  switch (trigger.kind) {
    case 'start':
      return event === 'start';
    case 'catch':
      return event === 'catch' && trigger.by === a;
    case 'pass':
      return event === 'pass' && trigger.from === a && (trigger.to < 0 || trigger.to === b);
    case 'arrival':
      return event === 'arrival' && trigger.who === a;
    case 'call':
      return false;
  }
}

function startBeat(state: ChanceState, index: number): void {
  const { unit } = state;
  unit.beatStarted[index] = state.time;
  unit.newestBeat = index;
  unit.lastProgress = state.time;
  const beat = unit.script.beats[index];
  if (!state.lastTen) state.begun_byBeat[index] = 1;
  state.recorder?.event({ kind: 'beat', time: state.time, beat: beat.id, lastTen: state.lastTen });
  for (let each = 0; each < beat.actions.length; each++) giveOrder(state, beat.actions[each]);
}

/** Hand one action to the man who is to do it. */
export function giveOrder(state: ChanceState, action: CompiledAction): void {
  const { unit } = state;
  const by = action.by;
  switch (action.kind) {
    case 'pass':
      unit.passTo[by] = action.to;
      unit.passStyle[by] = passStyles.indexOf(action.style);
      unit.passSince[by] = state.time;
      return;
    case 'carry':
    case 'stepIn':
      sendAlong(state, by, action.path, state.ball.holder === by ? task.carry : task.path);
      return;
    case 'run':
      orderRun(state, action);
      return;
    case 'pick':
      sendAlong(state, by, action.path, task.pick);
      unit.partner[by] = action.on;
      unit.goBy[by] = state.time + runPatience + 1;
      return;
    case 'seal':
      state.bodies.planted[by] = 0;
      unit.task[by] = task.seal;
      unit.partner[by] = action.on;
      unit.goBy[by] = state.time + runPatience + 1;
      return;
    case 'fake':
      unit.fakeTo[by] = action.toward;
      return;
    case 'hold':
      unit.holdUntil[by] = state.time + action.seconds;
      return;
    case 'shot':
      unit.mustShoot[by] = 1;
      return;
  }
}

function orderRun(state: ChanceState, { by, path, waits }: Extract<CompiledAction, { kind: 'run' }>): void {
  const { unit, time, forcedRun } = state;
  const isForced = forcedRun !== null && forcedRun.path === path;
  if (isForced) state.forcedRun = null;
  unit.goFrom[by] = isForced ? forcedRun.time : time;
  unit.goBy[by] = isForced ? forcedRun.time : time + runPatience;
  sendAlong(state, by, path, waits || time < unit.goFrom[by] ? task.waitToRun : task.path);
}

function sendAlong(state: ChanceState, who: number, path: Float64Array, kind: number): void {
  const { unit, ball } = state;
  unit.path[who] = path;
  unit.leg[who] = 0;
  state.bodies.planted[who] = 0;
  // First he has to have the ball: a man who runs off from a pass on its way never gets it.
  if (ball.mode === ballMode.pass && ball.to === who) unit.onCatch[who] = onCatch.carry;
  else unit.task[who] = kind;
}

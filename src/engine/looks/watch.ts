import type { ChanceModel } from '../chance/model.ts';
import { createOptions, type Options } from '../chance/options.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import { ballMode, type ChanceState, phase, stride } from '../chance/state.ts';
import { weighInto } from '../chance/weigh.ts';
import { whoLeft } from './who-left.ts';
import type { LookKind, LookWindow } from './window.ts';

/** How often the carrier's options are weighed while a look is watched, in steps. */
const watchEvery = 2;
/** A look that is gone for no longer than this is still the same window. Seconds. */
const flicker = 0.25;
/** A script that runs longer than this is not watched further. Seconds. */
const longestScript = 25;
/** A pass to a man this near to the goal, above its line, is a feed. Yards. */
const feedRadius = 7.5;

interface OpenWindow {
  opens: number;
  last: number;
  seenAt: number;
  completion: number;
  shotOdds: number;
  kind: LookKind;
  leftBy: number;
  duty: number;
  lateBy: number;
}

/**
 * Watch trials `from` (included) to `to` (excluded): the script runs by itself, nobody takes an opening, and every look that
 * is truly there (not only the ones a carrier would notice) is kept as a window. Stops each trial where its script ends.
 */
export function watchLooks(model: ChanceModel, state: ChanceState, from: number, to: number): LookWindow[] {
  const windows: LookWindow[] = [];
  const options = createOptions();
  for (let trial = from; trial < to; trial++) watchTrial(model, state, trial, options, windows);
  return windows;
}

function watchTrial(
  model: ChanceModel,
  state: ChanceState,
  trial: number,
  options: Options,
  windows: LookWindow[],
): void {
  const open = new Map<number, OpenWindow>();
  beginTrial(model, state, trial);
  state.watching = true;
  while (state.end === null && !scriptIsOver(state)) {
    advanceTrial(model, state);
    if (state.step % watchEvery === 0) watchMoment(model, state, options, open, windows);
  }
  for (const [key, window] of open) windows.push(closeWindow(trial, key, window));
}

function scriptIsOver(state: ChanceState): boolean {
  if (!(state.scriptSince >= 0)) return false;
  return state.unit.phase !== phase.script || state.time > state.scriptSince + longestScript;
}

function watchMoment(
  model: ChanceModel,
  state: ChanceState,
  options: Options,
  open: Map<number, OpenWindow>,
  windows: LookWindow[],
): void {
  const { ball } = state;
  const now = state.time - state.scriptSince;
  const carrier = ball.mode === ballMode.held && ball.holder < 6 && state.time >= ball.readyAt ? ball.holder : -1;
  if (carrier >= 0 && now >= 0) {
    weighInto(options, model, state, carrier, state.bodies.motion);
    const floor = options.holdValue + model.parameters.greedyMargin;
    if (options.shotOdds > 0 && options.shotValue > floor)
      keepOpen(model, state, open, carrier, carrier, 1, options.shotOdds, now);
    for (let mate = 0; mate < 6; mate++) {
      if (!isLook(model, options, mate, floor)) continue;
      keepOpen(model, state, open, carrier, mate, options.completion_byMate[mate], options.shotOdds_byMate[mate], now);
    }
  }
  for (const [key, window] of open) {
    if (now - window.last <= flicker) continue;
    windows.push(closeWindow(state.trial, key, window));
    open.delete(key);
  }
}

function isLook(model: ChanceModel, options: Options, mate: number, floor: number): boolean {
  return (
    options.shotOdds_byMate[mate] > 0 &&
    options.value_byMate[mate] > floor &&
    options.completion_byMate[mate] >= model.parameters.openFloor
  );
}

function keepOpen(
  model: ChanceModel,
  state: ChanceState,
  open: Map<number, OpenWindow>,
  carrier: number,
  to: number,
  completion: number,
  shotOdds: number,
  now: number,
): void {
  const key = carrier * 6 + to;
  const known = open.get(key);
  if (known !== undefined) {
    known.last = now;
    // Until the carrier can have seen it, what counts is what it has become, not what it was.
    if (state.time <= known.seenAt) {
      known.completion = completion;
      known.shotOdds = shotOdds;
    }
    return;
  }
  const left = whoLeft(model, state, carrier, to);
  open.set(key, {
    opens: now,
    last: now,
    seenAt: state.time + model.reaction_byAgent[carrier],
    completion,
    shotOdds,
    kind: kindOf(state, carrier, to),
    ...left,
  });
}

function closeWindow(trial: number, key: number, window: OpenWindow): LookWindow {
  const { last, ...rest } = window;
  return { trial, from: Math.floor(key / 6), to: key % 6, closes: last, ...rest };
}

function kindOf(state: ChanceState, from: number, to: number): LookKind {
  if (from === to) return 'shot';
  const { motion } = state.bodies;
  const x = motion[stride * to];
  const y = motion[stride * to + 1];
  if (y > 0 && x * x + y * y < feedRadius * feedRadius) return 'feed';
  return isNeighbour(state, from, to) ? 'pass' : 'skip';
}

function isNeighbour(state: ChanceState, from: number, to: number): boolean {
  const { ring, ringSize } = state.coverage.view;
  for (let seat = 0; seat < ringSize; seat++) {
    const next = ring[(seat + 1) % ringSize];
    if ((ring[seat] === from && next === to) || (ring[seat] === to && next === from)) return true;
  }
  return false;
}

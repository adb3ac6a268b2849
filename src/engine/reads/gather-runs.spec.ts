import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { advanceTrial, beginTrial, runTrial } from '../chance/run.ts';
import { busyPlay, mirrorMatchup, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { type ChanceState, stepSeconds, task } from '../chance/state.ts';
import { gatherRuns, mostRunLooks, timeOfLook } from './gather-runs.ts';
import { runOrders } from './run-orders.ts';

// C pops on P's catch, at once; WL cuts when his place is open.
const atOnce = { play: samplePlay, spot: 'C', beat: 'over' };
const whenOpen = { play: busyPlay, spot: 'WL', beat: 'pick' };

const orderOf = ({ play, spot, beat }: typeof atOnce) => ({
  beat: play.beats.findIndex(({ id }) => id === beat),
  runner: play.spots.findIndex(({ id }) => id === spot),
});

function gather(of: typeof atOnce, from: number, to: number, mirrored = false) {
  const matchup = sampleMatchup({ play: of.play });
  const model = compileChance(mirrored ? mirrorMatchup(matchup) : matchup, 3);
  const memory = { state: createChanceState(model), spare: createChanceState(model) };
  return { model, chances: gatherRuns(model, memory, orderOf(of), { from, to, horizon: 10 }) };
}

/** How a whole trial went. */
const ending = ({ end, step, counts, bodies, drawsUsed }: ChanceState) => ({
  end,
  step,
  counts: { ...counts },
  motion: [...bodies.motion],
  drawsUsed: [...drawsUsed],
});

describe('when a man could have gone', () => {
  it.each([atOnce, whenOpen])('comes of chances in which the play comes to the order: $spot', (of) => {
    const { chances } = gather(of, 0, 24);
    expect(chances.length).toBeGreaterThan(8);
    for (const { looks } of chances) {
      expect(looks.length).toBeGreaterThan(0);
      expect(looks.length).toBeLessThanOrEqual(mostRunLooks);
    }
  });

  it('does not depend on which trials were tried before', () => {
    const { chances } = gather(whenOpen, 0, 24);
    expect(gather(whenOpen, 12, 24).chances).toEqual(chances.filter(({ trial }) => trial >= 12));
  });

  it.each([atOnce, whenOpen])('is in the mirror what it is: $spot', (of) => {
    const plain = gather(of, 0, 16).chances;
    const mirrored = gather(of, 0, 16, true).chances;
    const told = (chances: typeof plain) =>
      chances.map(({ looks, goOn, stays }) => ({ cues: looks.map(({ cues }) => cues), goOn, stays }));
    expect(told(mirrored)).toEqual(told(plain));
  });

  it('makes a difference', () => {
    const { chances } = gather(atOnce, 0, 24);
    const goals = chances.map(({ looks, stays }) => [looks[0]!.outcome.goals, stays.goals]);
    expect(goals.some(([now, late]) => now !== late)).toBe(true);
  });

  it('is nothing for a run that the play does not have', () => {
    const { model } = gather(atOnce, 0, 1);
    const memory = { state: createChanceState(model), spare: createChanceState(model) };
    const none = { beat: 0, runner: orderOf(atOnce).runner };
    expect(gatherRuns(model, memory, none, { from: 0, to: 5, horizon: 10 })).toEqual([]);
  });
});

describe('a man who is made to go when he would have gone', () => {
  it('at once, comes to the very same', () => {
    const { chances } = gather(atOnce, 0, 24);
    for (const { looks, goOn, wentAfter } of chances) {
      expect(wentAfter).toBe(0);
      expect(looks[0]!.outcome).toEqual(goOn);
    }
  });

  it('when his place is open, comes to the very same where a look falls on it', () => {
    const { chances } = gather(whenOpen, 0, 60);
    const atLook = chances.flatMap(({ looks, goOn, wentAfter }) => {
      const look = looks.findIndex((_, at) => Math.abs(timeOfLook(at) - (wentAfter ?? -1)) < stepSeconds / 2);
      return look < 0 ? [] : [{ goOn, outcome: looks[look]!.outcome }];
    });
    expect(atLook.length).toBeGreaterThan(5);
    for (const { goOn, outcome } of atLook) expect(outcome).toEqual(goOn);
  });

  it('plays the whole trial to the last bit, whenever that was', () => {
    const { model } = gather(whenOpen, 0, 1);
    const { runner, beat } = orderOf(whenOpen);
    const run = model.program.script.beats[beat]!.actions.find(({ kind }) => kind === 'run')!;
    if (run.kind !== 'run') throw new TypeError('expected a run');
    const state = createChanceState(model);
    let compared = 0;
    for (let trial = 0; trial < 12; trial++) {
      beginTrial(model, state, trial);
      let went = -1;
      while (state.end === null) {
        advanceTrial(model, state);
        if (went < 0 && state.unit.task[runner] === task.path && state.unit.path[runner] === run.path)
          went = state.time;
      }
      if (went < 0) continue;
      const ordinary = ending(state);
      beginTrial(model, state, trial);
      state.forcedRun = { path: run.path, time: went - stepSeconds / 2 };
      while (state.end === null) advanceTrial(model, state);
      expect(ending(state)).toEqual(ordinary);
      compared++;
    }
    expect(compared).toBeGreaterThan(3);
  });
});

describe('a run whose time is set', () => {
  it('begins then and not before, and other runs of his are left alone', () => {
    const { model } = gather(atOnce, 0, 1);
    const { runner } = orderOf(atOnce);
    const state = createChanceState(model);
    const recorder = createTraceRecorder(model);
    const goesAt = (time: number | null): number => {
      beginTrial(model, state, 2);
      state.watching = true;
      const action = model.program.script.beats[1]!.actions[1]!;
      if (time !== null && action.kind === 'run') state.forcedRun = { path: action.path, time };
      while (state.end === null && state.unit.task[runner] !== task.path) advanceTrial(model, state);
      return state.time;
    };
    const usual = goesAt(null);
    expect(goesAt(usual + 0.475)).toBeCloseTo(usual + 0.5, 6);
    state.recorder = recorder;
    runTrial(model, state, 2);
    const ordinary = ending(state);
    state.recorder = null;
    beginTrial(model, state, 2);
    state.forcedRun = { path: Float64Array.of(2, 9), time: 1000 };
    while (state.end === null) advanceTrial(model, state);
    expect(ending(state)).toEqual(ordinary);
  });

  it('is one of those that the play asks of him', () => {
    const orders = busyPlay.spots.flatMap((_, runner) => runOrders(busyPlay, runner));
    const named = orders.map(({ beat, runner }) => `${busyPlay.beats[beat]!.id} ${busyPlay.spots[runner]!.id}`);
    expect(named.sort()).toEqual(['begin TL', 'flash C', 'look X', 'pick WL']);
  });
});

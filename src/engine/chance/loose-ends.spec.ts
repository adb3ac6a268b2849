import { describe, expect, it } from 'vitest';
import { schemes } from '../defense/schemes.ts';
import type { Play } from '../offense/play.ts';
import { createChanceState } from './create-state.ts';
import { dropBall } from './loose-ball.ts';
import type { PenaltyPlan } from './matchup.ts';
import { type ChanceModel, compileChance } from './model.ts';
import { defaultChanceParameters } from './parameters.ts';
import { advanceTrial, beginTrial, recordTrace } from './run.ts';
import { busyPlay, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import { giveOrder, startScript } from './script.ts';
import { endShot } from './shoot.ts';
import { ballMode, type ChanceState, phase, stride, task } from './state.ts';

// One test for each way in which a chance once got stuck or counted wrong.

const seed = 3;

function begin(play: Play, penalty: Partial<PenaltyPlan> = {}): { model: ChanceModel; state: ChanceState } {
  const model = compileChance(sampleMatchup({ play, penalty }), seed);
  const state = createChanceState(model);
  beginTrial(model, state, 0);
  return { model, state };
}

function advance(model: ChanceModel, state: ChanceState, seconds: number): void {
  for (let until = state.time + seconds; state.time < until && state.end === null; ) advanceTrial(model, state);
}

describe('a man waits only for the pass that is on its way to him', () => {
  it.each([samplePlay, busyPlay])('$id', (play) => {
    const { model, state } = begin(play);
    let loose = 0;
    for (let trial = 0; trial < 40; trial++) {
      beginTrial(model, state, trial);
      while (state.end === null) {
        advanceTrial(model, state);
        if (state.ball.mode === ballMode.loose) loose++;
        for (let who = 0; who < 6; who++) {
          if (state.end !== null || state.unit.task[who] !== task.receive) continue;
          expect(state.ball.mode, `trial ${trial}, ${state.time} s`).toBe(ballMode.pass);
          expect(state.ball.to).toBe(who);
        }
      }
    }
    expect(loose).toBeGreaterThan(0);
  });
});

describe('a man who set a pick can be moved again', () => {
  const crease = 4;

  function pickedAt(): { model: ChanceModel; state: ChanceState } {
    const chance = begin(samplePlay);
    chance.state.bodies.planted[crease] = 1;
    return chance;
  }

  it('when he seals', () => {
    const { state } = pickedAt();
    giveOrder(state, { kind: 'seal', by: crease, on: 0 });
    expect(state.bodies.planted[crease]).toBe(0);
  });

  it('when he goes for a loose ball', () => {
    const { model, state } = pickedAt();
    const { motion } = state.bodies;
    dropBall(model, state, motion[stride * crease]!, motion[stride * crease + 1]!, 'dropped');
    const { winner } = state.ball;
    expect(state.bodies.planted[crease]).toBe(winner === crease ? 0 : 1);
    expect(winner).toBe(crease);
  });
});

describe('a script is given up only when nothing more of it comes', () => {
  const calledLate = (seconds: number): Play => ({
    ...samplePlay,
    beats: [
      { id: 'stand', when: { kind: 'start' }, actions: [{ kind: 'hold', by: 'TR', seconds: 0.1 }] },
      {
        id: 'late',
        when: { kind: 'call', beat: 'stand', seconds },
        actions: [{ kind: 'pass', by: 'TR', to: 'P', style: 'adjacent' }],
      },
    ],
  });

  it.each([1, 3, 5])('a call after %d s is waited for', (seconds) => {
    const { model, state } = begin(calledLate(seconds));
    state.watching = true;
    startScript(state);
    advance(model, state, seconds + 0.1);
    expect(state.end).toBeNull();
    expect(state.unit.beatStarted[1]).toBeCloseTo(seconds, 1);
  });

  it('without one the unit resets', () => {
    const { model, state } = begin({ ...calledLate(1), beats: [calledLate(1).beats[0]!] });
    state.watching = true;
    startScript(state);
    advance(model, state, model.parameters.stallPatience + 0.5);
    expect(state.unit.phase).toBe(phase.resetting);
    // It is not begun again against the same picture: the ball goes round first.
    const thrown = state.counts.passes;
    while (state.end === null && state.unit.phase !== phase.script && state.time < 20) advanceTrial(model, state);
    expect(state.scriptSince).toBeGreaterThan(model.parameters.stallPatience);
    expect(state.counts.passes).toBeGreaterThan(thrown);
  });
});

describe('a man who has stepped in by a read', () => {
  it('is not sent there for as long as he is free: he reads on', () => {
    const stepIn: Play = {
      ...samplePlay,
      beats: [{ id: 'stand', when: { kind: 'start' }, actions: [{ kind: 'hold', by: 'TR', seconds: 0.1 }] }],
      reads: [
        { carrier: 'TR', cues: [{ kind: 'iAmFree' }], then: { kind: 'stepIn', by: 'TR', to: { x: 5, y: 10 } } },
        { carrier: 'TR', cues: [], then: { kind: 'hold', by: 'TR', seconds: 1 } },
      ],
    };
    // No opening is good enough to be taken before the reads are through.
    const parameters = { ...defaultChanceParameters, playMargin: 9 };
    const model = compileChance(sampleMatchup({ play: stepIn }), seed, { parameters });
    const state = createChanceState(model);
    beginTrial(model, state, 0);
    // Nobody is near him, and nobody comes.
    const alone = (): void => {
      for (let agent = 6; agent < 11; agent++) {
        state.bodies.motion[stride * agent] = -20;
        state.bodies.motion[stride * agent + 1] = -10 + agent;
      }
    };
    startScript(state);
    const { starter, homes } = model.program;
    state.bodies.motion.set(homes.subarray(2 * starter, 2 * starter + 2), stride * starter);
    alone();
    for (const past of state.bodies.history) past.set(state.bodies.motion);
    while (state.time < 5 && state.unit.holdUntil[starter]! < 1) {
      alone();
      advanceTrial(model, state);
    }
    expect(state.unit.station[2 * starter]).toBe(5);
    expect(state.unit.holdUntil[starter]).toBeGreaterThan(1);
  });
});

describe('a forced look is weighed before it is thrown', () => {
  it('whatever it leads to', () => {
    const model = compileChance(sampleMatchup({ scheme: schemes['five-man-rotation'] }), seed);
    let thrown = 0;
    const from = model.program.starter;
    for (let to = 0; to < 6; to++) {
      const trace = recordTrace(model, 2, { time: 0.5, from, to });
      const pass = trace.events.find((event) => event.kind === 'pass');
      if (pass?.kind !== 'pass' || pass.to !== to) continue;
      expect(pass.believed).toBeGreaterThan(0);
      thrown++;
    }
    expect(thrown).toBeGreaterThan(2);
  });
});

describe('the shot clock after a shot', () => {
  const clock = 40;

  /** Seconds on the shot clock after a shot of this outcome, 10 s into the chance. */
  function clockAfter(result: 'pipe' | 'save' | 'wide' | 'goal'): number {
    const { model, state } = begin(samplePlay, { seconds: 120, releasable: false, shotClock: clock });
    state.time = 10;
    state.ball.from = 0;
    state.ball.mode = ballMode.shot;
    Object.assign(model.scratch.outcome, { result, held: false, x: state.bodies.motion[0], y: state.bodies.motion[1] });
    // The face-off after a goal is won.
    const won = { ...model, parameters: { ...model.parameters, faceOff: 1 } };
    endShot(won, state);
    expect(state.end).toBeNull();
    return state.shotClockEnds - state.time;
  }

  it.each([
    ['pipe', clock],
    ['save', clock],
    ['goal', clock],
    ['wide', clock - 10],
  ] as const)('%s: %d s', (result, seconds) => {
    expect(clockAfter(result)).toBeCloseTo(seconds, 9);
  });
});

it('a free shot under a flag that goes wide is no turnover', () => {
  const model = compileChance(sampleMatchup({ scheme: schemes['settled-six'] }), seed);
  const state = createChanceState(model);
  beginTrial(model, state, 0);
  state.ball.from = 0;
  state.ball.mode = ballMode.shot;
  // A man of the unit is nearest to where it went out.
  Object.assign(model.scratch.outcome, { result: 'wide', x: state.bodies.motion[0], y: state.bodies.motion[1] });
  endShot(model, state);
  expect(state.end).toBe('flagOver');
  expect([state.counts.turnover, state.counts.turnovers]).toEqual(['wide', 0]);
});

it('a man of no reaction time sees the last picture', () => {
  const model = compileChance(sampleMatchup({ six: { reaction: 0 } }), seed);
  expect(model.reactionSteps_byAgent[0]).toBe(1);
});

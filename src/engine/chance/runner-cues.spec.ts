import { describe, expect, it } from 'vitest';
import { createChanceState } from './create-state.ts';
import { compileChance } from './model.ts';
import { rememberAll } from './perceive.ts';
import { beginTrial } from './run.ts';
import { type RunnerCue, runnerCueHolds } from './runner-cues.ts';
import { sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import { stride } from './state.ts';

const model = compileChance(sampleMatchup(), 1);
const man = (id: string): number => samplePlay.spots.findIndex((spot) => spot.id === id);
const [runner, passer] = [man('WL'), man('P')];

type Place = readonly [x: number, y: number, vx?: number, vy?: number];

interface Picture {
  /** The man on the runner. */
  readonly mine: Place;
  /** Another defender; the rest stand far off. */
  readonly other?: Place;
  readonly path?: readonly number[];
  /** Who has had the ball for long; -1 for nobody. */
  readonly holder?: number;
  readonly side?: 1 | -1;
}

/** The runner at (-8, 4), the passer at (0, 14), everybody as he has stood for long; he is to run to (-2, 6). */
function holdsIn(cue: RunnerCue, { mine, other, path = [-2, 6], holder = passer, side = 1 }: Picture): boolean {
  const state = createChanceState(model);
  beginTrial(model, state, 0);
  const put = (agent: number, [x, y, vx = 0, vy = 0]: Place): void => {
    state.bodies.motion.set([side * x, y, side * vx, vy], stride * agent);
  };
  put(runner, [-8, 4]);
  put(passer, [0, 14]);
  for (let agent = 6; agent < 6 + model.covering; agent++) put(agent, [30, 30 + agent]);
  put(6, mine);
  if (other !== undefined) put(7, other);
  state.unit.path[runner] = Float64Array.from(path, (value, at) => (at % 2 === 0 ? side * value : value));
  state.ball.x = 0;
  state.ball.y = 14;
  rememberAll(state);
  state.holder_byStep.fill(holder);
  return runnerCueHolds(model, state, runner, cue);
}

const far: Place = [20, 20];

describe('what a man who waits to run can see', () => {
  const cases: readonly (readonly [string, RunnerCue['kind'], Picture, boolean])[] = [
    ['his man steps to the ball', 'manGoesToBall', { mine: [-6, 5, 1.2, 1.8] }, true],
    ['his man stands', 'manGoesToBall', { mine: [-6, 5] }, false],
    ['his man comes to him', 'manGoesToBall', { mine: [-6, 5, -2, -1] }, false],
    ['his man stands between him and the ball', 'manLooksAway', { mine: [-6, 6.5] }, true],
    ['his man has both before him', 'manLooksAway', { mine: [-9, 0] }, false],
    ['his man has him at a right angle, and just sees him', 'manLooksAway', { mine: [-8, 14] }, false],
    ['his man has him a little farther round', 'manLooksAway', { mine: [-7, 13] }, true],
    ['his man is on him', 'manHasLeft', { mine: [-7, 5] }, false],
    ['his man is off', 'manHasLeft', { mine: [-5.5, 6] }, true],
    ['somebody stands where he goes', 'placeIsOpen', { mine: [-2, 7] }, false],
    ['nobody stands where he goes', 'placeIsOpen', { mine: [-2, 9] }, true],
    ['a stick in the lane', 'laneIsOpen', { mine: [-8, 5], other: [-1, 11] }, false],
    ['nobody in the lane', 'laneIsOpen', { mine: [-8, 5], other: [-4, 10] }, true],
    ['a body in his way', 'wayIsOpen', { mine: far, other: [-5, 5.5] }, false],
    ['a body beside his way', 'wayIsOpen', { mine: far, other: [-5, 6.5] }, true],
    ['a body at the bend of his way', 'wayIsOpen', { mine: far, other: [-8, -1], path: [-8, 0, -2, 6] }, false],
    ['the passer alone with the ball', 'passerIsReady', { mine: far }, true],
    ['the passer pressed', 'passerIsReady', { mine: far, other: [0.5, 13] }, false],
    ['nobody has the ball', 'passerIsReady', { mine: far, holder: -1 }, false],
    ['he himself has it', 'passerIsReady', { mine: far, holder: runner }, false],
    ['the ball in the air', 'ballIsInAir', { mine: far, holder: -1 }, true],
    ['the ball in a stick', 'ballIsInAir', { mine: far }, false],
  ];

  it.each(cases)('%s: %s', (_, kind, picture, holds) => {
    const cue = { kind } as RunnerCue;
    expect(holdsIn(cue, picture)).toBe(holds);
    expect(holdsIn(cue, { ...picture, side: -1 })).toBe(holds);
  });

  it('who has the ball', () => {
    expect(holdsIn({ kind: 'ballIsWith', who: passer }, { mine: far })).toBe(true);
    expect(holdsIn({ kind: 'ballIsWith', who: man('TR') }, { mine: far })).toBe(false);
  });

  it('only as late as he reacts', () => {
    const state = createChanceState(model);
    beginTrial(model, state, 0);
    rememberAll(state);
    state.holder_byStep.fill(passer);
    state.step = 100;
    const late = model.reactionSteps_byAgent[runner]!;
    // The ball has left the stick one step less than his reaction ago.
    for (let ago = 0; ago < late; ago++) state.holder_byStep[(state.step - ago) % 32] = -1;
    expect(runnerCueHolds(model, state, runner, { kind: 'ballIsInAir' })).toBe(false);
    state.step++;
    expect(runnerCueHolds(model, state, runner, { kind: 'ballIsInAir' })).toBe(true);
  });

  it('a passer who has not gathered the ball yet is not ready', () => {
    const state = createChanceState(model);
    beginTrial(model, state, 0);
    rememberAll(state);
    state.holder_byStep.fill(passer);
    state.step = 100;
    const late = model.reactionSteps_byAgent[runner]!;
    state.holder_byStep[(state.step - late - 1) % 32] = -1;
    expect(runnerCueHolds(model, state, runner, { kind: 'passerIsReady' })).toBe(false);
  });
});

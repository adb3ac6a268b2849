import { describe, expect, it } from 'vitest';
import { schemeList } from '../defense/schemes.ts';
import { copyState } from './copy-state.ts';
import { createChanceState } from './create-state.ts';
import { compileChance } from './model.ts';
import { advanceTrial, beginTrial } from './run.ts';
import { busyPlay, sampleMatchup } from './sample-matchup.fixture.ts';
import { ballMode, type ChanceState } from './state.ts';

/** How a trial ended, and where everybody was. What is left in a state from earlier trials, and means nothing, is not in it. */
const ending = ({ end, step, counts, bodies, ball }: ChanceState) => ({
  end,
  step,
  counts: { ...counts },
  motion: [...bodies.motion],
  ball: [ball.x, ball.y],
});

describe('a trial that is taken up again from a copy', () => {
  it.each(schemeList.slice(0, 4).map(({ id }) => id))('goes on as if it had never stopped, against %s', (id) => {
    const scheme = schemeList.find((each) => each.id === id)!;
    const model = compileChance(sampleMatchup({ scheme, play: busyPlay }), 5);
    const [whole, first, other] = [createChanceState(model), createChanceState(model), createChanceState(model)];
    for (let trial = 0; trial < 3; trial++) {
      beginTrial(model, whole, trial);
      while (whole.end === null) advanceTrial(model, whole);
      beginTrial(model, first, trial);
      const most = 200 + 60 * trial;
      while (first.end === null && (first.step < most || first.ball.mode !== ballMode.held)) advanceTrial(model, first);
      // Of a chance that was over by then there is nothing to take up.
      if (first.end !== null) continue;
      // A state that is somewhere else altogether, to show that nothing of it is left.
      beginTrial(model, other, trial + 100);
      for (let step = 0; step < 300 && other.end === null; step++) advanceTrial(model, other);
      copyState(first, other);
      while (other.end === null) advanceTrial(model, other);
      expect(ending(other)).toEqual(ending(whole));
    }
  });

  it('shares no memory with it', () => {
    const model = compileChance(sampleMatchup({ play: busyPlay }), 5);
    const [one, other] = [createChanceState(model), createChanceState(model)];
    beginTrial(model, one, 0);
    copyState(one, other);
    const before = ending(other);
    for (let step = 0; step < 200 && one.end === null; step++) advanceTrial(model, one);
    expect(ending(other)).toEqual(before);
  });
});

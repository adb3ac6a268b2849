import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { runTrial } from '../chance/run.ts';
import { mirrorMatchup, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { carrierActions } from './carrier-actions.ts';
import { forcedBy, gatherDecisions } from './gather-decisions.ts';
import { playGuided } from './play-guided.ts';

const matchup = sampleMatchup({ play: samplePlay });
const carrier = samplePlay.spots.findIndex(({ id }) => id === 'P');
const actions = carrierActions(samplePlay, carrier);

function gather(from: number, to: number, of = matchup) {
  const model = compileChance(of, 3);
  const memory = { state: createChanceState(model), spare: createChanceState(model) };
  return { model, chances: gatherDecisions(model, memory, carrier, actions, { from, to, horizon: 8 }) };
}

describe('what a carrier could have done', () => {
  const { model, chances } = gather(0, 24);

  it('comes of chances in which the play brings him the ball, look after look', () => {
    expect(chances.length).toBeGreaterThan(8);
    for (const { looks } of chances) {
      expect(looks.length).toBeGreaterThan(0);
      looks.forEach(({ time, outcome_byAction }, at) => {
        expect(outcome_byAction).toHaveLength(actions.length);
        if (at > 0) expect(time).toBeGreaterThan(looks[at - 1]!.time);
      });
    }
  });

  it('does not depend on which trials were tried before', () => {
    expect(gather(12, 24).chances).toEqual(chances.filter(({ trial }) => trial >= 12));
  });

  it('is in the mirror what it is', () => {
    const mirrored = gather(0, 24, mirrorMatchup(matchup)).chances;
    expect(mirrored.map(({ looks }) => looks.map(({ cues }) => cues))).toEqual(
      chances.map(({ looks }) => looks.map(({ cues }) => cues)),
    );
    expect(mirrored.map(({ goOn }) => goOn)).toEqual(chances.map(({ goOn }) => goOn));
  });

  it('is what the whole chance comes to when he does it there', () => {
    const { trial, looks } = chances.find((chance) => chance.looks.length > 0)!;
    const look = looks.at(-1)!;
    const state = createChanceState(model);
    const recorder = createTraceRecorder(model);
    state.recorder = recorder;
    runTrial(model, state, trial, forcedBy(model.matchup.play, carrier, actions[0]!, look));
    const { events } = recorder.finish();
    const shot = events.find((event) => event.kind === 'shot');
    expect(shot).toMatchObject({ who: carrier });
    // He winds up at his look and lets go within a second.
    expect(shot!.time).toBeGreaterThanOrEqual(look.time);
    expect(shot!.time).toBeLessThan(look.time + 1.5);
    expect(state.counts.goalOddsSum).toBeGreaterThanOrEqual(look.outcome_byAction[0]!.goals - 1e-6);
    expect(look.outcome_byAction[0]!.goals).toBeGreaterThan(0);
  });

  it('is the play itself when he leaves it to the play, whether by replay or without a read', () => {
    const state = createChanceState(model);
    const trials = chances.map(({ trial }) => trial);
    const guided = playGuided(model, state, carrier, { reads: [] }, { trials, horizon: 8 });
    chances.forEach(({ goOn }, at) => {
      expect(guided[at]!.goals).toBeCloseTo(goOn.goals, 5);
      expect(guided[at]!.left).toBe(goOn.left);
    });
  });

  it('adds up to the whole chance with what comes after the horizon', () => {
    const state = createChanceState(model);
    const trials = chances.map(({ trial }) => trial);
    const whole = playGuided(model, state, carrier, { reads: [] }, { trials, horizon: 1000 });
    chances.forEach(({ goOn, after }, at) => {
      expect(whole[at]!.goals).toBeCloseTo(goOn.goals + after, 5);
    });
  });
});

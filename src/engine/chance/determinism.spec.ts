import { describe, expect, it } from 'vitest';
import { schemeList } from '../defense/schemes.ts';
import { inputHash } from '../trials/input-hash.ts';
import { runTrials } from '../trials/run-trials.ts';
import { createChanceState } from './create-state.ts';
import type { Matchup } from './matchup.ts';
import { compileChance } from './model.ts';
import { recordTrace, runTrial } from './run.ts';
import { busyPlay, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import type { ChanceState } from './state.ts';
import type { Trace } from './trace.ts';

const seed = 3;
const trials = 8;

/** A trace's name: everything it holds, to the last bit. */
function traceHash(trace: Trace): string {
  return inputHash({
    places: [...trace.places_byFrame],
    ball: [...trace.ball_byFrame],
    holder: [...trace.holder_byFrame],
    duties: [...trace.duties_byFrame],
    events: trace.events.map((event) => JSON.stringify(event)),
  });
}

function countsOf(state: ChanceState): string {
  return JSON.stringify([state.counts, state.end, state.step]);
}

function freshCounts(matchup: Matchup, trial: number): string {
  const model = compileChance(matchup, seed);
  const state = createChanceState(model);
  runTrial(model, state, trial);
  return countsOf(state);
}

const matchups = schemeList.flatMap((scheme) =>
  [samplePlay, busyPlay].map((play) => ({
    name: `${play.id} against ${scheme.id}`,
    matchup: sampleMatchup({ play, scheme, penalty: { seconds: 30, releasable: false } }),
  })),
);

describe('a trial is the same alone and among others', () => {
  it.each(matchups)('$name', ({ matchup }) => {
    const model = compileChance(matchup, seed);
    const state = createChanceState(model);
    const forward = Array.from({ length: trials }, (_, trial) => {
      runTrial(model, state, trial);
      return countsOf(state);
    });
    const backward = Array.from({ length: trials }, (_, at) => {
      runTrial(model, state, trials - 1 - at);
      return countsOf(state);
    }).reverse();
    expect(backward).toEqual(forward);
    expect(freshCounts(matchup, trials - 1)).toEqual(forward[trials - 1]);
  });

  it('to the last bit of its trace', () => {
    const { matchup } = matchups[1]!;
    const model = compileChance(matchup, seed);
    const alone = traceHash(recordTrace(compileChance(matchup, seed), 7));
    for (const trial of [6, 3]) recordTrace(model, trial);
    expect(traceHash(recordTrace(model, 7))).toBe(alone);
    expect(traceHash(recordTrace(model, 6))).not.toBe(alone);
  });

  it('in a batch, in two, and in a batch that starts later', () => {
    const model = compileChance(sampleMatchup(), seed);
    const state = createChanceState(model);
    const whole = runTrials(model, state, 0, 30);
    const late = runTrials(model, state, 20, 30);
    expect([...late.goals_byTrial]).toEqual([...whole.goals_byTrial.slice(20)]);
    expect([...late.firstShot_byTrial]).toEqual([...whole.firstShot_byTrial.slice(20)]);
  });

  it('but not with another seed', () => {
    const matchup = sampleMatchup({ play: busyPlay });
    const hashes = [1, 2, 2 ** 32 + 1].map((other) => traceHash(recordTrace(compileChance(matchup, other), 0)));
    expect(new Set(hashes).size).toBe(3);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { busyPlay, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { schemeList } from '../defense/schemes.ts';
import type { Play } from '../offense/play.ts';
import { mergeTallies } from './merge-tallies.ts';
import { runTrials } from './run-trials.ts';

/** A play with a change for the last ten seconds, and the same one without. */
const { lastTen: _, ...unchanging } = busyPlay;
const plays: readonly Play[] = [samplePlay, busyPlay, unchanging];

const cases = fc.record({
  play: fc.constantFrom(...plays),
  scheme: fc.constantFrom(...schemeList),
  seconds: fc.constantFrom(20, 30, 60),
  seed: fc.nat(1000),
});

/** Enough trials for most beats to begin in some. */
const trials = 12;
const runs = 25;

describe('how often the beats of a play begin', () => {
  it('is never more than how often the play does, and for a beat that needs another one never more than for that', () => {
    fc.assert(
      fc.property(cases, ({ seed, seconds, ...choice }) => {
        const model = compileChance(sampleMatchup({ ...choice, penalty: { seconds } }), seed);
        const { begun, begun_byBeat, passes, playPasses } = runTrials(model, createChanceState(model), 0, trials);
        const { beats } = model.program.script;
        expect(begun).toBeLessThanOrEqual(trials);
        expect(Math.max(...begun_byBeat)).toBe(begun);
        beats.forEach(({ trigger }, beat) => {
          if (trigger.kind === 'start') expect(begun_byBeat[beat]).toBe(begun);
          if (trigger.kind === 'call') expect(begun_byBeat[beat]).toBeLessThanOrEqual(begun_byBeat[trigger.beat]!);
        });
        expect(playPasses).toBeLessThanOrEqual(passes);
      }),
      { numRuns: runs },
    );
  });

  it('is the same however the trials are cut into batches', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: trials - 1 }), ({ seed, seconds, ...choice }, cut) => {
        const model = compileChance(sampleMatchup({ ...choice, penalty: { seconds } }), seed);
        const state = createChanceState(model);
        const whole = runTrials(model, state, 0, trials);
        const late = runTrials(model, state, cut, trials);
        const merged = mergeTallies([runTrials(model, createChanceState(model), 0, cut), late]);
        expect(merged.begun_byBeat).toEqual(whole.begun_byBeat);
        expect([merged.begun, merged.playPasses]).toEqual([whole.begun, whole.playPasses]);
      }),
      { numRuns: runs },
    );
  });
});

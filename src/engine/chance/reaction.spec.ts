import { describe, expect, it } from 'vitest';
import { disciplines } from '../defense/discipline.ts';
import { schemesFor } from '../defense/schemes.ts';
import type { Play } from '../offense/play.ts';
import { bodyRadius } from '../people/contact.ts';
import { createChanceState } from './create-state.ts';
import { type ChanceModel, compileChance } from './model.ts';
import { defaultChanceParameters } from './parameters.ts';
import { advanceTrial, beginTrial, recordTrace } from './run.ts';
import { busyPlay, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import { stepSeconds } from './state.ts';
import type { Trace } from './trace.ts';

// Nobody answers sooner than he can have seen it.

const seed = 3;
const trials = 12;
/** Reactions are whole steps of the picture that is looked back on: half a step of rounding. Seconds. */
const rounding = stepSeconds / 2 + 1e-9;

describe('no defender takes up a duty sooner than his reaction after it was called', () => {
  it.each(schemesFor(5))('$id', (scheme) => {
    // Faultless men take what was called: no wrong man, no old duty kept.
    const matchup = sampleMatchup({ scheme, play: busyPlay, discipline: disciplines.faultless });
    const model = compileChance(matchup, seed);
    const state = createChanceState(model);
    let answers = 0;
    for (let trial = 0; trial < trials; trial++) {
      /** When each duty was last called for each defender. */
      const called = new Map<string, number>();
      state.recorder = {
        frame: () => {},
        event: (event) => {
          if (event.kind !== 'duty') return;
          const at = called.get([event.by, event.duty, event.a, event.b].join());
          expect(at, `trial ${trial}, ${event.time} s: nobody called it`).toBeDefined();
          expect(event.time - at!).toBeGreaterThanOrEqual(model.reaction_byAgent[6 + event.by]! - 1e-9);
          answers++;
        },
      };
      beginTrial(model, state, trial);
      const { wanted } = state.coverage;
      const before: string[] = [];
      while (state.end === null) {
        advanceTrial(model, state);
        for (let defender = 0; defender < model.covering; defender++) {
          const name = [defender, wanted.kind[defender], wanted.a[defender], wanted.b[defender]].join();
          if (name !== before[defender]) called.set(name, state.time);
          before[defender] = name;
        }
      }
    }
    expect(answers).toBeGreaterThan(trials);
  });
});

/** The sample play's set with a script that does one thing. */
function scripted(actions: Play['beats'][number]['actions']): Play {
  return { ...samplePlay, beats: [{ id: 'only', when: { kind: 'start' }, actions }] };
}

const held = scripted([{ kind: 'hold', by: 'TR', seconds: 8 }]);
const thrown = scripted([{ kind: 'pass', by: 'TR', to: 'P', style: 'adjacent' }]);

describe('when a pass is thrown that could have been held, the other side stands as if it were held for its reaction', () => {
  // Men who throw whatever is asked and shoot at nothing; a defense that looks round at every step, so that the pass does not shift its looks.
  const parameters = {
    ...defaultChanceParameters,
    passFloor: 0,
    continuationTop: 50,
    defenseEvery: stepSeconds,
    stripRate: 0,
    probeShare: 0,
  };

  it.each(schemesFor(5))('$id', (scheme) => {
    const [one, other] = [held, thrown].map((play) =>
      compileChance(sampleMatchup({ play, scheme }), seed, { parameters }),
    );
    let compared = 0;
    for (let trial = 0; trial < trials; trial++) {
      const [holding, throwing] = [recordTrace(one!, trial), recordTrace(other!, trial)];
      const apart = firstBallApart(holding, throwing);
      if (apart < 0) continue;
      compared++;
      for (let agent = 6; agent < holding.agents; agent++) {
        const answer = firstApart(holding, throwing, agent);
        if (answer < 0 || isShoved(throwing, answer, agent)) continue;
        const waited = (answer - apart) * stepSeconds;
        expect(waited, `trial ${trial}, agent ${agent}`).toBeGreaterThanOrEqual(leastWait(one!, agent) - rounding);
      }
    }
    expect(compared).toBeGreaterThan(trials / 2);
  });
});

/** A defender goes by his own reaction for duties and by the unit's mean for places; the keeper by his own. */
function leastWait(model: ChanceModel, agent: number): number {
  return Math.min(model.reaction_byAgent[agent]!, model.defenseDelay);
}

function firstBallApart(one: Trace, other: Trace): number {
  const frames = Math.min(one.frames, other.frames);
  for (let frame = 0; frame < frames; frame++)
    if (one.holder_byFrame[frame] !== other.holder_byFrame[frame]) return frame;
  return -1;
}

function firstApart(one: Trace, other: Trace, agent: number): number {
  const frames = Math.min(one.frames, other.frames);
  for (let frame = 0; frame < frames; frame++) {
    const at = 2 * (frame * one.agents + agent);
    if (one.places_byFrame[at] !== other.places_byFrame[at]) return frame;
    if (one.places_byFrame[at + 1] !== other.places_byFrame[at + 1]) return frame;
  }
  return -1;
}

/** Bodies that touch move each other at once: that is no answer. */
function isShoved(trace: Trace, frame: number, agent: number): boolean {
  const at = 2 * frame * trace.agents;
  for (let who = 0; who < 6; who++) {
    const dx = trace.places_byFrame[at + 2 * who]! - trace.places_byFrame[at + 2 * agent]!;
    const dy = trace.places_byFrame[at + 2 * who + 1]! - trace.places_byFrame[at + 2 * agent + 1]!;
    if (Math.hypot(dx, dy) < 2 * bodyRadius + 0.2) return true;
  }
  return false;
}

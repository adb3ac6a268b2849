import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { type ChanceModel, compileChance } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { advanceTrial, beginTrial, recordTrace } from '../chance/run.ts';
import { busyPlay, mirrorMatchup, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { stepSeconds } from '../chance/state.ts';
import type { Trace } from '../chance/trace.ts';
import { schemesFor } from '../defense/schemes.ts';
import { watchLooks } from './watch.ts';
import { type ScriptTrace, traceScript } from './watch-trace.ts';

const cases = schemesFor(5).flatMap((scheme) => [samplePlay, busyPlay].map((play) => ({ scheme, play })));
const modelOf = ({ scheme, play }: (typeof cases)[number]): ChanceModel =>
  compileChance(sampleMatchup({ level: 'pro', scheme, play }), 3);

function traced(model: ChanceModel, from = 0): ScriptTrace {
  const found = traceScript(model, createChanceState(model), from);
  if (found === undefined) throw new Error('no trial began the play');
  return found;
}

/** The whole of a watched trial, by the recorder alone. */
function watchedTrace(model: ChanceModel, trial: number): Trace {
  const state = createChanceState(model);
  const recorder = createTraceRecorder(model);
  state.recorder = recorder;
  beginTrial(model, state, trial);
  state.watching = true;
  while (state.end === null) advanceTrial(model, state);
  return recorder.finish();
}

describe('the script alone', () => {
  it.each(cases)('is the same trial as the one that is watched: $play.id against $scheme.id', (one) => {
    const model = modelOf(one);
    const { trial, trace, began, windows } = traced(model);
    expect(windows).toEqual(watchLooks(model, createChanceState(model), trial, trial + 1));
    const whole = watchedTrace(model, trial);
    const beat = whole.events.find(({ kind }) => kind === 'beat')!.time;
    const first = Math.round((beat - began) / stepSeconds);
    const { agents, defenders, frames } = trace;
    const last = first + frames;
    expect(trace.places_byFrame).toEqual(whole.places_byFrame.slice(2 * agents * first, 2 * agents * last));
    expect(trace.ball_byFrame).toEqual(whole.ball_byFrame.slice(3 * first, 3 * last));
    expect(trace.holder_byFrame).toEqual(whole.holder_byFrame.slice(first, last));
    expect(trace.duties_byFrame).toEqual(whole.duties_byFrame.slice(3 * defenders * first, 3 * defenders * last));
  });

  it.each(cases)('begins about a second before the first beat: $play.id against $scheme.id', (one) => {
    const { trace, began } = traced(modelOf(one));
    expect(trace.events.find(({ kind }) => kind === 'beat')!.time).toBeCloseTo(began, 9);
    expect(began).toBeGreaterThan(0.9);
    expect(began).toBeLessThan(1.1);
    expect(trace.events.every(({ time }) => time >= 0 && time <= trace.frames * trace.step)).toBe(true);
  });

  it('is another one from another trial on, and the same one alone', () => {
    const model = modelOf(cases[0]!);
    const state = createChanceState(model);
    const [one, other] = [traceScript(model, state, 0)!, traceScript(model, state, 5)!];
    expect(other.trial).toBeGreaterThanOrEqual(5);
    expect(other.trace).not.toEqual(one.trace);
    expect(traced(model, 5)).toEqual(other);
  });

  it('leaves no mark on the trials that are run after it', () => {
    const model = modelOf(cases[1]!);
    const before = recordTrace(model, 2);
    traceScript(model, createChanceState(model), 0);
    expect(recordTrace(model, 2)).toEqual(before);
  });

  it('is not there when the play never begins', () => {
    // The shot clock takes the ball from them before they are set up.
    const model = compileChance(sampleMatchup({ penalty: { shotClock: 0.5 } }), 3);
    expect(traceScript(model, createChanceState(model), 0)).toBeUndefined();
  });
});

describe('what is weighed at each moment', () => {
  it.each(cases)('is there for every mate of the man with the ball: $play.id against $scheme.id', (one) => {
    const { trace, began, weighed } = traced(modelOf(one));
    const moments = weighed.time_byMoment.length;
    expect(moments).toBeGreaterThan(5);
    for (let moment = 0; moment < moments; moment++) {
      const time = weighed.time_byMoment[moment]!;
      const hand = weighed.hand_byMoment[moment]!;
      expect(time).toBeGreaterThanOrEqual(began - 1e-6);
      if (moment > 0) expect(time).toBeGreaterThan(weighed.time_byMoment[moment - 1]!);
      const holder = trace.holder_byFrame[Math.round(time / trace.step)];
      // A ball in the air is weighed in the hand that it flies to.
      if (holder !== -1) expect(hand).toBe(holder);
      for (let mate = 0; mate < 6; mate++) {
        const completion = weighed.completion_byMate[6 * moment + mate]!;
        expect(completion >= 0 && completion <= 1).toBe(true);
        if (mate === hand) expect(completion).toBe(0);
      }
      expect(weighed.holdValue_byMoment[moment]).toBeGreaterThan(0);
      expect(weighed.shotValue_byMoment[moment]).toBeGreaterThanOrEqual(weighed.shotOdds_byMoment[moment]!);
    }
    // Every lane can be drawn: most mates can be thrown to at any moment.
    const open = weighed.completion_byMate.filter((completion) => completion > 0).length;
    expect(open / (5 * moments)).toBeGreaterThan(0.7);
  });

  it.each(cases)('is the same in a mirror: $play.id against $scheme.id', ({ scheme, play }) => {
    const matchup = sampleMatchup({ level: 'pro', scheme, play });
    const [one, other] = [matchup, mirrorMatchup(matchup)].map((each) => traced(compileChance(each, 3)));
    expect(other!.weighed).toEqual(one!.weighed);
    expect(other!.windows).toEqual(one!.windows);
    const { places_byFrame } = one!.trace;
    expect(other!.trace.places_byFrame).toEqual(places_byFrame.map((value, at) => (at % 2 === 0 ? -value : value)));
  });
});

import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { type ChanceModel, compileChance } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { advanceTrial, beginTrial, recordTrace } from '../chance/run.ts';
import { busyPlay, mirrorMatchup, sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { stepSeconds } from '../chance/state.ts';
import type { Trace } from '../chance/trace.ts';
import { schemes, schemesFor } from '../defense/schemes.ts';
import { forceLooks } from './force-looks.ts';
import { planForced, valueLooks } from './plan-forced.ts';
import { summarizeLooks } from './summarize.ts';
import { watchLooks } from './watch.ts';
import type { LookWindow } from './window.ts';

const trials = 30;
const model = compileChance(sampleMatchup({ level: 'pro', scheme: schemes['four-man-rotation'] }), 3);
const state = createChanceState(model);
const windows = watchLooks(model, state, 0, trials);

/** A trial that is watched, kept as a trace. */
function watchedTrace(of: ChanceModel, trial: number): Trace {
  const fresh = createChanceState(of);
  const recorder = createTraceRecorder(of);
  fresh.recorder = recorder;
  beginTrial(of, fresh, trial);
  fresh.watching = true;
  while (fresh.end === null) advanceTrial(of, fresh);
  return recorder.finish();
}

describe('windows', () => {
  it('open before they close, after the first beat, for a man who has the ball', () => {
    expect(windows.length).toBeGreaterThan(trials);
    for (const window of windows) {
      const trace = watchedTrace(model, window.trial);
      const began = trace.events.find((event) => event.kind === 'beat')!.time;
      expect(window.opens).toBeGreaterThanOrEqual(0);
      expect(window.closes).toBeGreaterThanOrEqual(window.opens);
      expect(trace.holder_byFrame[Math.round((began + window.opens) / stepSeconds)]).toBe(window.from);
      // He can throw from readyAt on, and sees what has been there for his reaction.
      expect(window.seenAt).toBeLessThanOrEqual(began + window.opens + model.reaction_byAgent[window.from]! + 1e-9);
    }
  });

  it('hold odds from 0 to 1; a shot needs no pass', () => {
    for (const { completion, shotOdds, kind, from, to } of windows) {
      expect(completion >= 0 && completion <= 1 && shotOdds >= 0 && shotOdds < 1).toBe(true);
      expect(kind === 'shot').toBe(from === to);
      if (kind === 'shot') expect([0, 1]).toContain(completion);
    }
  });

  it('of a trial are the same alone and among others', () => {
    expect(watchLooks(model, createChanceState(model), 7, 8)).toEqual(windows.filter(({ trial }) => trial === 7));
  });

  it('leave no mark on the trials that are run after them', () => {
    const before = recordTrace(model, 2);
    watchLooks(model, state, 0, 3);
    expect(recordTrace(model, 2).events).toEqual(before.events);
    expect(forceLooks(model, state, [{ trial: 1, time: 9, from: 0, to: 3 }])).toEqual(
      forceLooks(model, createChanceState(model), [{ trial: 1, time: 9, from: 0, to: 3 }]),
    );
  });
});

describe('windows of a mirrored chance are the same windows', () => {
  it.each(schemesFor(5))('$id', (scheme) => {
    const matchup = sampleMatchup({ level: 'pro', scheme, play: busyPlay });
    const [one, other] = [matchup, mirrorMatchup(matchup)].map((each) => {
      const compiled = compileChance(each, 3);
      return watchLooks(compiled, createChanceState(compiled), 0, 6);
    });
    expect(other).toEqual(one);
  });
});

describe('a forced look', () => {
  const taken = windows.filter((window) => window.completion > 0).slice(0, 40);

  it('changes nothing up to its moment', () => {
    for (const { trial, seenAt, from, to } of taken) {
      const [watched, forced] = [watchedTrace(model, trial), recordTrace(model, trial, { time: seenAt, from, to })];
      const until = (trace: Trace) => trace.events.filter((event) => event.time < seenAt);
      expect(until(forced)).toEqual(until(watched));
      const numbers = 2 * watched.agents * Math.floor(seenAt / stepSeconds);
      expect(forced.places_byFrame.slice(0, numbers)).toEqual(watched.places_byFrame.slice(0, numbers));
    }
  });

  it('is then taken by that man, unless the ball has gone on', () => {
    let thrown = 0;
    for (const { trial, seenAt, from, to } of taken) {
      const { events } = recordTrace(model, trial, { time: seenAt, from, to });
      const next = events.find((event) => event.time >= seenAt && (event.kind === 'pass' || event.kind === 'shot'))!;
      const isHis =
        next.kind === 'pass' ? next.from === from && next.to === to : next.kind === 'shot' && next.who === from;
      if (isHis) thrown++;
    }
    // A fake under way, or a ball that is checked loose first: the few that are left.
    expect(thrown).toBeGreaterThanOrEqual(0.95 * taken.length);
  });
});

describe('what looks are worth', () => {
  /** Mean odds at the moment of each look, and goals when it is forced: over all looks that could still be thrown, seen 240 times. */
  it('agrees with the odds that were seen, on the whole', () => {
    const watched = watchLooks(model, state, 0, 120);
    const looks = summarizeLooks(watched, 120).slice(0, 6);
    const values = valueLooks(planForced(looks, 40), forceLooks(model, state, planForced(looks, 40)));
    const total = values.reduce((sum, { value, trials: forced }) => sum + value * forced, 0);
    const forced = values.reduce((sum, each) => sum + each.trials, 0);
    const atOnce = looks.reduce((sum, look) => sum + look.completion * look.shotOdds, 0) / looks.length;
    // A shot that does not score may be followed by another, and no look is worth two of its shots: half to double its odds at once.
    expect(total / forced).toBeGreaterThan(0.5 * atOnce);
    expect(total / forced).toBeLessThan(2 * atOnce);
  });

  it('is low for a look that has gone before it can be seen', () => {
    const gone = windowsOfBlindCarriers();
    const late = gone.filter((window) => window.completion === 0);
    expect(late.length).toBeGreaterThan(0);
  });

  /** Carriers who need longer to look up than the script lets them keep the ball. */
  function windowsOfBlindCarriers(): readonly LookWindow[] {
    const slow = sampleMatchup({ level: 'pro', scheme: schemes['four-man-rotation'], six: { reaction: 1.2 } });
    const compiled = compileChance(slow, 3);
    return watchLooks(compiled, createChanceState(compiled), 0, 10);
  }
});

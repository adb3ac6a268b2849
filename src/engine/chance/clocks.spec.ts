import { describe, expect, it } from 'vitest';
import { schemes } from '../defense/schemes.ts';
import type { Play } from '../offense/play.ts';
import type { PenaltyPlan } from './matchup.ts';
import { type ChanceModel, compileChance } from './model.ts';
import { defaultChanceParameters } from './parameters.ts';
import { recordTrace } from './run.ts';
import { busyPlay, type SampleChoice, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import { stepSeconds } from './state.ts';
import type { Trace, TraceEvent } from './trace.ts';

const seed = 3;
/** Rounding of times that are whole numbers of steps. Seconds. */
const rounding = 1e-9;
/** Places are stored in 32 bits. Yards. */
const near = 1e-4;

/** Men who shoot from nowhere: nothing but the clocks ends their chances, save a lost ball. */
const patient = { ...defaultChanceParameters, shotRange: 0 };

function traces(choice: SampleChoice, count: number, parameters = defaultChanceParameters): [ChanceModel, Trace[]] {
  const model = compileChance(sampleMatchup(choice), seed, { parameters });
  return [model, Array.from({ length: count }, (_, trial) => recordTrace(model, trial))];
}

type Kind = TraceEvent['kind'];
function timesOf(trace: Trace, ...kinds: readonly Kind[]): number[] {
  return trace.events.filter((event) => kinds.includes(event.kind)).map((event) => event.time);
}

function endOf(trace: Trace): Extract<TraceEvent, { kind: 'end' }> {
  return trace.events.at(-1) as Extract<TraceEvent, { kind: 'end' }>;
}

function placeOf(trace: Trace, frame: number, agent: number): { x: number; y: number } {
  const at = 2 * (frame * trace.agents + agent);
  return { x: trace.places_byFrame[at]!, y: trace.places_byFrame[at + 1]! };
}

const lastFrame = (trace: Trace): number => trace.frames - 1;

describe('a restart', () => {
  it('is taken where the play says, five against six, the penalized man at the table', () => {
    const [model, [trace]] = traces({}, 1);
    expect(trace!.events[0]).toEqual({ kind: 'restart', time: 0, who: 1 });
    expect(placeOf(trace!, 0, 1)).toEqual(samplePlay.start.restart);
    expect(placeOf(trace!, 0, model.released)).toEqual({ x: 30, y: 40 });
    expect([trace!.agents, trace!.defenders]).toEqual([13, 6]);
  });

  it.each([
    { id: 'two-down' as const, covering: 4 },
    { id: 'three-down' as const, covering: 3 },
    { id: 'settled-six' as const, covering: 6 },
  ])('against $id has $covering defenders', ({ id, covering }) => {
    const [model, [trace]] = traces({ scheme: schemes[id] }, 1);
    expect(model.covering).toBe(covering);
    expect(trace!.defenders).toBe(covering + (id === 'settled-six' ? 0 : 1));
  });
});

describe('the penalized man', () => {
  const [model, played] = traces({ penalty: { seconds: 15 } }, 60, patient);
  const released = played.filter((trace) => timesOf(trace, 'released').length > 0);

  it('waits for the end of the penalty, comes back once, and runs from the table', () => {
    expect(released.length).toBeGreaterThan(20);
    for (const trace of played) {
      for (let frame = 0; frame < trace.frames && frame * stepSeconds < 15; frame++) {
        expect(placeOf(trace, frame, model.released)).toEqual({ x: 30, y: 40 });
      }
    }
    for (const trace of released) expect(timesOf(trace, 'released')).toEqual([15]);
  });

  it('evens the sides when he is within 3 yd of the hole, as soon as his legs allow', () => {
    // A shot that goes wide after the penalty ends the chance where it is: he is in his place when the ball is put in play.
    const over = released.filter(
      (trace) => endOf(trace).how === 'penaltyOver' && !timesOf(trace, 'wide').includes(endOf(trace).time),
    );
    expect(over.length).toBeGreaterThan(10);
    // From the table to 3 yd from (0, 6): the straight way less 3 yd; at the end he stands there.
    const way = Math.hypot(30, 34) - 3;
    const fastest = way / model.athletes[model.released]!.topSpeed;
    for (const trace of over) {
      const { x, y } = placeOf(trace, lastFrame(trace), model.released);
      expect(Math.hypot(x, y - 6)).toBeLessThan(3 + near);
      expect(endOf(trace).time).toBeGreaterThan(15 + fastest);
      // He starts from standing (some 1.2 s), may be bumped on his way, and a ball in the air is seen out.
      expect(endOf(trace).time).toBeLessThan(15 + fastest + 4);
    }
  });

  it('does not go back to the table when a shot goes wide after the penalty', () => {
    const [wild, wide] = traces({ play: busyPlay, penalty: { seconds: 12 }, six: { shotScatter: 0.5 } }, 80);
    const late = wide.filter((trace) => timesOf(trace, 'wide').some((time) => time > 12));
    expect(late.length).toBeGreaterThan(0);
    for (const trace of late) {
      expect(timesOf(trace, 'released')).toEqual([12]);
      for (let frame = 241; frame < trace.frames; frame++) {
        const [before, now] = [placeOf(trace, frame - 1, wild.released), placeOf(trace, frame, wild.released)];
        expect(Math.hypot(now.x - before.x, now.y - before.y)).toBeLessThan(1);
      }
    }
  });
});

describe('the last ten seconds of a penalty', () => {
  const { lastTen: _, ...unchanged } = busyPlay;
  const seconds = 24;
  const [, changing] = traces({ play: busyPlay, penalty: { seconds } }, 40);
  const [, going] = traces({ play: unchanged as Play, penalty: { seconds } }, 40);

  it('change nothing before they begin', () => {
    for (const [trial, trace] of changing.entries()) {
      const early = (events: readonly TraceEvent[]) => events.filter((event) => event.time < seconds - 10 - rounding);
      expect(early(trace.events)).toEqual(early(going[trial]!.events));
    }
  });

  it('bring the beats of their own, and only then', () => {
    const started = changing.map((trace) =>
      trace.events.flatMap((event) => (event.kind === 'beat' && event.beat === 'now' ? [event.time] : [])),
    );
    const times = started.flat();
    expect(times.length).toBeGreaterThan(20);
    expect(Math.min(...times)).toBeGreaterThanOrEqual(seconds - 10 - rounding);
    for (const [trial, trace] of changing.entries()) {
      if (endOf(trace).time > seconds - 9) expect(started[trial]!.length, `trial ${trial}`).toBeGreaterThan(0);
    }
  });

  it('change nothing of a play that names no change', () => {
    expect(going.some((trace) => trace.events.some((event) => event.kind === 'beat' && event.beat === 'now'))).toBe(
      false,
    );
  });
});

describe('after a goal', () => {
  const unending: Partial<PenaltyPlan> = { seconds: 120, releasable: false };
  const wins = { ...defaultChanceParameters, faceOff: 1 };
  const loses = { ...defaultChanceParameters, faceOff: 0 };

  it('a penalty that a goal releases is over', () => {
    const [, played] = traces({ level: 'pro' }, 40);
    for (const trace of played) {
      const [goal] = timesOf(trace, 'goal');
      if (goal !== undefined) expect(endOf(trace)).toEqual({ kind: 'end', time: goal, how: 'goal' });
    }
    expect(played.some((trace) => endOf(trace).how === 'goal')).toBe(true);
  });

  it('one that it does not release goes on with a face-off, won here every time', () => {
    const [, played] = traces({ level: 'pro', penalty: unending }, 40, wins);
    const early = played.flatMap((trace) =>
      timesOf(trace, 'goal')
        .filter((time) => time < 120)
        .map((time) => ({ trace, time })),
    );
    expect(early.length).toBeGreaterThan(5);
    for (const { trace, time } of early) expect(timesOf(trace, 'restart')).toContain(time);
    expect(played.some((trace) => timesOf(trace, 'goal').length > 1)).toBe(true);
  });

  it('or is lost with the face-off, lost here every time', () => {
    const [, played] = traces({ level: 'pro', penalty: unending }, 40, loses);
    for (const trace of played) expect(timesOf(trace, 'goal').length).toBeLessThanOrEqual(1);
  });
});

describe('the shot clock', () => {
  it('takes the ball from a unit that does not shoot, when it runs out and not before', () => {
    const [, played] = traces({ penalty: { shotClock: 12 } }, 40, patient);
    const out = played.filter((trace) =>
      trace.events.some((event) => event.kind === 'turnover' && event.how === 'shotClock'),
    );
    expect(out.length).toBeGreaterThan(20);
    for (const trace of out) expect(endOf(trace)).toEqual({ kind: 'end', time: 12, how: 'turnover' });
  });

  it('is not there where the code has none', () => {
    const [, played] = traces({ penalty: { seconds: 20 } }, 20, patient);
    expect(
      played.some((trace) => trace.events.some((event) => event.kind === 'turnover' && event.how === 'shotClock')),
    ).toBe(false);
  });
});

describe('with the flag down', () => {
  const settled = { scheme: schemes['settled-six'] };

  it.each([
    { level: '10U' as const, play: busyPlay },
    { level: 'pro' as const, play: samplePlay },
  ])('a $level unit has six against six and one try, which it takes', ({ level, play }) => {
    const [model, played] = traces({ ...settled, level, play }, 60);
    expect(model.released).toBe(-1);
    for (const trace of played) {
      expect(['goal', 'flagOver']).toContain(endOf(trace).how);
      expect(timesOf(trace, 'released')).toEqual([]);
      // The free shot should be gone within some 12 s; nobody keeps a flag down for half a minute.
      expect(endOf(trace).time).toBeLessThan(30);
    }
    expect(played.filter((trace) => timesOf(trace, 'shot').length > 0).length).toBeGreaterThan(played.length / 2);
  });
});

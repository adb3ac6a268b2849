import { describe, expect, it } from 'vitest';
import { schemeList } from '../defense/schemes.ts';
import { createChanceState } from './create-state.ts';
import { type ChanceModel, compileChance } from './model.ts';
import { recordTrace, runTrial } from './run.ts';
import { busyPlay, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import type { Counts } from './state.ts';
import type { Trace, TraceEvent } from './trace.ts';

const trials = 4;
/** Places are stored in 32 bits: this near to a number is that number. Yards. */
const rounding = 1e-4;
/** Contact moves a body a little more than his legs do in one step. Yards a second. */
const shove = 2;

interface Played {
  readonly model: ChanceModel;
  readonly trace: Trace;
  readonly counts: Counts;
  readonly begun: readonly number[];
}

const cases = schemeList.flatMap((scheme) =>
  (
    [
      [samplePlay, 'pro'],
      [busyPlay, '12U'],
    ] as const
  ).map(([play, level]) => ({ name: `${play.id}, ${level}, against ${scheme.id}`, scheme, play, level })),
);

/** What was played of a case: simulated once, looked at by every law. */
const played_byCase = new Map<string, readonly Played[]>();

/** Each trial of a case, once recorded and once only counted. */
function eachTrial(each: (typeof cases)[number], check: (played: Played) => void): void {
  const known = played_byCase.get(each.name) ?? play(each);
  played_byCase.set(each.name, known);
  for (const played of known) check(played);
}

function play({ scheme, play, level }: (typeof cases)[number]): Played[] {
  const matchup = sampleMatchup({ scheme, play, level, penalty: { seconds: 30, releasable: false, shotClock: 25 } });
  const model = compileChance(matchup, 3);
  const state = createChanceState(model);
  return Array.from({ length: trials }, (_, trial) => {
    runTrial(model, state, trial);
    return { model, trace: recordTrace(model, trial), counts: { ...state.counts }, begun: [...state.begun_byBeat] };
  });
}

type Kind = TraceEvent['kind'];
function eventsOf<K extends Kind>(trace: Trace, ...kinds: readonly K[]): Extract<TraceEvent, { kind: K }>[] {
  return trace.events.filter((event): event is Extract<TraceEvent, { kind: K }> =>
    (kinds as readonly Kind[]).includes(event.kind),
  );
}

describe('a trace tells what the trial counted', () => {
  it.each(cases)('$name', (each) => {
    eachTrial(each, ({ trace, counts, begun }) => {
      const count = (...kinds: readonly Kind[]) => eventsOf(trace, ...kinds).length;
      expect([count('shot'), count('goal'), count('save'), count('pass'), count('catch')]).toEqual([
        counts.shots,
        counts.goals,
        counts.saves,
        counts.passes,
        counts.passesCaught,
      ]);
      expect(counts.onTarget).toBe(counts.goals + counts.saves);
      expect(eventsOf(trace, 'turnover').map((event) => event.how)).toEqual(
        counts.turnover === null ? [] : [counts.turnover],
      );
      expect(eventsOf(trace, 'pass').filter(({ why }) => why === 'script' || why === 'read')).toHaveLength(
        counts.playPasses,
      );
      const told = new Set(eventsOf(trace, 'beat').flatMap(({ beat, lastTen }) => (lastTen ? [] : [beat])));
      expect(begun).toEqual(each.play.beats.map(({ id }) => (told.has(id) ? 1 : 0)));
      if (counts.shots > 0) expect(eventsOf(trace, 'shot')[0]!.time).toBe(counts.firstShot);
      const odds = eventsOf(trace, 'shot').reduce((sum, shot) => sum + shot.goalOdds, 0);
      expect(odds).toBeCloseTo(counts.goalOddsSum, 10);
    });
  });
});

describe('nothing is lost: every pass and shot has one end, and so has the chance', () => {
  it.each(cases)('$name', (each) => {
    eachTrial(each, ({ trace, counts }) => {
      const { events } = trace;
      expect(eventsOf(trace, 'end')).toHaveLength(1);
      expect(events.at(-1)!.kind).toBe('end');
      expect(events.every((event, at) => at === 0 || event.time >= events[at - 1]!.time)).toBe(true);
      const inFlight = openAtTheEnd(events);
      const passes = eventsOf(trace, 'catch', 'dropped', 'badPass', 'intercepted', 'deflected').length;
      const shots = eventsOf(trace, 'goal', 'save', 'pipe', 'wide', 'blocked').length;
      expect(counts.passes - passes).toBe(inFlight === 'pass' ? 1 : 0);
      expect(counts.shots - shots).toBe(inFlight === 'shot' ? 1 : 0);
      expect(counts.goals).toBeLessThanOrEqual(counts.shots);
      expect(counts.turnovers).toBeLessThanOrEqual(1);
    });
  });
});

/** What was in the air when the trial ended: only a clock ends it there. */
function openAtTheEnd(events: readonly TraceEvent[]): 'pass' | 'shot' | 'nothing' {
  const ball = events.filter(
    (event) => !['duty', 'bite', 'beat', 'released', 'end', 'turnover', 'setUp', 'reset'].includes(event.kind),
  );
  const last = ball.at(-1)!.kind;
  return last === 'pass' || last === 'shot' ? last : 'nothing';
}

describe('everybody stays where a man can be', () => {
  it.each(cases)('$name', (each) => {
    eachTrial(each, ({ model, trace }) => {
      const restarts = eventsOf(trace, 'restart').map((event) => Math.round(event.time / trace.step));
      for (let frame = 0; frame < trace.frames; frame++) {
        for (let agent = 0; agent < trace.agents; agent++) checkPlace(model, trace, frame, agent, restarts);
      }
    });
  });
});

function checkPlace(model: ChanceModel, trace: Trace, frame: number, agent: number, restarts: readonly number[]): void {
  const [x, y] = placeOf(trace, frame, agent);
  const where = `frame ${frame}, agent ${agent}: (${x}, ${y})`;
  if (!Number.isFinite(x + y)) expect.fail(`${where} is no place`);
  if (agent < 6 && Math.hypot(x, y) < 3 - rounding) expect.fail(`${where} is in the crease`);
  if (frame === 0 || restarts.includes(frame)) return;
  const [beforeX, beforeY] = placeOf(trace, frame - 1, agent);
  const speed = Math.hypot(x - beforeX, y - beforeY) / trace.step;
  if (speed > model.athletes[agent]!.topSpeed + shove) expect.fail(`${where} moves at ${speed} yd/s`);
}

function placeOf(trace: Trace, frame: number, agent: number): [number, number] {
  const at = 2 * (frame * trace.agents + agent);
  return [trace.places_byFrame[at]!, trace.places_byFrame[at + 1]!];
}

describe('the ball is with the man whom the events name', () => {
  it.each(cases)('$name', (each) => {
    eachTrial(each, ({ trace }) => {
      let next = 0;
      let holder = -1;
      for (let frame = 0; frame < trace.frames; frame++) {
        for (; next < trace.events.length && trace.events[next]!.time <= frame * trace.step + rounding; next++) {
          holder = holderAfter(trace, trace.events[next]!, holder);
        }
        if (trace.holder_byFrame[frame] !== holder)
          expect.fail(`frame ${frame}: ${trace.holder_byFrame[frame]}, not ${holder}`);
        if (holder >= 0 && holder < 6) checkBallWith(trace, frame, holder);
      }
      expect(next).toBeGreaterThanOrEqual(trace.events.length - 1);
    });
  });
});

function checkBallWith(trace: Trace, frame: number, holder: number): void {
  const [x, y] = placeOf(trace, frame, holder);
  const apart = Math.hypot(trace.ball_byFrame[3 * frame]! - x, trace.ball_byFrame[3 * frame + 1]! - y);
  // At its end the trial stops before the bodies move: the ball is where it was caught, within a stick's length of the man.
  if (apart > (frame === trace.frames - 1 ? 3 : rounding)) expect.fail(`frame ${frame}: ${apart} yd from its holder`);
}

function holderAfter(trace: Trace, event: TraceEvent, before: number): number {
  switch (event.kind) {
    case 'restart':
    case 'catch':
      return event.who;
    case 'groundBall':
      if (event.won === 'offense') return event.who;
      return event.who === trace.defenders ? 99 : 100 + event.who;
    case 'intercepted':
      return 100 + event.by;
    case 'save':
      return event.kept ? 99 : -1;
    case 'pass':
    case 'shot':
    case 'dropped':
    case 'badPass':
    case 'deflected':
    case 'stripped':
    case 'goal':
    case 'pipe':
    case 'wide':
    case 'blocked':
      return -1;
    default:
      return before;
  }
}

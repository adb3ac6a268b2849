import { describe, expect, it } from 'vitest';
import { sampleMatchup } from '../engine/chance/sample-matchup.fixture.ts';
import { compileChance, createChanceState, traceScript } from '../engine/index.ts';
import { clipOfScript, frameAt, traceEnd, traceNames } from '../render/index.ts';
import { captionAt, filmOf, holderAt, isOn, manAt, nextStop, openAt, saidAt } from './film.ts';

const matchup = sampleMatchup();
const model = compileChance(matchup, 5);
const script = traceScript(model, createChanceState(model), 0)!;
const { trace } = script;
const film = filmOf(clipOfScript(script, matchup.play, traceNames(matchup), ''));

/** Half of a tenth of a yard on either axis. */
const rounding = 0.05 + 1e-6;
/** Between two samples a man may turn: at 1.2 g for a twentieth of a second he is 1/2 * 13 * .05^2 = .016 yd off the straight line. */
const between = rounding + 0.02;

function farthest(times: readonly number[]): number {
  const off = times.flatMap((time) => {
    const { offense, defense, keeper } = frameAt(trace, time);
    return [...offense, ...defense, keeper].flatMap(({ x, y }, man) => {
      const at = manAt(film, man, time);
      return [Math.abs(at.x - x), Math.abs(at.y - y)];
    });
  });
  return Math.max(...off);
}

describe('a film of a real man-up', () => {
  const samples = Array.from({ length: film.scheme.samples }, (_, index) => index / 10);

  it('shows everybody where the trace has him', () => {
    expect(samples.length).toBeGreaterThan(20);
    expect(film.end).toBeGreaterThan(traceEnd(trace) - 1e-6);
    expect(film.end).toBeLessThan(traceEnd(trace) + 0.1);
    expect(farthest(samples)).toBeLessThan(rounding);
    expect(farthest(samples.slice(0, -1).map((time) => time + 0.05))).toBeLessThan(between);
  });

  it('has the ball in the same hands', () => {
    for (const time of samples)
      expect(holderAt(film, time)).toBe(
        trace.holder_byFrame[Math.min(Math.round(time / trace.step), trace.frames - 1)],
      );
  });

  it('leaves the penalized man out until he is released', () => {
    const { defenders } = film.scheme;
    const extra = 6 + defenders.length;
    const withExtra = { ...film, x_byMan: Array.from({ length: extra + 2 }, () => [0]) };
    const released = { ...withExtra, scheme: { ...film.scheme, released: 2 } };
    expect(
      [extra - 1, extra, extra + 1].map((man) =>
        isOn({ ...withExtra, scheme: { ...film.scheme, released: null } }, man, 5),
      ),
    ).toEqual([true, false, true]);
    expect([1.9, 2].map((time) => isOn(released, extra, time))).toEqual([false, true]);
  });

  it('steps through all that happens, forth and back, and stops at both ends', () => {
    const forth: number[] = [];
    for (let time = 0; time < film.end; time = forth.at(-1)!) forth.push(nextStop(film, time, 1));
    const back: number[] = [];
    for (let time = film.end; time > 0; time = back.at(-1)!) back.push(nextStop(film, time, -1));
    expect(forth.at(-1)).toBe(film.end);
    expect(back.at(-1)).toBe(0);
    // Nothing is stepped over but what comes with something else.
    for (const [time] of film.scheme.captions)
      for (const way of [forth, back])
        expect(Math.min(...[0, film.end, ...way].map((stop) => Math.abs(stop - time)))).toBeLessThan(0.0501);
  });

  it('says the last thing that happened', () => {
    const times = film.scheme.captions.map(([time]) => time);
    expect(times.length).toBeGreaterThan(2);
    expect(captionAt(film, times[0]! - 0.01)).toBe(-1);
    expect(times[captionAt(film, times[1]! + 1e-9)]).toBe(times[1]);
    expect(captionAt(film, 1e6)).toBe(times.length - 1);
  });

  it('says together what happens together', () => {
    const captions = [
      [1, 'A catches.'],
      [1, 'Step two.'],
      [1.2, 'B is open.'],
      [1.6, 'A passes.'],
    ] as const;
    const one = { ...film, scheme: { ...film.scheme, captions } };
    expect([0.5, 1, 1.3, 1.6].map((time) => saidAt(one, time))).toEqual([
      '',
      'A catches. Step two.',
      'A catches. Step two. B is open.',
      'A passes.',
    ]);
  });

  it('rings a man while he is open', () => {
    const one = { ...film, scheme: { ...film.scheme, open: [[2, 1, 1.5, 'open'] as const] } };
    expect([0.9, 1, 1.5, 1.6].map((time) => [...openAt(one, time)])).toEqual([[], [[2, 'open']], [[2, 'open']], []]);
  });
});

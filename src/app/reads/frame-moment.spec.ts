import { describe, expect, it } from 'vitest';
import { frameLength, frameMoment, frameSpan, frameStill } from './frame-moment.ts';

const spans = [
  ['in the middle of a trial', frameSpan(6, 20)],
  ['soon after the restart', frameSpan(0.4, 20)],
  ['close to the end', frameSpan(6, 6.8)],
  ['at the very end', frameSpan(6, 5.95)],
] as const;

describe('the moments of a frame', () => {
  it('are those from 1.5 s before the cue to 2.5 s after it, and 0.8 s at it', () => {
    const span = frameSpan(6, 20);
    expect(span).toEqual({ cue: 6, from: 4.5, to: 8.5 });
    expect(frameLength(span)).toBeCloseTo(4.8, 9);
    expect(frameMoment(span, 0)).toEqual({ time: 4.5, phase: 'before' });
    expect(frameMoment(span, 2)).toEqual({ time: 6, phase: 'cue' });
    expect(frameMoment(span, 3.3)).toEqual({ time: 7, phase: 'after' });
  });

  it.each(spans)('never go back, never jump, and stand still at the cue alone: %s', (_, span) => {
    const step = 0.01;
    const length = frameLength(span);
    const moments = Array.from({ length: Math.round(length / step) + 1 }, (_, at) => frameMoment(span, at * step));
    moments.slice(1).forEach(({ time, phase }, at) => {
      const passed = time - moments[at]!.time;
      expect(passed).toBeGreaterThanOrEqual(0);
      expect(passed).toBeLessThan(step + 1e-9);
      if (phase === 'cue') expect(time).toBe(span.cue);
    });
    const still = moments.filter(({ phase }) => phase === 'cue').length * step;
    expect(Math.abs(still - 0.8)).toBeLessThan(2 * step);
    expect(moments.at(-1)!.time).toBeCloseTo(span.to, 6);
  });

  it.each(spans)('begin at rest at the cue, and hold the last picture: %s', (_, span) => {
    expect(frameMoment(span, frameStill(span))).toEqual({ time: span.cue, phase: 'cue' });
    expect(frameMoment(span, frameLength(span) + 5)).toEqual({ time: span.to, phase: 'after' });
  });
});

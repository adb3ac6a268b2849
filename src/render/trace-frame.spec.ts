import { describe, expect, it } from 'vitest';
import { handMadeTrace } from './hand-made.fixture.ts';
import { agentPath, ballPath, frameAt, traceEnd } from './trace-frame.ts';

const trace = handMadeTrace();

describe('frameAt', () => {
  it('reads people, ball, holder and duties of a stored frame', () => {
    const frame = frameAt(trace, 0);
    expect(frame.offense).toHaveLength(6);
    expect(frame.defense).toHaveLength(5);
    expect(frame.offense[4]).toEqual({ x: -8, y: 4 });
    expect(frame.keeper.y).toBeCloseTo(1, 6);
    expect(frame.holder).toEqual({ kind: 'attacker', index: 1 });
    expect(frame.duties[3]).toEqual({ duty: 'split', a: 4, b: 2 });
  });

  it('puts bodies and ball on the straight line between two frames', () => {
    const [before, middle, after] = [0.7, 0.725, 0.75].map((time) => frameAt(trace, time));
    expect(middle!.offense[4]!.x).toBeCloseTo((before!.offense[4]!.x + after!.offense[4]!.x) / 2, 5);
    expect(middle!.ball.x).toBeCloseTo((before!.ball.x + after!.ball.x) / 2, 5);
    expect(middle!.holder).toEqual({ kind: 'nobody' });
  });

  it('holds still before the first and after the last frame', () => {
    expect(frameAt(trace, -3).offense).toEqual(frameAt(trace, 0).offense);
    expect(frameAt(trace, 99).offense).toEqual(frameAt(trace, traceEnd(trace)).offense);
    expect(frameAt(trace, 99).time).toBeCloseTo(2, 6);
  });

  it.each([
    [99, { kind: 'keeper' }],
    [103, { kind: 'defender', index: 3 }],
    [5, { kind: 'attacker', index: 5 }],
    [-1, { kind: 'nobody' }],
  ])('reads holder code %d', (code, holder) => {
    const changed = { ...trace, holder_byFrame: trace.holder_byFrame.map(() => code) };
    expect(frameAt(changed, 0.3).holder).toEqual(holder);
  });

  it('refuses what cannot be drawn', () => {
    expect(() => frameAt({ ...trace, frames: 0 }, 0)).toThrow(RangeError);
    expect(() => frameAt(trace, Number.NaN)).toThrow(RangeError);
  });
});

it('gives a path with both ends included', () => {
  expect(ballPath(trace, 0.5, 1)).toHaveLength(11);
  expect(agentPath(trace, 4, 0, 2)).toHaveLength(41);
  expect(agentPath(trace, 4, 5, 6)).toHaveLength(0);
});

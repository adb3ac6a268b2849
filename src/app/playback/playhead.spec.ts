import { describe, expect, it } from 'vitest';
import { advance, nearestMark, type Playhead, pauseAtEnd, restingPlayhead, seek, showSpan } from './playhead.ts';

const running: Playhead = { ...restingPlayhead, to: 10, running: true };

describe('a playhead', () => {
  it.each([
    ['moves with the watch', running, 2, 2],
    ['moves at its speed', { ...running, speed: 0.25 }, 2, 0.5],
    ['stands while it rests', { ...running, running: false }, 2, 0],
    ['holds the last picture before it begins again', { ...running, time: 10 }, pauseAtEnd / 2, 10 + pauseAtEnd / 2],
    ['begins again after that', { ...running, time: 10 }, pauseAtEnd + 1, 1],
    ['begins again where the shown part begins', { ...running, from: 4, time: 10 }, pauseAtEnd + 1, 5],
    ['stays where there is nothing to show', { ...running, to: 0 }, 2, 0],
  ])('%s', (_, head, elapsed, time) => {
    expect(advance(head, elapsed).time).toBeCloseTo(time, 9);
  });

  it('stops at the end when it does not loop', () => {
    expect(advance({ ...running, loops: false, time: 9.9 }, 1)).toMatchObject({ time: 10, running: false });
  });

  it('takes many small steps as it takes one long one', () => {
    let head = running;
    for (let i = 0; i < 1000; i++) head = advance(head, 0.0161);
    expect(head.time).toBeCloseTo(advance(running, 16.1).time, 6);
  });

  it.each([
    [-3, 0],
    [4, 4],
    [99, 10],
  ])('is sought inside what is shown: %d', (time, found) => {
    expect(seek(running, time).time).toBe(found);
  });

  it('keeps its place when the shown part grows, and comes back when it shrinks', () => {
    expect(showSpan({ ...running, time: 9 }, 0, 20).time).toBe(9);
    expect(showSpan({ ...running, time: 9 }, 0, 6).time).toBe(6);
  });

  it.each([
    [3, 1, 4],
    [3.99, 1, 7],
    [3, -1, 1],
    [8, 1, 10],
    [0.5, -1, 0],
  ] as const)('steps from %d in direction %d to the event at %d', (time, direction, found) => {
    expect(nearestMark({ ...running, time }, [1, 4, 7], direction)).toBe(found);
  });
});

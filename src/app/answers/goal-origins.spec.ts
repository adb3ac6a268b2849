import { describe, expect, it } from 'vitest';
import type { TraceEvent } from '../../engine/index.ts';
import { goalOrigins } from './goal-origins.ts';

const shot = (goalOdds: number): TraceEvent => ({
  kind: 'shot',
  time: 9,
  who: 0,
  goalOdds,
  distance: 9,
  pressed: false,
  assistedBy: -1,
});
const restart: TraceEvent = { kind: 'restart', time: 0, who: 0 };
const beat: TraceEvent = { kind: 'beat', time: 5, beat: 'swing', lastTen: false };
const leave: TraceEvent = { kind: 'leave', time: 6 };
const reset: TraceEvent = { kind: 'reset', time: 7, refused: null };
const pickedUp: TraceEvent = { kind: 'groundBall', time: 8, won: 'offense', who: 2 };

describe('where goals come from', () => {
  it('is counted by the odds of the shots, over all chances', () => {
    const { chances, shares } = goalOrigins([
      { events: [restart, shot(0.1), pickedUp, shot(0.2)] },
      { events: [restart, beat, shot(0.4)] },
      { events: [restart, beat, leave, shot(0.2), reset, shot(0.1)] },
    ]);
    expect(chances).toBe(3);
    expect(shares.play).toBeCloseTo(0.4, 12);
    expect(shares.beside).toBeCloseTo(0.2, 12);
    expect(shares.round).toBeCloseTo(0.2, 12);
    expect(shares.loose).toBeCloseTo(0.2, 12);
  });

  it('is the play again once it is run again', () => {
    expect(goalOrigins([{ events: [restart, beat, pickedUp, reset, beat, shot(0.3)] }]).shares.play).toBe(1);
  });

  it('is nothing when nobody shot', () => {
    expect(goalOrigins([{ events: [restart, beat] }]).shares).toEqual({ play: 0, beside: 0, round: 0, loose: 0 });
  });
});

import { describe, expect, it } from 'vitest';
import { advance, type Playhead, standAt, toggle } from './playhead.ts';

const end = 8;
const at = (time: number, more: Partial<Playhead> = {}): Playhead => ({ time, running: true, speed: 1, ...more });

describe('the playhead', () => {
  it.each([
    ['goes on by the time that passed', at(2), 0.05, at(2.05)],
    ['at half and at double speed', at(2, { speed: 2 }), 0.05, at(2.1, { speed: 2 })],
    ['stops at the end', at(7.98), 0.05, at(8, { running: false })],
    ['stands when it stands', at(2, { running: false }), 0.05, at(2, { running: false })],
    ['does not jump over what was hidden', at(2), 30, at(2.1)],
    ['never runs back', at(2), -1, at(2)],
  ])('%s', (_, head, seconds, after) => {
    const { time, ...rest } = advance(head, seconds, end);
    expect(time).toBeCloseTo(after.time, 9);
    expect({ ...rest, time: after.time }).toEqual(after);
  });

  it('plays, stops, and begins anew at the end', () => {
    expect(toggle(at(3), end)).toEqual(at(3, { running: false }));
    expect(toggle(at(3, { running: false }), end)).toEqual(at(3));
    expect(toggle(at(end, { running: false }), end)).toEqual(at(0));
  });

  it('stands inside the film', () => {
    expect([-1, 4, 9].map((time) => standAt(at(2), time, end).time)).toEqual([0, 4, end]);
    expect(standAt(at(2), 4, end).running).toBe(false);
  });
});

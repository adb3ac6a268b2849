import { describe, expect, it } from 'vitest';
import type { LookWindow, WatchedPlay } from '../../engine/index.ts';
import { chooseTrial } from './choose-trial.ts';

type OwnThrow = WatchedPlay['throws'][number];

const open = (trial: number, from: number, to: number, shotOdds = 0.3): LookWindow => ({
  trial,
  kind: from === to ? 'shot' : 'feed',
  from,
  to,
  opens: 1,
  closes: 2,
  seenAt: 9,
  completion: 0.9,
  shotOdds,
  leftBy: -1,
  duty: 0,
  lateBy: 0,
});
const pass = (from: number, to: number, beat: number, asked: OwnThrow['asked'] = 'script'): OwnThrow => ({
  from,
  to,
  style: 'adjacent',
  asked,
  beat,
});
const came = (trial: number, own: number) => ({ trial, own, opened: false, completion: 0.5 });
const nothing: WatchedPlay = { throws: [], seen: [], windows: [] };
const worth = (from: number, to: number, value: number, trials = 30) =>
  ({ from, to, value, valueLow: value, valueHigh: value, trials }) as never;

describe('the trial that is shown', () => {
  const windows = [open(7, 1, 2), open(3, 1, 2), open(5, 0, 0, 0.5), open(9, 0, 0, 0.5), open(2, 0, 0, 0.5)];

  it('is the first in which the look with the best odds opens', () => {
    expect(chooseTrial({ ...nothing, windows }, 20, [])).toEqual({
      trial: 2,
      watched: 20,
      why: { kind: 'look', look: 'shot', from: 0, to: 0, among: 3 },
    });
  });

  it('is one of the look that is worth most once that is known from enough replays', () => {
    const { trial, why } = chooseTrial({ ...nothing, windows }, 20, [worth(1, 2, 0.6), worth(0, 0, 0.1)]);
    expect([trial, why]).toEqual([3, { kind: 'look', look: 'feed', from: 1, to: 2, among: 2 }]);
    expect(chooseTrial({ ...nothing, windows }, 20, [worth(1, 2, 0.6, 3)]).trial).toBe(2);
  });

  it('is the first that comes as far as the play ever comes when nothing opens', () => {
    const throws = [pass(0, 1, 0), pass(1, 2, 1), pass(2, 3, 4), pass(0, 5, 6, 'read')];
    const seen = [came(1, 0), came(4, 1), came(2, 0), came(6, 1), came(0, 3)];
    expect(chooseTrial({ ...nothing, throws, seen }, 20, [])).toEqual({
      trial: 4,
      watched: 20,
      why: { kind: 'throw', from: 1, to: 2, isLast: false, among: 2 },
    });
    const last = chooseTrial({ ...nothing, throws, seen: [...seen, came(8, 2)] }, 20, []);
    expect(last).toMatchObject({ trial: 8, why: { kind: 'throw', from: 2, to: 3, isLast: true, among: 1 } });
  });

  it('is the first of all when the play comes to nothing', () => {
    expect(chooseTrial({ ...nothing, throws: [pass(0, 1, 0)] }, 20, [])).toEqual({
      trial: 0,
      watched: 20,
      why: { kind: 'first' },
    });
  });
});

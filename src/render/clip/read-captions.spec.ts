import { describe, expect, it } from 'vitest';
import type { Read, TraceEvent } from '../../engine/index.ts';
import { handMadePlay } from '../hand-made.fixture.ts';
import { type ReadsOfPlay, readCaptions, readOfLook } from './read-captions.ts';

const spots = handMadePlay.spots.map(({ id }) => id);
const [tr, wl] = [spots.indexOf('TR'), spots.indexOf('WL')];
const feed: Read = {
  carrier: 'TR',
  cues: [{ kind: 'open', who: 'WL' }],
  then: { kind: 'pass', by: 'TR', to: 'WL', style: 'skip' },
};
const shoot: Read = { carrier: 'TR', cues: [{ kind: 'iAmFree' }], then: { kind: 'shot', by: 'TR' } };
const other: Read = { carrier: 'WL', cues: [], then: { kind: 'shot', by: 'WL' } };
const play: ReadsOfPlay = {
  ...handMadePlay,
  start: { ...handMadePlay.start, ball: 'TR' },
  reads: [other, shoot, feed],
};

const setUp: TraceEvent = { kind: 'setUp', time: 1 };
const beat = (id: string, time: number): TraceEvent => ({ kind: 'beat', time, beat: id, lastTen: false });

describe('what a man looks for', () => {
  it('is said when the ball comes to him, his own reads alone, in their order', () => {
    const events: readonly TraceEvent[] = [setUp, beat('one', 1), { kind: 'catch', time: 2.004, who: wl }];
    expect(readCaptions(events, play, spots)).toEqual([
      [1, 'TR looks: 1, if TR is free, TR shoots; 2, if WL is open, TR skips to WL.'],
      [2, 'WL looks: 1, WL shoots in any case.'],
    ]);
  });

  it('is not said of a man to whom nothing is taught, or of what is taught for another step', () => {
    expect(readCaptions([setUp], { ...play, reads: [other] }, spots)).toEqual([]);
    const later = { ...play, reads: [shoot, { ...feed, during: 'two' }] };
    const events = [setUp, beat('one', 1), { kind: 'catch', time: 3, who: tr } as const, beat('two', 3)];
    expect(readCaptions(events, later, spots).map(([, text]) => text.includes('skips'))).toEqual([false, true]);
  });

  it('is told when its step begins while he has the ball, and only what is new', () => {
    const later = { ...play, reads: [shoot, { ...feed, during: 'two' }] };
    expect(readCaptions([setUp, beat('one', 1), beat('two', 2.5), beat('three', 4)], later, spots)).toEqual([
      [1, 'TR looks: 1, if TR is free, TR shoots.'],
      [2.5, 'TR looks: 2, if WL is open, TR skips to WL.'],
    ]);
    const pass = { kind: 'pass', time: 2 } as TraceEvent;
    expect(readCaptions([setUp, pass, beat('two', 2.5)], later, spots)).toHaveLength(1);
  });

  it('is in the last ten seconds what is taught for them', () => {
    const ten = { ...play, lastTen: { beats: [], reads: [{ ...shoot, cues: [] }] } } as unknown as ReadsOfPlay;
    const events: readonly TraceEvent[] = [
      { kind: 'beat', time: 1, beat: 'x', lastTen: true },
      { kind: 'catch', time: 2, who: tr },
    ];
    expect(readCaptions(events, ten, spots)).toEqual([[2, 'TR looks: 1, TR shoots in any case.']]);
  });
});

describe('the read that asks for a look', () => {
  it.each([
    ['the shot of a man', { from: tr, to: tr, kind: 'shot' }, 1],
    ['a pass to a man', { from: tr, to: wl, kind: 'skip' }, 2],
    ['a pass that no read asks for', { from: tr, to: 0, kind: 'pass' }, undefined],
    ['the look of a man without such a read', { from: wl, to: tr, kind: 'pass' }, undefined],
  ] as const)('for %s has its number on his card', (_, look, number) => {
    expect(readOfLook(look, play, spots, false)).toBe(number);
    expect(readOfLook(look, play, spots, true)).toBeUndefined();
  });
});

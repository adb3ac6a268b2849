import { describe, expect, it } from 'vitest';
import type { Read, Trace, TraceEvent } from '../../engine/index.ts';
import { chosenOfWords, exampleWords, outcomeWords, phaseWords } from './frame-words.ts';

const read: Read = {
  carrier: 'X',
  cues: [{ kind: 'open', who: 'WR' }, { kind: 'iAmPressed' }],
  then: { kind: 'pass', by: 'X', to: 'WR', style: 'feed' },
};
const names = {
  play: 'Gull',
  scheme: 'Jump',
  offense: ['P', 'TR', 'TL', 'WR', 'WL', 'X'],
  defense: ['tr', 'tl', 'lr', 'll', 'c'],
  reads: [],
  lastTenReads: [],
  beats: {},
};

/** A trace of ten seconds in which nobody moves. */
function traceWith(events: readonly TraceEvent[]): Trace {
  return {
    step: 0.5,
    frames: 21,
    agents: 12,
    defenders: 5,
    places_byFrame: new Float32Array(21 * 24),
    ball_byFrame: new Float32Array(21 * 3),
    holder_byFrame: new Int8Array(21),
    duties_byFrame: new Int8Array(21 * 15),
    events: [...events],
  };
}

describe('the words of a frame', () => {
  it('say where it comes from, what shows and what he does', () => {
    expect(exampleWords('Jump', { sinceStart: 4.23 }, read)).toBe(
      'Against Jump: 4.2 s into the play, WR is open and X is pressed; X feeds WR.',
    );
    expect(chosenOfWords({ of: 34 })).toBe('One of 34 such chances, the middle one by what it brings.');
    expect(chosenOfWords({ of: 1 })).toBe('The only such chance that was measured.');
  });

  it('follow it while it is played', () => {
    expect(phaseWords('before', read)).toBe('Just before');
    expect(phaseWords('cue', read)).toBe('Now: WR is open and X is pressed.');
    expect(phaseWords('after', read)).toBe('X feeds WR.');
  });

  it('tell what comes of it in the frame: what ends it, else the last thing, and nothing from before or after', () => {
    const fake: TraceEvent = { kind: 'fake', time: 4.5, who: 5, toward: 1 };
    const dropped: TraceEvent = { kind: 'dropped', time: 5, who: 3 };
    const bite: TraceEvent = { kind: 'bite', time: 5.5, by: 0, seconds: 1 };
    const told = (...events: readonly TraceEvent[]): string => outcomeWords(traceWith(events), { time: 4 }, names);
    expect(told()).toBe('');
    expect(told(fake)).toBe('Then: X fakes to TR.');
    expect(told(fake, dropped, bite)).toBe('Then: WR drops it.');
    expect(told({ ...dropped, time: 3.9 }, fake, { ...dropped, time: 6.6 })).toBe('Then: X fakes to TR.');
  });
});

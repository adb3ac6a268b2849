import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { type ChanceModel, compileChance } from '../chance/model.ts';
import { compileProgram } from '../chance/program.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import { busyPlay, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import type { TraceEvent } from '../chance/trace.ts';
import { schemesFor } from '../defense/schemes.ts';
import type { Play } from '../offense/play.ts';
import { type OwnThrow, ownThrows, summarizeThrows } from './own-throws.ts';
import { watchPlay } from './watch.ts';

const inWords = (play: Play, own: OwnThrow): string => {
  const beat = own.beat < 0 ? 'any' : play.beats[own.beat]!.id;
  return `${own.asked} ${beat}: ${play.spots[own.from]!.id} ${own.style} ${play.spots[own.to]!.id}`;
};

describe('the passes that a play names', () => {
  it.each([
    {
      play: samplePlay,
      passes: [
        'script swing: TR adjacent P',
        'script over: P adjacent TL',
        'script low: TL adjacent WL',
        'script back: WL skip P',
      ],
    },
    {
      // What changes in the last ten seconds is another play.
      play: busyPlay,
      passes: [
        'script begin: TR adjacent TL',
        'script look: TL skip WR',
        'script finish: WR feed C',
        'read any: TL adjacent WL',
        'read begin: TR adjacent WR',
      ],
    },
    {
      // One read after another with the same answer is one pass.
      play: { ...busyPlay, beats: [], reads: [busyPlay.reads[1]!, busyPlay.reads[1]!] },
      passes: ['read any: TL adjacent WL'],
    },
  ])('are those of its script, then those of its reads: $play.id', ({ play, passes }) => {
    expect(ownThrows(compileProgram(play).script).map((own) => inWords(play, own))).toEqual(passes);
  });
});

/** The events of a trial that is watched, up to the first time that the play could not go on. */
function watchedEvents(model: ChanceModel, trial: number): readonly TraceEvent[] {
  const state = createChanceState(model);
  const recorder = createTraceRecorder(model);
  state.recorder = recorder;
  beginTrial(model, state, trial);
  state.watching = true;
  while (state.end === null) advanceTrial(model, state);
  const { events } = recorder.finish();
  const began = events.findIndex(({ kind }) => kind === 'beat');
  if (began < 0) return [];
  const over = events.findIndex(({ kind }, at) => at > began && (kind === 'reset' || kind === 'restart'));
  return events.slice(began, over < 0 ? events.length : over);
}

const trials = 12;
const cases = schemesFor(5).flatMap((scheme) =>
  [samplePlay, busyPlay].map((play) => ({ name: `${play.id} against ${scheme.id}`, play, scheme })),
);

describe('a watched trial has come to a pass of the play', () => {
  const outcomes = new Set<string>();
  it.each(cases)('$name', ({ play, scheme }) => {
    const model = compileChance(sampleMatchup({ level: 'pro', play, scheme }), 3);
    const { throws, seen } = watchPlay(model, createChanceState(model), 0, trials);
    for (let trial = 0; trial < trials; trial++) {
      const events = watchedEvents(model, trial);
      const reached = seen.filter((one) => one.trial === trial).map(({ own }) => throws[own]!);
      // When the script threw it, it has;
      for (const pass of events) {
        if (pass.kind !== 'pass' || pass.why !== 'script') continue;
        const has = reached.some(({ from, to, asked }) => asked === 'script' && from === pass.from && to === pass.to);
        expect(has, `trial ${trial}: ${pass.from} to ${pass.to} at ${pass.time}`).toBe(true);
      }
      // and when its beat has not begun, it has not.
      const begun = new Set(events.flatMap((event) => (event.kind === 'beat' ? [event.beat] : [])));
      for (const { beat } of reached) if (beat >= 0) expect(begun).toContain(play.beats[beat]!.id);
    }
    expect(seen.every(({ completion }) => completion >= 0 && completion <= 1)).toBe(true);
    for (const { reached, share } of summarizeThrows(throws, seen, trials)) {
      expect(share).toBeLessThanOrEqual(reached);
      outcomes.add(reached === 0 ? 'never reached' : share === 0 ? 'never open' : 'open');
    }
  });

  it('or not, and then found it open or not', () => {
    expect(outcomes).toEqual(new Set(['never reached', 'never open', 'open']));
  });
});

it('over many trials: shares of all of them, odds of those that came to it', () => {
  const one = { from: 0, to: 1, style: 'skip', asked: 'script', beat: 2 } as const;
  const throws = [one, { ...one, to: 2 }];
  const seen = [
    { trial: 0, own: 0, opened: true, completion: 0.9 },
    { trial: 3, own: 0, opened: false, completion: 0.5 },
  ];
  expect(summarizeThrows(throws, seen, 8)).toEqual([
    { ...one, reached: 0.25, share: 0.125, completion: 0.7 },
    { ...one, to: 2, reached: 0, share: 0, completion: 0 },
  ]);
  expect(summarizeThrows(throws, [], 0).every(({ reached, share }) => reached === 0 && share === 0)).toBe(true);
});

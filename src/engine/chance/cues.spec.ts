import { describe, expect, it } from 'vitest';
import { schemeList } from '../defense/schemes.ts';
import type { Cue, Play } from '../offense/play.ts';
import { compileChance } from './model.ts';
import { recordTrace } from './run.ts';
import { mirrorMatchup, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import type { Trace } from './trace.ts';

const cues: readonly Cue[] = [
  { kind: 'nextSteps' },
  { kind: 'myManLeaves' },
  { kind: 'creaseUp' },
  { kind: 'farLowLooksAway' },
  { kind: 'farLowCrosses' },
  { kind: 'laneTaken', who: 'WR' },
];

/** The sample play whose wing and top men throw to P on this cue alone. */
function taught(cue: Cue): Play {
  const read = (carrier: string) => ({
    carrier,
    cues: [cue],
    then: { kind: 'pass' as const, by: carrier, to: 'P', style: 'adjacent' as const },
  });
  return { ...samplePlay, reads: [read('TR'), read('TL'), read('WL')] };
}

const schemes = schemeList.filter(({ defenders }) => defenders === 5);

function tracesOf(cue: Cue, isMirrored: boolean): readonly Trace[] {
  return schemes.flatMap((scheme) => {
    const matchup = sampleMatchup({ scheme, play: taught(cue), penalty: { seconds: 40 } });
    const model = compileChance(isMirrored ? mirrorMatchup(matchup) : matchup, 11);
    return [0, 1, 2].map((trial) => recordTrace(model, trial));
  });
}

describe.each(cues)('a read on $kind', (cue) => {
  const traces = tracesOf(cue, false);
  const taken = traces.flatMap(({ events }) => events.filter(({ kind }) => kind === 'read'));

  it('is taken in a chance, and not at every look', () => {
    expect(taken.length).toBeGreaterThan(0);
    const always = { ...taught(cue), reads: taught(cue).reads.map((read) => ({ ...read, cues: [] })) };
    const blind = schemes.flatMap((scheme) => {
      const model = compileChance(sampleMatchup({ scheme, play: always, penalty: { seconds: 40 } }), 11);
      return [0, 1, 2].map((trial) => recordTrace(model, trial).events.find(({ kind }) => kind === 'read')?.time);
    });
    const first = traces.map(({ events }) => events.find(({ kind }) => kind === 'read')?.time);
    expect(first).not.toEqual(blind);
  });

  it('is the mirrored read in the mirror', () => {
    const mirrored = tracesOf(cue, true);
    expect(mirrored.map(({ events }) => events)).toEqual(traces.map(({ events }) => events));
  });
});

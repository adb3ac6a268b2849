import { describe, expect, it } from 'vitest';
import { schemeList } from '../defense/schemes.ts';
import { compileChance } from './model.ts';
import { recordTrace } from './run.ts';
import { busyPlay, mirrorMatchup, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import type { Trace } from './trace.ts';

// Mirroring play, hands, duties, start and draws together gives exactly the mirrored trace: same men, x negated, same events.
// Men keep their numbers (`mirrorPlay` keeps the order of the spots, a scheme mirrors by its sense), so nothing is relabelled.

const trials = 4;

/** The first place where the second trace is not the first one mirrored; undefined when it is, to the last bit. */
function firstDifference(trace: Trace, mirrored: Trace): string | undefined {
  if (trace.frames !== mirrored.frames) return `${trace.frames} frames against ${mirrored.frames}`;
  for (let frame = 0; frame < trace.frames; frame++) {
    for (let at = 0; at < trace.agents; at++) {
      const x = 2 * (frame * trace.agents + at);
      const sameX = trace.places_byFrame[x] === -mirrored.places_byFrame[x]!;
      if (!sameX || trace.places_byFrame[x + 1] !== mirrored.places_byFrame[x + 1])
        return `frame ${frame}: agent ${at}`;
    }
    for (let at = 0; at < 3; at++) {
      const sign = at === 0 ? -1 : 1;
      if (trace.ball_byFrame[3 * frame + at] !== sign * mirrored.ball_byFrame[3 * frame + at]!)
        return `frame ${frame}: ball`;
    }
    if (trace.holder_byFrame[frame] !== mirrored.holder_byFrame[frame]) return `frame ${frame}: holder`;
  }
  const duty = trace.duties_byFrame.findIndex((value, at) => value !== mirrored.duties_byFrame[at]);
  if (duty >= 0) return `duty ${duty}`;
  const event = trace.events.findIndex((each, at) => JSON.stringify(each) !== JSON.stringify(mirrored.events[at]));
  if (event >= 0) return JSON.stringify([trace.events[event], mirrored.events[event]]);
  return trace.events.length === mirrored.events.length ? undefined : 'more events';
}

describe('a mirrored chance is the chance in a mirror', () => {
  const cases = schemeList.flatMap((scheme) => [samplePlay, busyPlay].map((play) => ({ scheme, play })));
  it.each(cases)('$play.id against $scheme.id', ({ scheme, play }) => {
    const matchup = sampleMatchup({ scheme, play, penalty: { seconds: 30, releasable: false } });
    const model = compileChance(matchup, 3);
    const mirrored = compileChance(mirrorMatchup(matchup), 3);
    for (let trial = 0; trial < trials; trial++) {
      expect(
        firstDifference(recordTrace(model, trial), recordTrace(mirrored, trial)),
        `trial ${trial}`,
      ).toBeUndefined();
    }
  });

  it('also before a keeper with a weak side', () => {
    const cover = { highLeft: 0.4, highRight: 1.5, lowLeft: 0.8, lowRight: 1.9 };
    const matchup = sampleMatchup({ play: busyPlay, keeper: { cover } });
    const [model, mirrored] = [compileChance(matchup, 5), compileChance(mirrorMatchup(matchup), 5)];
    for (let trial = 0; trial < 12; trial++) {
      expect(
        firstDifference(recordTrace(model, trial), recordTrace(mirrored, trial)),
        `trial ${trial}`,
      ).toBeUndefined();
    }
    const facingAway = compileChance({ ...mirrorMatchup(matchup), keeper: matchup.keeper }, 5);
    const same = Array.from({ length: 12 }, (_, trial) =>
      firstDifference(recordTrace(model, trial), recordTrace(facingAway, trial)),
    );
    expect(same.some((difference) => difference !== undefined)).toBe(true);
  });

  it('and a chance that is not mirrored is not', () => {
    const model = compileChance(sampleMatchup({ play: busyPlay }), 3);
    expect(firstDifference(recordTrace(model, 0), recordTrace(model, 0))).toBeDefined();
  });
});

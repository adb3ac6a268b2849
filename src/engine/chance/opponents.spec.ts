import { describe, expect, it } from 'vitest';
import { disciplines } from '../defense/discipline.ts';
import type { Scheme } from '../defense/scheme.ts';
import { schemes } from '../defense/schemes.ts';
import { pairedDifference } from '../statistics/paired-difference.ts';
import { runTrials } from '../trials/run-trials.ts';
import { createChanceState } from './create-state.ts';
import { compileChance } from './model.ts';
import { type SampleChoice, sampleMatchup } from './sample-matchup.fixture.ts';

// Better men do better, on the whole: the same luck for both (common random numbers), seed, trials, schemes and margin fixed beforehand.
// Margin: the whole 95 % interval of the difference in goals a chance lies above 0.

const seed = 5;
const trials = 600;

/** Goals of each trial, the trials shared out evenly among the schemes. */
function goalsAgainst(against: readonly Scheme[], choice: SampleChoice): number[] {
  return against.flatMap((scheme) => {
    const model = compileChance(sampleMatchup({ scheme, penalty: { seconds: 30 }, ...choice }), seed);
    return [...runTrials(model, createChanceState(model), 0, trials / against.length).goals_byTrial];
  });
}

const three = [schemes['box-zone'], schemes['five-man-rotation'], schemes['four-man-rotation']];
const rotation = [schemes['five-man-rotation']];
const { faultless } = disciplines;

interface Case {
  readonly name: string;
  readonly against: readonly Scheme[];
  readonly more: SampleChoice;
  readonly less: SampleChoice;
}

const cases: readonly Case[] = [
  {
    name: 'hands that catch',
    against: three,
    more: { six: { catching: 0.99 } },
    less: { six: { catching: 0.7 } },
  },
  {
    name: 'a keeper who reaches less',
    against: three,
    more: { keeper: { bodyReach: 0.25, handSpeed: 1.5 } },
    less: { keeper: { bodyReach: 0.6, handSpeed: 5 } },
  },
  {
    name: 'defenders who react late',
    against: three,
    more: { defenders: { reaction: 0.8 } },
    less: { defenders: { reaction: 0.2 } },
  },
  {
    name: 'a rotation that is late',
    against: rotation,
    more: { discipline: { ...faultless, late: 1.5 } },
    less: { discipline: faultless },
  },
];

describe('more goals with', () => {
  it.each(cases)('$name', ({ against, more, less }) => {
    const difference = pairedDifference(goalsAgainst(against, more), goalsAgainst(against, less));
    expect(difference.low).toBeGreaterThan(0);
  });

  it('three men more than the other side than with one', () => {
    const [more, less] = [goalsAgainst([schemes['three-down']], {}), goalsAgainst([schemes['box-zone']], {})];
    expect(pairedDifference(more, less).low).toBeGreaterThan(0);
  });
});

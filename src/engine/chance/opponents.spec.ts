import { describe, expect, it } from 'vitest';
import { disciplines } from '../defense/discipline.ts';
import { schemes } from '../defense/schemes.ts';
import { pairedDifference } from '../statistics/paired-difference.ts';
import { runTrials } from '../trials/run-trials.ts';
import { createChanceState } from './create-state.ts';
import { compileChance } from './model.ts';
import { type SampleChoice, sampleMatchup } from './sample-matchup.ts';

// Better men do better, on the whole: the same luck for both (common random numbers), seed, trials, schemes and margin fixed beforehand.
// Margin: the whole 95 % interval of the difference in goals a chance lies above 0.

const seed = 5;
const trials = 200;
const tried = [schemes['box-zone'], schemes['five-man-rotation'], schemes['four-man-rotation']];

/** Goals of every trial against every scheme. */
function goalsWith(choice: SampleChoice): number[] {
  return tried.flatMap((scheme) => {
    const model = compileChance(sampleMatchup({ scheme, penalty: { seconds: 30 }, ...choice }), seed);
    return [...runTrials(model, createChanceState(model), 0, trials).goals_byTrial];
  });
}

const faultless = disciplines.faultless;
const cases: readonly { readonly name: string; readonly more: SampleChoice; readonly less: SampleChoice }[] = [
  { name: 'hands that catch', more: { six: { catching: 0.99 } }, less: { six: { catching: 0.7 } } },
  {
    name: 'a keeper who reaches less',
    more: { keeper: { bodyReach: 0.25, handSpeed: 1.5 } },
    less: { keeper: { bodyReach: 0.6, handSpeed: 5 } },
  },
  {
    name: 'defenders who are late with their duties',
    more: { discipline: { ...faultless, late: 1.5 } },
    less: { discipline: faultless },
  },
  { name: 'defenders who react late', more: { defenders: { reaction: 0.8 } }, less: { defenders: { reaction: 0.2 } } },
];

describe('more goals with', () => {
  it.each(cases)('$name', ({ more, less }) => {
    expect(pairedDifference(goalsWith(more), goalsWith(less)).low).toBeGreaterThan(0);
  });

  it('three men more than the other side than with one', () => {
    const shares = [schemes['box-zone'], schemes['three-down']].map((scheme) => {
      const model = compileChance(sampleMatchup({ scheme, penalty: { seconds: 30 } }), seed);
      return [...runTrials(model, createChanceState(model), 0, 3 * trials).goals_byTrial];
    });
    expect(pairedDifference(shares[1]!, shares[0]!).low).toBeGreaterThan(0);
  });
});

import { describe, expect, it } from 'vitest';
import type { DecisionTable } from './decision-table.ts';
import { goOn, weightedMean, worthsUnder } from './rule-list.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** A table in which each chance has one moment, and leaving it to the play scores nothing. */
function oneLook(states: readonly { cues: number; weight: number; worths: readonly number[] }[]): DecisionTable {
  return {
    actions: states[0]!.worths.length,
    cues: 3,
    first_byChance: Int32Array.from([0, ...states.map((_, at) => at + 1)]),
    weight_byChance: Float64Array.from(states, ({ weight }) => weight),
    cues_byMoment: Int32Array.from(states, ({ cues }) => cues),
    worth_byMomentAction: Float32Array.from(states.flatMap(({ worths }) => worths)),
    goOn_byChance: new Float32Array(states.length),
  };
}

// Bits: the adjacent man goes early 1, the crease man is fronted 2, the backside sleeps 4.
const threeReads = oneLook(
  [
    { abc: [0, 0, 0], weight: 0.3, worths: [0.2, 0.18, 0.15, 0.1] },
    { abc: [0, 0, 1], weight: 0.08, worths: [0.2, 0.18, 0.15, 0.26] },
    { abc: [0, 1, 0], weight: 0.1, worths: [0.2, 0.14, 0.15, 0.1] },
    { abc: [0, 1, 1], weight: 0.05, worths: [0.2, 0.14, 0.15, 0.24] },
    { abc: [1, 0, 0], weight: 0.2, worths: [0.12, 0.27, 0.22, 0.1] },
    { abc: [1, 0, 1], weight: 0.07, worths: [0.12, 0.27, 0.22, 0.25] },
    { abc: [1, 1, 0], weight: 0.12, worths: [0.12, 0.14, 0.24, 0.1] },
    { abc: [1, 1, 1], weight: 0.08, worths: [0.12, 0.14, 0.24, 0.25] },
  ].map(({ abc, weight, worths }) => ({ cues: abc[0]! + 2 * abc[1]! + 4 * abc[2]!, weight, worths })),
);

describe('the three reads of a worked example', () => {
  // Made for this project by hand and solved by trying every list; the values are exact to four places.
  it.each([
    [0, 0.1903],
    [1, 0.2134],
    [2, 0.2269],
    [3, 0.2345],
  ])('%d reads return %d goals a chance', (reads, worth) => {
    const found = searchRuleLists(threeReads, { ...defaultSearchLimits, mostReads: 3 });
    expect(found[reads]!.worth).toBeCloseTo(worth, 6);
  });

  it('the list of three is as good as deciding each case by itself', () => {
    const best = searchRuleLists(threeReads, { ...defaultSearchLimits, mostReads: 3 })[3]!;
    const each = worthsUnder(best.list, threeReads);
    const most = Float64Array.from(each, (_, at) =>
      Math.max(...threeReads.worth_byMomentAction.slice(4 * at, 4 * at + 4)),
    );
    expect(weightedMean(each, threeReads)).toBeCloseTo(weightedMean(most, threeReads), 9);
  });
});

describe('going on', () => {
  it('is the last resort where acting scores less than the play', () => {
    const table: DecisionTable = { ...threeReads, goOn_byChance: new Float32Array(8).fill(0.5) };
    const [none] = searchRuleLists(table);
    expect(none!.list).toEqual({ rules: [], lastResort: goOn });
    expect(none!.worth).toBeCloseTo(0.5, 6);
  });

  it('waits for a cue that comes later', () => {
    // The cue holds at the second of three moments, where acting scores; before and after it does not.
    const table: DecisionTable = {
      actions: 1,
      cues: 1,
      first_byChance: Int32Array.from([0, 3, 6]),
      weight_byChance: Float64Array.from([1, 1]),
      cues_byMoment: Int32Array.from([0, 1, 0, 0, 0, 0]),
      worth_byMomentAction: Float32Array.from([0.1, 0.9, 0, 0.1, 0, 0]),
      goOn_byChance: Float32Array.from([0.2, 0.2]),
    };
    const found = searchRuleLists(table, { ...defaultSearchLimits, mostReads: 1 })[1]!;
    expect(found.list).toEqual({ rules: [{ looksAt: 1, mustHold: 1, action: 0 }], lastResort: goOn });
    expect(found.worth).toBeCloseTo((0.9 + 0.2) / 2, 6);
  });
});

describe('a broken table', () => {
  it.each([
    [{ cues: 31 }, 'invalid decision table: cues 31 (expected 0 to 30)'],
    [{ goOn_byChance: new Float32Array(7) }, 'invalid decision table: worths of going on 7 (expected 8)'],
    [
      { first_byChance: Int32Array.from([0, 0, 2, 3, 4, 5, 6, 7, 8]) },
      'invalid decision table: moments of chance 0: 0 (expected at least one)',
    ],
  ])('is refused: %o', (part, message) => {
    expect(() => searchRuleLists({ ...threeReads, ...part })).toThrow(new RangeError(message));
  });
});

import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { estimateCount } from '../statistics/estimate-count.ts';
import { runTrials } from './run-trials.ts';
import { applyStopRule, batchesOf, type StopRule } from './stop-rule.ts';
import type { Tally } from './tally.ts';

const rule: StopRule = { batch: 20, least: 40, most: 110, halfWidth: 0.1 };
const model = compileChance(sampleMatchup({ penalty: { seconds: 20 } }), 5);
const state = createChanceState(model);
const all = batchesOf(rule).map(({ from, to }) => runTrials(model, state, from, to));

function halfWidth({ goals_byTrial }: Tally): number {
  const { low, high } = estimateCount(goals_byTrial);
  return (high - low) / 2;
}

/** Run batch after batch until the rule is content, as one worker would. */
function oneByOne(wanted: StopRule): Tally {
  const done: Tally[] = [];
  for (;;) {
    const answer = applyStopRule(wanted, done);
    if (answer.kind === 'enough') return answer.tally;
    done.push(runTrials(model, state, answer.next.from, answer.next.to));
  }
}

describe('batches', () => {
  it('cover the trials without a gap and end at the most', () => {
    expect(batchesOf(rule).map(({ from, to }) => [from, to])).toEqual([
      [0, 20],
      [20, 40],
      [40, 60],
      [60, 80],
      [80, 100],
      [100, 110],
    ]);
  });
  it('have trials in them', () => expect(() => batchesOf({ ...rule, batch: 0 })).toThrow(RangeError));
});

describe('a run of trials stops', () => {
  it('at the first batch end where the interval is narrow enough, and says how many trials that took', () => {
    const stopped = oneByOne(rule);
    expect(stopped.to).toBeGreaterThanOrEqual(rule.least);
    expect(halfWidth(stopped)).toBeLessThanOrEqual(rule.halfWidth);
    const before = runTrials(model, state, 0, stopped.to - rule.batch);
    expect(before.to < rule.least || halfWidth(before) > rule.halfWidth).toBe(true);
    expect(stopped.goals_byTrial).toHaveLength(stopped.to);
  });

  it('at the same trial when other workers were faster than the answer', () => {
    const answer = applyStopRule(rule, all);
    expect(answer).toEqual({ kind: 'enough', tally: oneByOne(rule) });
  });

  it.each([
    { name: 'never narrow enough', changed: { halfWidth: 0 }, to: 110 },
    { name: 'narrow at once', changed: { halfWidth: 1 }, to: 40 },
    { name: 'fewer trials than a batch', changed: { halfWidth: 0, most: 15 }, to: 15 },
  ])('$name: after $to trials', ({ changed, to }) => expect(oneByOne({ ...rule, ...changed }).to).toBe(to));

  it('and takes no tallies of other batches', () => {
    expect(() => applyStopRule(rule, [all[1]!])).toThrow(RangeError);
    expect(() => applyStopRule({ ...rule, most: 0 }, [])).toThrow(RangeError);
  });
});

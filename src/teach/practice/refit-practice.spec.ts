import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Practice, setBlockMinutes } from '../../playbook/index.ts';
import { demoPlays, findingsOf, wish } from './drawn-findings.fixture.ts';
import { planPractice } from './plan-practice.ts';
import { practiceTimes } from './practice-times.ts';
import { minutesTaken, refitPractice, repeated } from './refit-practice.ts';

const play = demoPlays[0]!;
const plan: Practice = {
  ...planPractice([{ play, findings: findingsOf(play, [0.1, 0.05, 0.02]) }], wish()),
  id: 'tuesday',
};

describe('refitPractice', () => {
  test('keeps what was set by hand, and fits the rest into the time', () => {
    const fitted = refitPractice(setBlockMinutes(plan, 1, 3.5))!;
    expect(fitted.blocks[1]).toMatchObject({ kind: 'walk', minutes: 3.5, fixed: true });
    expect(minutesTaken(fitted)).toBe(20);
    expect(fitted.blocks.map(({ kind }) => kind)).toEqual(plan.blocks.map(({ kind }) => kind));
  });
  test('says when it cannot', () => {
    expect(refitPractice(setBlockMinutes(plan, 1, 15))).toBeUndefined();
    expect(refitPractice({ ...plan, minutes: 5 })).toBeUndefined();
  });
  test('never takes more than there is, drops nothing, and leaves no block too short', () => {
    fc.assert(
      fc.property(
        fc.nat({ max: plan.blocks.length - 1 }),
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 5, max: 90 }),
        (at, halves, minutes) => {
          const asked = { ...setBlockMinutes(plan, at, halves / 2), minutes };
          const fitted = refitPractice(asked);
          if (fitted === undefined) return;
          expect(minutesTaken(fitted)).toBeLessThanOrEqual(minutes);
          expect(fitted.blocks).toHaveLength(plan.blocks.length);
          expect(fitted.blocks[at]).toEqual(asked.blocks[at]);
          for (const block of fitted.blocks) {
            if (block.fixed === true) continue;
            expect(block.minutes).toBeGreaterThanOrEqual(practiceTimes[block.kind].least);
            if (block.runs !== undefined) expect(block.runs.reduce((sum, run) => sum + run.reps, 0)).toBe(block.reps);
          }
        },
      ),
    );
  });
});

test('other reps are shared out as they were, and none is left with nothing as long as there are enough', () => {
  const block = plan.blocks.find(({ kind }) => kind === 'skeleton')!;
  const more = repeated(block, 2 * block.reps!);
  expect(more).toMatchObject({ minutes: block.minutes, reps: 2 * block.reps! });
  expect(more.runs!.reduce((sum, run) => sum + run.reps, 0)).toBe(2 * block.reps!);
  expect(more.runs!.map(({ look }) => look)).toEqual(block.runs!.map(({ look }) => look));
  expect(repeated(block, 0)).toBe(block);
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { plannedPlays, weighedPlays, wishes } from './drawn-findings.fixture.ts';
import { coldKeeperNote, openGoalNote, planPractice, warmKeeperNote } from './plan-practice.ts';
import { practicePages } from './practice-pages.ts';
import { practiceTimes } from './practice-times.ts';
import { minutesTaken } from './refit-practice.ts';
import { dummyRuns, liveRuns } from './share-reps.ts';

const shots = ['dummy', 'part', 'live', 'situation'];

describe('planPractice', () => {
  test('never takes more time than there is, and fills it once everything has begun', () => {
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        const plan = planPractice(plays, wished);
        const taken = minutesTaken(plan);
        expect(taken).toBeLessThanOrEqual(wished.minutes);
        const spare = plan.leftOut?.some((words) => words.includes('to spare')) ?? false;
        expect(spare).toBe(taken < wished.minutes);
      }),
    );
  });

  test('more time never gives less of anything', () => {
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        const [less, more] = [wished.minutes, wished.minutes + 0.5].map((minutes) =>
          planPractice(plays, { ...wished, minutes }),
        );
        for (const block of less!.blocks) {
          const same = more!.blocks.find(
            ({ kind, play, situation, spots, runs }) =>
              kind === block.kind &&
              play === block.play &&
              situation === block.situation &&
              (kind !== 'part' ||
                JSON.stringify([spots, runs?.[0]?.look]) === JSON.stringify([block.spots, block.runs?.[0]?.look])),
          );
          expect(same, block.kind).toBeDefined();
          expect(same!.minutes).toBeGreaterThanOrEqual(block.minutes);
          expect(same!.reps ?? 0).toBeGreaterThanOrEqual(block.reps ?? 0);
          for (const run of block.runs ?? []) {
            const again = same!.runs?.find(
              ({ look, scheme }) => JSON.stringify([look, scheme]) === JSON.stringify([run.look, run.scheme]),
            );
            expect(again?.reps ?? 0).toBeGreaterThanOrEqual(run.reps);
          }
        }
      }),
    );
  });

  test('a likelier scheme never gets fewer reps than a less likely one, against a dummy defense and live', () => {
    fc.assert(
      fc.property(weighedPlays, wishes, fc.nat({ max: 30 }), (findings, { level }, reps) => {
        const weight_byScheme = new Map(findings.looks[0]!.against.map(({ scheme, weight }) => [scheme, weight]));
        for (const runs of [dummyRuns(findings, level, reps), liveRuns(findings, level, reps)]) {
          const repsOf = (wanted: string): number =>
            runs.filter(({ scheme }) => scheme === wanted).reduce((sum, run) => sum + run.reps, 0);
          for (const [scheme, weight] of weight_byScheme)
            for (const [other, less] of weight_byScheme)
              if (weight > less) expect(repsOf(scheme), `${scheme} and ${other}`).toBeGreaterThanOrEqual(repsOf(other));
        }
      }),
    );
  });

  test('no block is shorter than is sensible, reps are whole and those of its runs add up', () => {
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        for (const { kind, minutes, reps, runs } of planPractice(plays, wished).blocks) {
          expect(minutes).toBeGreaterThanOrEqual(practiceTimes[kind].least);
          expect(2 * minutes).toBe(Math.round(2 * minutes));
          if (reps !== undefined) expect(Number.isInteger(reps) && reps > 0).toBe(true);
          if (runs !== undefined) expect(runs.reduce((sum, run) => sum + run.reps, 0)).toBe(reps);
        }
      }),
    );
  });

  test('everything that is taught is run at least once where the play is run at full speed', () => {
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        for (const block of planPractice(plays, wished).blocks.filter(({ kind }) => kind === 'skeleton')) {
          const { findings } = plays.find(({ play }) => play.id === block.play)!;
          const run = block.runs!.map(({ look }) => look!.join(' '));
          for (const { from, to } of findings.looks) expect(run).toContain(from === to ? from : `${from} ${to}`);
        }
      }),
    );
  });

  test('nobody shoots at a goalkeeper who is not there or not warm', () => {
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        const { blocks } = planPractice(plays, wished);
        const warm = blocks.findIndex(({ kind }) => kind === 'keeper');
        if (wished.keeper !== 'cold') expect(warm).toBe(-1);
        for (const [at, { kind, note }] of blocks.entries()) {
          if (!shots.includes(kind)) continue;
          if (wished.keeper === 'none') expect(note).toContain(openGoalNote);
          else if (wished.keeper === 'warm')
            expect(note?.includes(warmKeeperNote) ?? false).toBe(
              at === blocks.findIndex((one) => shots.includes(one.kind)),
            );
          else if (warm < 0) expect(note).toContain(coldKeeperNote);
          else expect(at).toBeGreaterThan(warm);
          if (wished.keeper === 'cold' && ['live', 'situation'].includes(kind)) expect(warm).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test('comes on one page, whatever it is made of', () => {
    const ground = { side: 'right', paper: 'letter', made: '9 March 2026' } as const;
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        const stands = plays.flatMap(({ findings }) => findings.stands);
        const plan = planPractice(plays, wished);
        const { pages } = practicePages(demoPlaybook, plan, stands, ground);
        const parts = plan.blocks.filter(({ kind }) => kind === 'part').length;
        // Two plays in an hour and a half are more than one page holds.
        if (plays.length === 1) expect(pages).toHaveLength(1 + parts);
        else expect(pages.length).toBeLessThanOrEqual(2 + parts);
      }),
      { numRuns: 40 },
    );
  });

  test('asks nobody to play whom it has not', () => {
    fc.assert(
      fc.property(plannedPlays, wishes, (plays, wished) => {
        for (const { kind, spots } of planPractice(plays, wished).blocks) {
          if (kind === 'live' || kind === 'situation') expect(wished.players).toBeGreaterThanOrEqual(11);
          if (kind === 'part') expect(2 * spots!.length - 1).toBeLessThanOrEqual(wished.players);
          if (['walk', 'skeleton', 'dummy'].includes(kind)) expect(wished.players).toBeGreaterThanOrEqual(6);
        }
      }),
    );
  });
});

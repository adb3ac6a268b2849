import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { mirrorMatchup, sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { duty } from '../defense/duty.ts';
import type { LookValue } from '../looks/plan-forced.ts';
import type { LookSummary } from '../looks/summarize.ts';
import { type FoundLooks, reportScheme } from './report-scheme.ts';
import { runTrials } from './run-trials.ts';
import { turnoverKinds } from './turnover-kinds.ts';

const matchup = sampleMatchup();
const model = compileChance(matchup, 5);
const tally = runTrials(model, createChanceState(model), 0, 200);
const nobody = { ...tally, goals: 0, shots: 0, losses: 0, firstShot_byTrial: new Float32Array(200).fill(Number.NaN) };

function look(from: number, to: number, share: number, defender = 2): LookSummary {
  const leftBy = { defender, duty: duty.split, lateBy: 0.4 };
  return { kind: 'skip', from, to, share, opens: 2, closes: 3, completion: 0.9, shotOdds: 0.3, leftBy, windows: [] };
}

function worth(from: number, to: number, value: number): LookValue {
  return { from, to, trials: 100, value, valueLow: value - 0.1, valueHigh: value + 0.1 };
}

function found(looks: readonly LookSummary[], values: readonly LookValue[]): FoundLooks {
  return { watched: 60, looks, values, own: [] };
}

const ownSkip = { style: 'skip', asked: 'script', beat: 3, reached: 0.4, share: 0.1, completion: 0.8 } as const;

describe("the play's own passes", () => {
  it.each([
    { own: ownSkip, told: { kind: 'skip', beat: 'back', reached: 0.4, share: 0.1, completion: 0.8 } },
    { own: { ...ownSkip, style: 'adjacent', beat: 0 }, told: { kind: 'pass', beat: 'swing' } },
    { own: { ...ownSkip, style: 'feed', asked: 'read', beat: -1 }, told: { kind: 'feed', asked: 'read', beat: null } },
    { own: { ...ownSkip, reached: 0, share: 0, completion: 0 }, told: { reached: 0, share: 0, completion: null } },
  ] as const)('have the names of their spots and beats: $own.style', ({ own, told }) => {
    const [row] = reportScheme(matchup, tally, { ...found([], []), own: [{ from: 4, to: 0, ...own }] }).own;
    expect(row).toMatchObject({ from: 'WL', to: 'P', ...told });
  });
});

describe('what a play does against a scheme', () => {
  const report = reportScheme(matchup, tally);
  const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);

  it('is counted over all trials', () => {
    expect(report.trials).toBe(200);
    expect(report.goalsPerChance.mean).toBeCloseTo(sum(tally.goals_byTrial) / 200, 12);
    expect(report.shotsPerChance.mean).toBeCloseTo(tally.shots / 200, 12);
    expect(sum(turnoverKinds.map((kind) => report.turnovers[kind]))).toBeCloseTo(tally.losses / 200, 12);
    expect(report.back.mean).toBeCloseTo(tally.backSum / tally.losses, 12);
  });

  it('keeps its intervals round its means and its shares between 0 and 1', () => {
    for (const { mean, low, high } of [report.goalsPerChance, report.shotsPerChance, report.turnoversPerChance]) {
      expect(low).toBeLessThanOrEqual(mean);
      expect(high).toBeGreaterThanOrEqual(mean);
    }
    for (const value of [report.shotQuality, report.onTarget, report.assisted, report.back.fastBreak]) {
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThanOrEqual(1);
    }
  });

  it('says how often the play and each of its beats began, and which passes are its own', () => {
    const { begun, beats, playPasses } = report.play;
    expect(begun.mean).toBeCloseTo(tally.begun / 200, 12);
    expect(beats.map(({ id }) => id)).toEqual(matchup.play.beats.map(({ id }) => id));
    expect(beats.map(({ share }) => share)).toEqual([...tally.begun_byBeat].map((trials) => trials / 200));
    expect(playPasses).toBeCloseTo(tally.playPasses / tally.passes, 12);
    expect(reportScheme(matchup, { ...tally, passes: 0, playPasses: 0 }).play.playPasses).toBe(0);
  });

  it('orders the quartiles of the first shot, and has none without a shot', () => {
    const { q1, median, q3 } = report.firstShot!;
    expect(q1 <= median && median <= q3).toBe(true);
    expect(reportScheme(matchup, nobody).firstShot).toBeNull();
  });

  it('says 0, not nothing, of shots that never came', () => {
    const { shotQuality, onTarget, assisted, back } = reportScheme(matchup, nobody);
    expect([shotQuality, onTarget, assisted, back.mean, back.fastBreak]).toEqual([0, 0, 0, 0, 0]);
  });
});

describe('the looks of a report', () => {
  it('come best first by share times value, with the names of spots and defenders', () => {
    const looks = [look(0, 3, 0.2), look(1, 4, 0.9)];
    const { looks: rows } = reportScheme(matchup, tally, found(looks, [worth(0, 3, 0.5), worth(1, 4, 0.3)]));
    expect(rows.map(({ from, to }) => `${from}>${to}`)).toEqual(['TR>WL', 'P>WR']);
    expect(rows[0]).toMatchObject({
      value: 0.3,
      replays: 100,
      shotValue: 0.3,
      leftBy: { defender: 'lr', duty: 'split', lateBy: 0.4 },
    });
  });

  it('put those whose worth rests on few replays last, by their odds', () => {
    const looks = [look(0, 3, 0.2), look(1, 4, 0.9), look(2, 5, 0.3)];
    const few = (from: number, to: number): LookValue => ({ ...worth(from, to, 2), trials: 3 });
    const { looks: rows } = reportScheme(matchup, tally, found(looks, [few(0, 3), worth(1, 4, 0.3), few(2, 5)]));
    expect(rows.map(({ share, replays }) => [share, replays])).toEqual([
      [0.9, 100],
      [0.3, 3],
      [0.2, 3],
    ]);
  });

  it('are at most eight, and only those whose value is known', () => {
    const looks = Array.from({ length: 12 }, (_, at) => look(at % 6, (at + 1 + Math.floor(at / 6)) % 6, 0.5));
    const values = looks.slice(0, 10).map(({ from, to }) => worth(from, to, 0.3));
    expect(reportScheme(matchup, tally, found(looks, values)).looks).toHaveLength(8);
    expect(reportScheme(matchup, tally, found(looks, values.slice(0, 2))).looks).toHaveLength(2);
  });

  it('are more when the play throws them itself', () => {
    const looks = Array.from({ length: 12 }, (_, at) =>
      look(at % 6, (at + 1 + Math.floor(at / 6)) % 6, 0.5 - at / 100),
    );
    const values = looks.map(({ from, to }) => worth(from, to, 0.3));
    const last = looks.at(-1)!;
    const own = { from: last.from, to: last.to, ...ownSkip };
    const { looks: rows } = reportScheme(matchup, tally, { ...found(looks, values), own: [own] });
    expect(rows).toHaveLength(9);
    expect(rows.at(-1)!.share).toBe(last.share);
  });

  it('name nobody when the scheme leaves the man', () => {
    const [row] = reportScheme(matchup, tally, found([look(0, 3, 1, -1)], [worth(0, 3, 0.3)])).looks;
    expect(row!.leftBy).toEqual({ defender: null, duty: 'left free', lateBy: 0 });
  });

  it('name the man on the other side when the chance is mirrored', () => {
    const [row] = reportScheme(mirrorMatchup(matchup), tally, found([look(0, 3, 1)], [worth(0, 3, 0.3)])).looks;
    expect([row!.from, row!.to, row!.leftBy.defender]).toEqual(['P', 'WL', 'll']);
  });
});

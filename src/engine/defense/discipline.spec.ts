import { describe, expect, test } from 'vitest';
import { levels } from '../people/athlete.ts';
import {
  adjustDuty,
  type DutyChange,
  disciplineNames,
  disciplines,
  levelDiscipline,
  watchBallInto,
} from './discipline.ts';

function change(name: keyof typeof disciplines, late: number, wrong: number, mixed: number): DutyChange {
  const out: DutyChange = { late: -1, wrongMan: true, keepOld: true };
  adjustDuty(disciplines[name], late, wrong, mixed, out);
  return out;
}

/** Midpoints of a fine grid of [0, 1): an even sample without a generator. */
const grid = Array.from({ length: 10_000 }, (_, i) => (i + 0.5) / 10_000);

describe('discipline', () => {
  test('a faultless man is never late and never wrong, whatever is drawn', () => {
    for (const draw of [0, 0.5, 1 - 2 ** -32]) {
      expect(change('faultless', draw, draw, draw)).toEqual({ late: 0, wrongMan: false, keepOld: false });
    }
  });

  test.each(['sharp', 'ordinary', 'loose'] as const)(
    '%s: over all draws the rates are those that are named',
    (name) => {
      const all = grid.map((draw) => change(name, draw, draw, draw));
      const { late, wrongSplit, mixed } = disciplines[name];
      // The cut at four means takes e^-4 = .018 off an exponential's mean.
      expect(mean(all.map((one) => one.late)) / late).toBeCloseTo(1 - Math.exp(-4), 2);
      expect(mean(all.map((one) => Number(one.wrongMan)))).toBeCloseTo(wrongSplit, 3);
      expect(mean(all.map((one) => Number(one.keepOld)))).toBeCloseTo(mixed, 3);
      expect(Math.max(...all.map((one) => one.late))).toBeCloseTo(4 * late, 6);
    },
  );

  test('each grade is worse than the one before in every way', () => {
    for (let i = 1; i < disciplineNames.length; i++) {
      const better = disciplines[disciplineNames[i - 1]!];
      const worse = disciplines[disciplineNames[i]!];
      for (const key of ['late', 'wrongSplit', 'ballWatch', 'mixed'] as const) {
        expect(worse[key]).toBeGreaterThan(better[key]);
      }
    }
  });

  test('no level is better disciplined than an older one', () => {
    const grades = levels.map((level) => disciplineNames.indexOf(levelDiscipline[level]));
    expect([...grades].sort((a, b) => b - a)).toEqual(grades);
  });

  test('ball watching draws a man toward the ball, never past a part of the way', () => {
    const out = new Float64Array([0, 3]);
    watchBallInto(out, { late: 0, wrongSplit: 0, ballWatch: 1, mixed: 0 }, Float64Array.of(10, 13));
    expect([...out]).toEqual([3.5, 6.5]);
    watchBallInto(out, disciplines.faultless, Float64Array.of(10, 13));
    expect([...out]).toEqual([3.5, 6.5]);
  });
});

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

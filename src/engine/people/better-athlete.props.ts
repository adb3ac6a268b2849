import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toMph } from '../units.ts';
import { levels } from './athlete.ts';
import { betterAthlete, gradedSkills } from './better-athlete.ts';
import { type AthleteDescription, createAthlete, type Measured } from './create-athlete.ts';
import { levelMean, norms, type Quantity } from './levels.ts';

const share = fc.double({ min: 0.8, max: 1.25, noNaN: true });
const tries = fc.integer({ min: 1, max: 20 });
const grade = fc.double({ min: 1, max: 5, noNaN: true });

const described: fc.Arbitrary<AthleteDescription> = fc
  .record({
    level: fc.constantFrom(...levels),
    hand: fc.constantFrom('left', 'right', 'both'),
    crosse: fc.constantFrom('short', 'pole'),
    grades: fc.record(Object.fromEntries(gradedSkills.map((skill) => [skill, grade])), { requiredKeys: [] }),
    reads: fc.record({ pass: share, shot: share, sprint: share, wall: share, tries }),
    taken: fc.subarray(['sprint20yd', 'passSpeedMph', 'shotSpeedMph', 'wallBall30s', 'onGoal'] as const),
    hits: fc.integer({ min: 0, max: 50 }),
  })
  .map(({ level, reads, taken, hits, ...rest }) => {
    const wall = [8, 14, 20, 26, 33, 42, 48][levels.indexOf(level)]!;
    const all: Required<Omit<Measured, 'heightCm'>> = {
      sprint20yd: { mean: reads.sprint * 3.3, tries: reads.tries },
      passSpeedMph: { mean: reads.pass * toMph(levelMean(level, 'passSpeed')), tries: reads.tries },
      shotSpeedMph: { mean: reads.shot * toMph(levelMean(level, 'shotSpeed')), tries: reads.tries },
      wallBall30s: { mean: reads.wall * wall, tries: reads.tries },
      onGoal: { hits, shots: 50 },
    };
    return { level, ...rest, measured: Object.fromEntries(taken.map((name) => [name, all[name]])) };
  });

const graded = Object.keys(norms) as Quantity[];

describe('a better man', () => {
  it('is worse at nothing, and better at something exactly when he gains by it', () => {
    fc.assert(
      fc.property(described, fc.constantFrom(...gradedSkills), (description, skill) => {
        const before = createAthlete(description);
        const { athlete, grades } = betterAthlete(description, skill);
        const gains = graded.flatMap((quantity) =>
          quantity in before
            ? [norms[quantity].better * ((athlete as never)[quantity] - ((before as never)[quantity] as number))]
            : [],
        );
        if (skill === 'offHand') gains.push(before.offHand - athlete.offHand);
        for (const gain of gains) expect(gain).toBeGreaterThanOrEqual(-1e-12);
        expect(grades).toBeGreaterThanOrEqual(0);
        expect(grades).toBeLessThanOrEqual(1);
        // Less of a grade than this is lost in the rounding of a quantity.
        if (grades > 1e-6) expect(Math.max(...gains)).toBeGreaterThan(0);
        if (grades === 0) expect(athlete).toEqual(before);
      }),
    );
  });

  it('practises until he is the best of his level, and then gains nothing more', () => {
    fc.assert(
      fc.property(described, fc.constantFrom(...gradedSkills), ({ measured: _, ...description }, skill) => {
        const from = description.grades?.[skill] ?? 3;
        const { grades } = betterAthlete(description, skill);
        fc.pre(grades > 0);
        expect(from + grades).toBeCloseTo(Math.min(5, from + 1), 12);
        const best = { ...description, grades: { ...description.grades, [skill]: 5 } };
        expect(betterAthlete(best, skill).grades).toBe(0);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toMph } from '../units.ts';
import { levels } from './athlete.ts';
import { type AthleteDescription, createAthlete, type Grades, sprintTime } from './create-athlete.ts';
import { levelMean } from './levels.ts';
import { skillsAt } from './skills.ts';

const level = fc.constantFrom(...levels);
const grade = fc.constantFrom(1, 2, 3, 4, 5);
const grades: fc.Arbitrary<Required<Grades>> = fc.record({
  speed: grade,
  catch: grade,
  pass: grade,
  feed: grade,
  shoot: grade,
  inside: grade,
  handle: grade,
  offHand: grade,
  sense: grade,
});
const tries = fc.integer({ min: 1, max: 20 });
const short = { hand: 'right', crosse: 'short' } as const;
const usual = { feed: 3, shoot: 3, inside: 3, handle: 3, speed: 3, catch: 3, pass: 3 };

/** What each reading must be at the level's norm, and which way is better. */
const readings = {
  sprint20yd: {
    norm: (of: (typeof levels)[number]) => sprintTime(levelMean(of, 'topSpeed'), levelMean(of, 'drag')),
    better: -1,
  },
  passSpeedMph: { norm: (of: (typeof levels)[number]) => toMph(levelMean(of, 'passSpeed')), better: 1 },
  shotSpeedMph: { norm: (of: (typeof levels)[number]) => toMph(levelMean(of, 'shotSpeed')), better: 1 },
  wallBall30s: { norm: (of: (typeof levels)[number]) => [8, 14, 20, 26, 33, 42, 48][levels.indexOf(of)]!, better: 1 },
} as const;
const reading = fc.constantFrom(...(Object.keys(readings) as (keyof typeof readings)[]));

describe('skills', () => {
  it('of a graded man of the level are his grades', () => {
    fc.assert(
      fc.property(level, grades, (of, all) => {
        const { offHand: _, sense: __, ...seen } = all;
        expect(skillsAt(of, { level: of, ...short, grades: all })).toEqual(seen);
      }),
    );
  });

  it('of a man whose readings are the level’s norm are those of one without grades', () => {
    fc.assert(
      fc.property(level, reading, tries, (of, name, count) => {
        const measured = { [name]: { mean: readings[name].norm(of), tries: count } };
        const skills = skillsAt(of, { level: of, ...short, measured });
        for (const [skill, value] of Object.entries(skills)) {
          expect(value, skill).toBeCloseTo(usual[skill as keyof typeof usual], 4);
        }
      }),
    );
  });

  it('never fall by a better reading, and one of them rises', () => {
    const share = fc.double({ min: 0.75, max: 1.3, noNaN: true });
    fc.assert(
      fc.property(level, grades, reading, tries, share, share, (of, all, name, count, one, other) => {
        fc.pre(Math.abs(one - other) > 0.01);
        const skillsFor = (factor: number) => {
          const measured = { [name]: { mean: factor * readings[name].norm(of), tries: count } };
          return skillsAt(of, { level: of, ...short, grades: all, measured });
        };
        const [less, more] = (one - other) * readings[name].better < 0 ? [one, other] : [other, one];
        const [worse, better] = [skillsFor(less), skillsFor(more)];
        const gains = (Object.keys(worse) as (keyof typeof worse)[]).map((skill) => better[skill] - worse[skill]);
        for (const gain of gains) expect(gain).toBeGreaterThanOrEqual(0);
        expect(Math.max(...gains)).toBeGreaterThan(0);
      }),
    );
  });

  it('of a sprinter are those of the graded man who runs 20 yd in the same time', () => {
    fc.assert(
      fc.property(level, grade, (of, speed) => {
        const graded: AthleteDescription = { level: of, ...short, grades: { speed } };
        const { topSpeed, drag } = createAthlete(graded);
        // So many tries that the level counts for nothing beside them.
        const sprint20yd = { mean: sprintTime(topSpeed, drag), tries: 1e9 };
        expect(skillsAt(of, { level: of, ...short, measured: { sprint20yd } }).speed).toBeCloseTo(speed, 3);
      }),
    );
  });

  it('of a usual man from an older level are better than usual in a younger one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: levels.length - 2 }), (at) => {
        const skills = skillsAt(levels[at]!, { level: levels[at + 1]!, ...short });
        for (const value of Object.values(skills)) expect(value).toBeGreaterThan(3);
      }),
    );
  });
});

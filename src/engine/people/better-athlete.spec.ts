import { describe, expect, it } from 'vitest';
import { toMph } from '../units.ts';
import type { Athlete } from './athlete.ts';
import { betterAthlete, type GradedSkill, gradedSkills } from './better-athlete.ts';
import { type AthleteDescription, createAthlete, type Measured, sprintTime } from './create-athlete.ts';
import { levelMean } from './levels.ts';

const man: AthleteDescription = { level: '14U', hand: 'right', crosse: 'short' };

/** What each skill moves, from the descriptions of the grades in docs/playbook-format.md. */
const moves: Readonly<Record<GradedSkill, readonly (keyof Athlete)[]>> = {
  speed: ['topSpeed', 'drag'],
  catch: ['catching'],
  pass: ['passSpeed', 'passScatter'],
  feed: ['passScatter', 'passRelease'],
  shoot: ['shotSpeed', 'shotScatter'],
  inside: ['shotRelease'],
  handle: ['passRelease'],
  offHand: ['offHand'],
  sense: ['reaction', 'bite'],
};

function changed(one: Athlete, other: Athlete): readonly string[] {
  return (Object.keys(one) as (keyof Athlete)[]).filter((key) => one[key] !== other[key]);
}

describe('a man who is one grade better', () => {
  it.each(gradedSkills)('in %s is the man who has that grade', (skill) => {
    const grades = { [skill]: 2 };
    const { athlete, grades: gained } = betterAthlete({ ...man, grades }, skill);
    expect(gained).toBe(1);
    expect(athlete).toEqual(createAthlete({ ...man, grades: { [skill]: 3 } }));
    expect([...changed(athlete, createAthlete({ ...man, grades }))].sort()).toEqual([...moves[skill]].sort());
  });

  it.each(gradedSkills)('in %s, in which he is the best of his level, is the same man', (skill) => {
    const best = { ...man, grades: { [skill]: 5 } };
    expect(betterAthlete(best, skill)).toEqual({ athlete: createAthlete(best), grades: 0 });
  });

  it('goes as far as the best of his level and no further', () => {
    const { athlete, grades } = betterAthlete({ ...man, grades: { shoot: 4.5 } }, 'shoot');
    expect(grades).toBe(0.5);
    expect(athlete).toEqual(createAthlete({ ...man, grades: { shoot: 5 } }));
  });

  it('has no off hand to better when he plays with both', () => {
    expect(betterAthlete({ ...man, hand: 'both' }, 'offHand').grades).toBe(0);
  });
});

describe('a man who was measured', () => {
  const usualSprint = sprintTime(levelMean('14U', 'topSpeed'), levelMean('14U', 'drag'));
  /** Readings of the usual man of the level: 26 catches in 30 s and 62 of 100 on goal are the usual of create-athlete.ts. */
  const usual: Measured = {
    sprint20yd: { mean: usualSprint, tries: 5 },
    passSpeedMph: { mean: toMph(levelMean('14U', 'passSpeed')), tries: 5 },
    shotSpeedMph: { mean: toMph(levelMean('14U', 'shotSpeed')), tries: 5 },
    wallBall30s: { mean: 26, tries: 5 },
    onGoal: { hits: 62, shots: 100 },
  };

  it.each(gradedSkills)('as usual in everything gains in %s what a usual man gains', (skill) => {
    const graded = betterAthlete(man, skill);
    const measured = betterAthlete({ ...man, measured: usual }, skill);
    expect(measured.grades).toBeCloseTo(graded.grades, 6);
    for (const key of moves[skill]) expect(measured.athlete[key], key).toBeCloseTo(graded.athlete[key] as number, 6);
    const before = createAthlete({ ...man, measured: usual });
    expect([...changed(measured.athlete, before)].sort()).toEqual([...moves[skill]].sort());
  });

  it('beyond a 5 moves no more, and what was not measured of the skill still does', () => {
    const hard = { ...man, measured: { shotSpeedMph: { mean: 75, tries: 50 } } };
    const { athlete, grades } = betterAthlete(hard, 'shoot');
    expect(changed(athlete, createAthlete(hard))).toEqual(['shotScatter']);
    expect(grades).toBe(1);
    const exact = { ...hard, grades: { shoot: 5 } };
    expect(betterAthlete(exact, 'shoot')).toEqual({ athlete: createAthlete(exact), grades: 0 });
  });

  it('a little below a 5 moves up to it', () => {
    const quick = { ...man, measured: { wallBall30s: { mean: 33, tries: 1000 } } };
    const { athlete, grades } = betterAthlete(quick, 'catch');
    expect(grades).toBeGreaterThan(0);
    expect(grades).toBeLessThan(0.5);
    expect(athlete.catching).toBeCloseTo(createAthlete({ ...man, grades: { catch: 5 } }).catching, 12);
  });
});

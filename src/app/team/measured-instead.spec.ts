import { describe, expect, it } from 'vitest';
import { createAthlete } from '../../engine/index.ts';
import { demoPlaybook, type Player, toAthlete } from '../../playbook/index.ts';
import { measuredInstead } from './measured-instead.ts';
import { skillNames } from './team-words.ts';

const measurements: NonNullable<Player['measured']> = {
  sprint20ydSeconds: [3.1],
  passSpeedMph: [40],
  shotSpeedMph: [60],
  wallBallIn30s: [26],
  onGoal: { hits: 30, shots: 50 },
  heightCm: 165,
};

/** Whether any gift of the athlete moves with the grade. */
function gradeCounts(measured: Player['measured'], skill: string): boolean {
  const athlete = (grade: number) => {
    const player: Player = {
      number: 7,
      name: 'Noel',
      hand: 'left',
      grades: { [skill]: grade },
      ...(measured && { measured }),
    };
    return JSON.stringify(createAthlete(toAthlete(demoPlaybook, player)));
  };
  return athlete(1) !== athlete(5);
}

// The engine itself is the witness: the sentence must say what `createAthlete` does with the grade.
const both = { shotSpeedMph: [60], onGoal: { hits: 30, shots: 50 } };
const combinations: readonly NonNullable<Player['measured']>[] = [
  ...Object.entries(measurements).map(([name, value]) => ({ [name]: value })),
  measurements,
  both,
];
const cases = skillNames.flatMap((skill) => combinations.map((measured) => [skill, measured] as const));

describe('a grade beside a measurement', () => {
  it.each(cases)('%s with %j counts as the sentence says', (skill, measured) => {
    const player: Player = { number: 7, name: 'Noel', hand: 'left', measured };
    expect(measuredInstead(player, skill)?.extent === 'whole').toBe(!gradeCounts(measured, skill));
  });

  it('counts alone where nothing is measured', () => {
    for (const skill of skillNames)
      expect(measuredInstead({ number: 7, name: 'Noel', hand: 'left' }, skill)).toBeUndefined();
  });
});

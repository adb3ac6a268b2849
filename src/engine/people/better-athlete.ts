import type { Athlete } from './athlete.ts';
import {
  type AthleteDescription,
  createAthlete,
  type Grades,
  gradeOf,
  type Measured,
  perGrade,
} from './create-athlete.ts';
import { levelStanding, levelValue, type Quantity } from './levels.ts';
import { skillsAt } from './skills.ts';

/** One of the nine skills that a coach grades. */
export type GradedSkill = keyof Grades;

export const gradedSkills = [
  'speed',
  'catch',
  'pass',
  'feed',
  'shoot',
  'inside',
  'handle',
  'offHand',
  'sense',
] as const satisfies readonly GradedSkill[];

/** A man after practice. */
export interface BetterAthlete {
  readonly athlete: Athlete;
  /** Grades that he has gained, 0 to 1: 1 with room for it, less above a grade of 4, 0 for one who is the best of his level already. */
  readonly grades: number;
}

/**
 * The described man one grade better in one skill, or as much of a grade as leads to 5; better in nothing else.
 *
 * What is measured moves too, by what a grade is worth in the spread of his level, as long as the reading has him below a 5.
 * RangeError as of `createAthlete`.
 */
export function betterAthlete(description: AthleteDescription, skill: GradedSkill): BetterAthlete {
  const before = createAthlete(description);
  const read = readingsOf(description, skill);
  const gradeGain = isGradeHeard(description, skill) ? roomAbove(description.grades?.[skill] ?? usualGrade) : 0;
  const raised =
    gradeGain === 0 ? before : createAthlete({ ...description, grades: raisedGrades(description, skill, gradeGain) });
  const gains = read.map(({ quantity, share }) => {
    const gain = roomAbove(gradeByReading(description, before, quantity));
    const standing = levelStanding(description.level, quantity, before[quantity]) + perGrade * share * gain;
    return { gain, quantity, value: gain === 0 ? before[quantity] : levelValue(description.level, quantity, standing) };
  });
  return {
    athlete: { ...raised, ...Object.fromEntries(gains.map(({ quantity, value }) => [quantity, value])) },
    grades: Math.max(gradeGain, ...gains.map(({ gain }) => gain)),
  };
}

/** Grade of a man of whom nothing is said, as in `createAthlete`. */
const usualGrade = 3;

/** How much of one grade lies between this one and the best; 0 above it. */
function roomAbove(grade: number): number {
  return Math.min(1, Math.max(0, 5 - grade));
}

function raisedGrades({ grades }: AthleteDescription, skill: GradedSkill, gain: number): Grades {
  return { ...grades, [skill]: (grades?.[skill] ?? usualGrade) + gain };
}

/** What a reading of a man is of. */
type OwnQuantity = Quantity & keyof Athlete;

interface ReadQuantity {
  readonly reading: keyof Measured;
  readonly quantity: OwnQuantity;
  /** Share of a grade of this skill that the quantity moves by: a half where another skill counts as much for it. */
  readonly share: number;
}

/** What a skill moves and a reading can stand for. What is missing here nobody measures. */
const readQuantities: Readonly<Record<GradedSkill, readonly ReadQuantity[]>> = {
  // A start that is not told from the sprint moves with it, as it does for a graded man.
  speed: [
    { reading: 'sprint20yd', quantity: 'topSpeed', share: 1 },
    { reading: 'sprint20yd', quantity: 'drag', share: 1 },
  ],
  catch: [{ reading: 'wallBall30s', quantity: 'catching', share: 1 }],
  pass: [{ reading: 'passSpeedMph', quantity: 'passSpeed', share: 1 }],
  feed: [{ reading: 'wallBall30s', quantity: 'passRelease', share: 0.5 }],
  shoot: [
    { reading: 'shotSpeedMph', quantity: 'shotSpeed', share: 1 },
    { reading: 'onGoal', quantity: 'shotScatter', share: 1 },
  ],
  inside: [],
  handle: [{ reading: 'wallBall30s', quantity: 'passRelease', share: 0.5 }],
  offHand: [],
  sense: [],
};

function readingsOf({ measured = {} }: AthleteDescription, skill: GradedSkill): readonly ReadQuantity[] {
  return readQuantities[skill].filter(({ reading }) => measured[reading] !== undefined);
}

/** Whether his grade still counts for anything beside his readings and his hand. */
function isGradeHeard(description: AthleteDescription, skill: GradedSkill): boolean {
  if (skill === 'offHand') return description.hand !== 'both';
  const { measured = {} } = description;
  switch (skill) {
    case 'speed':
      return measured.sprint20yd === undefined;
    case 'catch':
    case 'handle':
      return measured.wallBall30s === undefined;
    case 'shoot':
      return measured.shotSpeedMph === undefined || measured.onGoal === undefined;
    // Of the others no reading tells everything: aim for passes, and nothing of the rest.
    case 'pass':
    case 'feed':
    case 'inside':
    case 'sense':
      return true;
    default:
      throw new TypeError(`unknown skill: ${skill satisfies never}`);
  }
}

/** The time of a sprint is what top speed and start have in common, so that its grade is that of both. */
function gradeByReading(description: AthleteDescription, athlete: Athlete, quantity: OwnQuantity): number {
  const { level } = description;
  if (quantity === 'topSpeed' || quantity === 'drag') return skillsAt(level, description).speed;
  return gradeOf(levelStanding(level, quantity, athlete[quantity]));
}

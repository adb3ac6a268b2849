import type { Athlete, Level } from './athlete.ts';
import { type AthleteDescription, createAthlete, gradeOf, sprintTime } from './create-athlete.ts';
import { levelMean, levelStanding, levelValue, type Quantity } from './levels.ts';

/**
 * What a man can do, on the scale of a coach's grades: 3 is usual at a level, 1 the weakest and 5 the best of it. Readings, and a
 * level of his own above or below that one, may put him beyond either end.
 */
export interface Skills {
  readonly feed: number;
  readonly shoot: number;
  readonly inside: number;
  readonly handle: number;
  readonly speed: number;
  readonly catch: number;
  readonly pass: number;
}

/**
 * A described man's skills among the men of a level.
 *
 * They are read off the athlete that `createAthlete` makes of him, so that readings count here as far as they do in the simulation, and a
 * graded and a measured man are held against each other on one scale. Graded men of the level come out with their grades.
 * What one grade moves together with others is read off the man who has it in all of them: else his feeding would speak for his handling.
 * RangeError as of `createAthlete`.
 */
export function skillsAt(level: Level, description: AthleteDescription): Skills {
  const athlete = createAthlete(description);
  const { grades = {} } = description;
  const likeAll = (grade: number | undefined): Athlete =>
    grade === undefined
      ? createAthlete({ ...description, grades: {} })
      : createAthlete({ ...description, grades: { pass: grade, feed: grade, handle: grade } });
  const feeder = likeAll(grades.feed);
  return {
    feed: meanGrade(level, feeder, 'passScatter', 'passRelease'),
    shoot: meanGrade(level, athlete, 'shotSpeed', 'shotScatter'),
    inside: meanGrade(level, athlete, 'shotRelease'),
    handle: meanGrade(level, likeAll(grades.handle), 'passRelease'),
    speed: exactly(gradeOf(runningStanding(level, athlete))),
    catch: meanGrade(level, athlete, 'catching'),
    pass: meanGrade(level, athlete, 'passSpeed'),
  };
}

/** Quantities of a level that an athlete has by the same name. */
type OwnQuantity = Quantity & keyof Athlete;

function meanGrade(level: Level, athlete: Athlete, ...quantities: readonly OwnQuantity[]): number {
  const sum = quantities.reduce((all, quantity) => all + levelStanding(level, quantity, athlete[quantity]), 0);
  return exactly(gradeOf(sum / quantities.length));
}

/** Standard deviations beyond which nobody of any level stands. */
const farthest = 10;

/**
 * Where the man stands who runs 20 yd in the same time: a grade of speed moves start and top speed, a sprint the top speed alone, and
 * the time is what both have in common. By halving; times fall as the standing rises.
 */
function runningStanding(level: Level, { topSpeed, drag }: Athlete): number {
  if (topSpeed === levelMean(level, 'topSpeed') && drag === levelMean(level, 'drag')) return 0;
  const time = sprintTime(topSpeed, drag);
  let [low, high] = [-farthest, farthest];
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (sprintTime(levelValue(level, 'topSpeed', middle), levelValue(level, 'drag', middle)) > time) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Without the last bits that the way there and back costs: a grade of 5 comes out as 5. */
function exactly(grade: number): number {
  return Math.round(grade * 1e6) / 1e6;
}

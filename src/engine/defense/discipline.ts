import type { Level } from '../people/athlete.ts';
import type { Discipline } from './scheme.ts';

/** What one change of duty costs a man: written by `adjustDuty`. */
export interface DutyChange {
  /** Extra delay before he takes the new duty, s. */
  late: number;
  /** He takes the wrong man of a pair. */
  wrongMan: boolean;
  /** He keeps his old duty as if nothing was called. */
  keepOld: boolean;
}

/** A lapse is never longer than this many times the mean: after that he has seen it. */
const longestLapse = 4;

/**
 * Decide from three uniform draws of [0, 1) how a man of this discipline takes a new duty.
 *
 * The delay is exponential with mean `late`, cut at four times the mean, so that most changes are nearly on time and a few are very late.
 */
export function adjustDuty(
  discipline: Discipline,
  lateDraw: number,
  wrongDraw: number,
  mixedDraw: number,
  out: DutyChange,
): void {
  // Adding zero turns the -0 of a draw of zero into 0.
  out.late = discipline.late * Math.min(longestLapse, -Math.log(1 - lateDraw)) + 0;
  out.wrongMan = wrongDraw < discipline.wrongSplit;
  out.keepOld = mixedDraw < discipline.mixed;
}

/** A man who watches nothing but the ball is drawn this share of the way from his place to it (common practice, no source). */
const ballWatchPull = 0.35;

/** Draw the target in `out` toward the ball by how much this man watches it. */
export function watchBallInto(out: Float64Array, discipline: Discipline, ball: Float64Array): void {
  const share = ballWatchPull * discipline.ballWatch;
  out[0] += share * (ball[0] - out[0]);
  out[1] += share * (ball[1] - out[1]);
}

export const disciplineNames = ['faultless', 'sharp', 'ordinary', 'loose'] as const;
export type DisciplineName = (typeof disciplineNames)[number];

/** How well a unit plays its scheme, in four grades (common practice, no source). */
export const disciplines: Readonly<Record<DisciplineName, Discipline>> = {
  faultless: { late: 0, wrongSplit: 0, ballWatch: 0, mixed: 0 },
  sharp: { late: 0.05, wrongSplit: 0.02, ballWatch: 0.05, mixed: 0.01 },
  ordinary: { late: 0.15, wrongSplit: 0.07, ballWatch: 0.15, mixed: 0.03 },
  loose: { late: 0.35, wrongSplit: 0.18, ballWatch: 0.35, mixed: 0.1 },
};

/** What to expect of a level when nobody says otherwise (common practice, no source). */
export const levelDiscipline: Readonly<Record<Level, DisciplineName>> = {
  '8U': 'loose',
  '10U': 'loose',
  '12U': 'loose',
  '14U': 'ordinary',
  highSchool: 'ordinary',
  college: 'sharp',
  pro: 'sharp',
};

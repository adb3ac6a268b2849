/*
 * Man-up timing of a men's pro field league, 2011 to 2015: 231 games of event logs (github.com/octonion/lacrosse, folder mll/xml,
 * commit 679c409), computed from them for this project. A penalty counts if no other falls within 60 s before it or during it, it
 * ends inside the period and no goal falls in the second of the whistle. The window runs from 2 s after the whistle to the
 * penalty's end; clocks are the scorekeepers', a few seconds wrong. Facts only; the logs are not in this repository.
 */

/** One number as published, with its 95 % interval where one was computed. */
export interface Published {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

export interface ProColumn {
  /** Seconds of penalty, and how many penalties the column rests on. */
  readonly seconds: number;
  readonly penalties: number;
  readonly conversion: Published;
  readonly shotsPerChance: Published;
  readonly anyShot: Published;
  readonly shooting: Published;
  readonly saves: Published;
  readonly onTarget: Published;
  readonly firstShot: { readonly q1: number; readonly median: number; readonly q3: number };
  readonly goalTime: { readonly mean: number; readonly median: number };
  readonly firstShotGoal: Published;
  readonly laterShotGoal: Published;
  readonly assistedGoals: Published;
  readonly groundBallBeforeShot: Published;
}

export const sixtySeconds: ProColumn = {
  seconds: 60,
  penalties: 523,
  conversion: { value: 0.363, low: 0.323, high: 0.405 },
  shotsPerChance: { value: 1.16 },
  anyShot: { value: 0.782 },
  shooting: { value: 0.313, low: 0.277, high: 0.351 },
  saves: { value: 0.495 },
  onTarget: { value: 0.619 },
  firstShot: { q1: 16, median: 23, q3: 30 },
  goalTime: { mean: 29, median: 26 },
  firstShotGoal: { value: 0.328 },
  laterShotGoal: { value: 0.283, low: 0.225, high: 0.349 },
  assistedGoals: { value: 0.847 },
  groundBallBeforeShot: { value: 0.075 },
};

export const thirtySeconds: ProColumn = {
  seconds: 30,
  penalties: 511,
  conversion: { value: 0.262, low: 0.226, high: 0.302 },
  shotsPerChance: { value: 0.81 },
  anyShot: { value: 0.695 },
  shooting: { value: 0.324, low: 0.281, high: 0.371 },
  saves: { value: 0.506 },
  onTarget: { value: 0.656 },
  firstShot: { q1: 12, median: 18, q3: 23 },
  goalTime: { mean: 18, median: 18 },
  firstShotGoal: { value: 0.318 },
  laterShotGoal: { value: 0.362, low: 0.251, high: 0.491 },
  assistedGoals: { value: 0.821 },
  groundBallBeforeShot: { value: 0.049 },
};

/** Both columns together (1034 penalties). */
export const pooled = {
  assistedGoals: { value: 0.836, low: 0.792, high: 0.873 },
  firstShotGoal: { value: 0.323, low: 0.291, high: 0.357 },
  laterShotGoal: { value: 0.301, low: 0.248, high: 0.36 },
} as const satisfies Record<string, Published>;

/** Shots and goals per second in 60 s penalties that are still alive, in bins of 5 s from the whistle on. */
export const hazard: readonly { readonly shots: number; readonly goals: number }[] = [
  { shots: 0.01, goals: 0.001 },
  { shots: 0.009, goals: 0.002 },
  { shots: 0.015, goals: 0.007 },
  { shots: 0.027, goals: 0.01 },
  { shots: 0.048, goals: 0.018 },
  { shots: 0.037, goals: 0.01 },
  { shots: 0.026, goals: 0.005 },
  { shots: 0.028, goals: 0.011 },
  { shots: 0.027, goals: 0.009 },
  { shots: 0.019, goals: 0.009 },
  { shots: 0.018, goals: 0.003 },
  { shots: 0.016, goals: 0.004 },
];

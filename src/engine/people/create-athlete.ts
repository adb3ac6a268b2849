import { normalQuantile } from '../statistics/normal-quantile.ts';
import { centimetres, mph } from '../units.ts';
import { type Athlete, type Crosse, type Hand, type Keeper, type Level, levels } from './athlete.ts';
import { crosseLengths, levelMean, levelValue, norms, stickReachOf } from './levels.ts';
import { arrivalTime } from './reach.ts';

/** A coach's grades: 1 weakest of the level, 3 usual (also when absent), 5 best; parts between are allowed. */
export interface Grades {
  /** Top speed and start. */
  readonly speed?: number;
  readonly catch?: number;
  /** Speed and accuracy of passes. */
  readonly pass?: number;
  /** Accuracy and quickness of passes. */
  readonly feed?: number;
  /** Speed and accuracy of shots. */
  readonly shoot?: number;
  /** Quickness from catch to shot. */
  readonly inside?: number;
  /** Quickness from catch to pass. */
  readonly handle?: number;
  readonly offHand?: number;
  /** Reads the game: reacts sooner, bites on fewer fakes. */
  readonly sense?: number;
}

/** The mean of some tries. */
export interface Sample {
  readonly mean: number;
  readonly tries: number;
}

/** Measurements in the units in which coaches take them; each overrides the grade of what it measures. */
export interface Measured {
  /** 20 yd from a standing start, electronic or hand clock, s. */
  readonly sprint20yd?: Sample;
  readonly passSpeedMph?: Sample;
  readonly shotSpeedMph?: Sample;
  /** Catches off a wall in 30 s. */
  readonly wallBall30s?: Sample;
  /** Shots with time and room: how many were on goal. */
  readonly onGoal?: { readonly hits: number; readonly shots: number };
  readonly heightCm?: number;
}

export interface AthleteDescription {
  readonly level: Level;
  readonly hand: Hand;
  readonly crosse: Crosse;
  readonly grades?: Grades;
  readonly measured?: Measured;
}

export interface KeeperDescription {
  readonly level: Level;
  readonly hand?: Hand;
  /** 1 to 5 on everything that a keeper does; 3 when absent. */
  readonly grade?: number;
  readonly heightCm?: number;
}

/**
 * The athlete that a level, grades and measurements describe.
 *
 * A grade moves him inside his level's spread: 1 and 5 are 1.6 standard deviations below and above the mean, where about
 * one in eighteen stands. A measurement replaces the grade by the best guess from the tries and the level together:
 * with tries of noise s and a level of spread S, the level counts as much as s^2 / S^2 further tries at its mean.
 * RangeError for a grade outside 1 to 5, a sample without tries, or a number that nobody can have measured.
 */
export function createAthlete(description: AthleteDescription): Athlete {
  const { level, hand, crosse } = description;
  const grades = description.grades ?? {};
  const measured = description.measured ?? {};
  const z = (...keys: readonly (keyof Grades)[]) => standing(grades, keys);
  const { topSpeed, drag } = running(level, z('speed'), measured.sprint20yd);
  const wall = wallBallStanding(level, measured.wallBall30s);
  return {
    hand,
    crosse,
    topSpeed,
    drag,
    reaction: levelValue(level, 'reaction', z('sense')),
    stickReach: stickReachOf(heightOf(level, measured.heightCm), crosseLengths[crosse][levels.indexOf(level)]!),
    passSpeed: speedOf(level, 'passSpeed', z('pass'), measured.passSpeedMph),
    passScatter: levelValue(level, 'passScatter', z('pass', 'feed')),
    passRelease: levelValue(level, 'passRelease', wall ?? z('feed', 'handle')),
    catching: levelValue(level, 'catching', wall ?? z('catch')),
    shotSpeed: speedOf(level, 'shotSpeed', z('shoot'), measured.shotSpeedMph),
    shotScatter: shotScatterOf(level, z('shoot'), measured.onGoal),
    shotRelease: levelValue(level, 'shotRelease', z('inside')),
    offHand: hand === 'both' ? 1 : 1 + levelValue(level, 'offHandLoss', z('offHand')),
    bite: levelValue(level, 'bite', z('sense')),
  };
}

/** The goalkeeper of a level; he shuffles along his arc rather than sprints. */
export function createKeeper(description: KeeperDescription): Keeper {
  const { level, heightCm } = description;
  const grade = description.grade ?? usualGrade;
  const z = standing({ speed: grade }, ['speed']);
  const field = createAthlete({
    level,
    hand: description.hand ?? 'right',
    crosse: 'goalkeeper',
    ...(heightCm === undefined ? {} : { measured: { heightCm } }),
  });
  return {
    ...field,
    topSpeed: levelValue(level, 'shuffleSpeed', z),
    drag: levelValue(level, 'shuffleDrag', z),
    reaction: levelValue(level, 'reaction', z),
    bodyReach: levelValue(level, 'bodyReach', z),
    handSpeed: levelValue(level, 'handSpeed', z),
    shotReaction: levelValue(level, 'shotReaction', z),
  };
}

const usualGrade = 3;

/** Standard deviations per grade: 5 is +1.6. */
export const perGrade = 0.8;

/** The grade of who stands so many standard deviations on the good side of his level's mean. */
export function gradeOf(standardDeviations: number): number {
  return usualGrade + standardDeviations / perGrade;
}

/** Where the mean of these grades stands, in standard deviations. */
function standing(grades: Grades, keys: readonly (keyof Grades)[]): number {
  let sum = 0;
  for (const key of keys) {
    const grade = grades[key] ?? usualGrade;
    if (!(grade >= 1 && grade <= 5)) throw new RangeError(`invalid grade of ${key}: ${grade} (expected 1 to 5)`);
    sum += grade - usualGrade;
  }
  return (perGrade * sum) / keys.length;
}

/**
 * The best guess of a player's value: normal tries around it, normal players around the level's mean.
 *
 * `noise` and the level's spread are shares of the mean, so that the guess keeps the unit of the sample.
 */
function shrunk(sample: Sample, mean: number, spread: number, noise: number): number {
  const { tries } = sample;
  if (!(Number.isFinite(tries) && tries > 0)) throw new RangeError(`invalid tries: ${tries} (expected more than 0)`);
  if (!(sample.mean > 0.3 * mean && sample.mean < 3 * mean)) {
    throw new RangeError(`invalid measurement: ${sample.mean} (the level's mean is ${mean})`);
  }
  const pseudoTries = (noise / spread) ** 2;
  return (tries * sample.mean + pseudoTries * mean) / (tries + pseudoTries);
}

/** One try against the next of the same man, as a share: stopwatch and gates 3 %, radar 6 %, wall ball 12 %. From memory. */
const tryNoise = { sprint: 0.03, radar: 0.06, wallBall: 0.12 } as const;

function speedOf(level: Level, quantity: 'passSpeed' | 'shotSpeed', z: number, sample: Sample | undefined): number {
  if (sample === undefined) return levelValue(level, quantity, z);
  const inYards = { mean: mph(sample.mean), tries: sample.tries };
  return shrunk(inYards, levelMean(level, quantity), norms[quantity].spread, tryNoise.radar);
}

/** Clocks of a sprint start at the first move or at a gate ahead of it; the model starts from rest. From memory, .2 to .3 s. */
export const sprintLead = 0.25;

/** Top speed and drag. A sprint moves the top speed; where along the 20 yd the time was won is not in one number. */
function running(level: Level, z: number, sprint: Sample | undefined): { topSpeed: number; drag: number } {
  if (sprint === undefined) {
    return { topSpeed: levelValue(level, 'topSpeed', z), drag: levelValue(level, 'drag', z) };
  }
  const drag = levelMean(level, 'drag');
  const usual = sprintTime(levelMean(level, 'topSpeed'), drag);
  const time = shrunk(sprint, usual, norms.topSpeed.spread, tryNoise.sprint);
  return { topSpeed: topSpeedFor(time, drag), drag };
}

/** What a clock shows for 20 yd from a standing start, s. */
export function sprintTime(topSpeed: number, drag: number): number {
  return arrivalTime(topSpeed, drag, 0, 0, 0, 0, 20, 0, 0) - sprintLead;
}

/** The top speed with which 20 yd take `time` s, by halving; times fall as speed rises. */
function topSpeedFor(time: number, drag: number): number {
  let [slow, fast] = [1, 30];
  for (let round = 0; round < 60; round++) {
    const middle = (slow + fast) / 2;
    if (sprintTime(middle, drag) > time) slow = middle;
    else fast = middle;
  }
  return (slow + fast) / 2;
}

function heightOf(level: Level, heightCm: number | undefined): number {
  if (heightCm === undefined) return levelMean(level, 'height');
  if (!(heightCm >= 90 && heightCm <= 230)) throw new RangeError(`invalid height: ${heightCm} cm (expected 90 to 230)`);
  return centimetres(heightCm);
}

/** Catches in 30 s that are usual at each level, and their spread inside it. Common practice, no source. */
const wallBallMeans = [8, 14, 20, 26, 33, 42, 48];
const wallBallSpread = 0.18;

/** Where a wall ball count puts a man, in standard deviations; undefined when there is none. */
function wallBallStanding(level: Level, sample: Sample | undefined): number | undefined {
  if (sample === undefined) return undefined;
  const mean = wallBallMeans[levels.indexOf(level)]!;
  return (shrunk(sample, mean, wallBallSpread, tryNoise.wallBall) / mean - 1) / wallBallSpread;
}

/** Share of shots on goal that belongs to the usual scatter: .619 of pro shots (231 games, 2011 to 2015). */
const usualOnGoal = 0.62;

/** Weight of that share, in shots: beta-binomial shrinkage. Assumption; conversion of whole teams takes 33 to 52. */
const onGoalWeight = 40;

/**
 * Scatter from a shot chart. A shot at a margin m inside both of its pipes is on goal with odds Phi(m / s)^2, so the scatter
 * goes as 1 over the quantile of the root of that share; the margin cancels against the usual man's.
 */
function shotScatterOf(level: Level, z: number, chart: Measured['onGoal']): number {
  if (chart === undefined) return levelValue(level, 'shotScatter', z);
  const { hits, shots } = chart;
  if (!(hits >= 0 && hits <= shots && shots < Infinity)) {
    throw new RangeError(`invalid shot chart: ${hits} of ${shots} (expected hits from 0 to shots)`);
  }
  const share = (hits + onGoalWeight * usualOnGoal) / (shots + onGoalWeight);
  const usual = normalQuantile(Math.sqrt(usualOnGoal));
  // A chart of nothing but misses would ask for an infinite scatter: three times the usual is as wild as anybody gets.
  const seen = Math.max(normalQuantile(Math.sqrt(share)), usual / 3);
  return (levelMean(level, 'shotScatter') * usual) / seen;
}

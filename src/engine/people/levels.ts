import { centimetres, inches, metres, mph } from '../units.ts';
import { type Level, levels } from './athlete.ts';

/**
 * What is usual at each level, and how far players of one level differ.
 *
 * Means stand in the order of `levels`: 8U, 10U, 12U, 14U, high school, college, pro; yards, seconds, radians, shares.
 * `spread` is one standard deviation inside a level: as a share of the mean for `ratio` quantities, on the log-odds scale
 * for `odds` quantities. `better` says whether more (+1) or less (-1) is the better player. Numbers without a measured
 * source say so; docs/models/people.md holds them against measurements.
 */
export interface Norm {
  readonly means: readonly number[];
  readonly scale: 'ratio' | 'odds';
  readonly spread: number;
  readonly better: 1 | -1;
}

/** The mean of a quantity at a level. */
export function levelMean(level: Level, quantity: Quantity): number {
  return norms[quantity].means[levels.indexOf(level)]!;
}

/**
 * The value of a player who stands `z` standard deviations on the good side of his level's mean.
 *
 * Odds stay between 0 and 1 (excluded); ratios stay above 0 for z within +-1.6, the range of the grades.
 */
export function levelValue(level: Level, quantity: Quantity, z: number): number {
  const { scale, spread, better } = norms[quantity];
  const mean = levelMean(level, quantity);
  const shift = better * z * spread;
  if (scale === 'ratio') return mean * (1 + shift);
  return 1 / (1 + ((1 - mean) / mean) * Math.exp(-shift));
}

/** Where a value of a quantity stands at a level: standard deviations on the good side of the mean. `levelValue` the other way round. */
export function levelStanding(level: Level, quantity: Quantity, value: number): number {
  const { scale, spread, better } = norms[quantity];
  const mean = levelMean(level, quantity);
  const shift = scale === 'ratio' ? value / mean - 1 : Math.log((value / (1 - value)) * ((1 - mean) / mean));
  return (better * shift) / spread;
}

/** Factor and unit in one: `each(metres, [...])`. */
function each(unit: (value: number) => number, values: readonly number[]): readonly number[] {
  return values.map(unit);
}

const plain = (value: number) => value;

export const norms = {
  /**
   * Top speed V with stick and pads, m/s. 12U to high school from lacrosse combine medians over 20 yd, 3.52, 3.25, 3.03 and
   * 2.91 s (148 boys, thedynamicathlete.ca 2013-10-18, ages inferred), with .25 s added because such clocks start after
   * the first move; averaged with open-field top speeds by age, less 5 to 10 % for stick and pads (from memory). College:
   * 40 yd in 5.0 s for recreational college men (shotonmac.com test norms). 8U, 10U and pro from memory. Spread: best of about 45 boys
   * lies 10 to 15 % under the median time, which is 2.2 sd.
   */
  topSpeed: { means: each(metres, [4.9, 5.6, 6.3, 6.9, 7.6, 8.1, 8.4]), scale: 'ratio', spread: 0.055, better: 1 },
  /**
   * Drag a, 1/s. Between the .893 that starting accelerations of 17-year-old footballers give (Sonderegger et al. 2016,
   * PLoS ONE 0166534: 6.01, 4.33, 3.20 and 2.29 m/s2 at 0, 6, 10.8 and 15 km/h) and the 1.3 of grown field-hockey players
   * (Fujimura and Sugihara 2005, doi 10.1002/scj.20254). Growth with age: assumption.
   */
  drag: { means: each(plain, [1, 1, 1.05, 1.1, 1.1, 1.2, 1.25]), scale: 'ratio', spread: 0.06, better: 1 },
  /**
   * Reaction to another's move, s. Grown men choosing one of two: .28 to .35 (from memory); slowed for age by
   * 1 + 5.16 e^(-.21 age) over its value at 20 (Kail 1991; constants from memory; Hale 1990 measured 1.8 at 10, 1.5 at 12
   * and 1.0 at 15 years). Spread from memory.
   */
  reaction: { means: each(plain, [0.6, 0.53, 0.47, 0.42, 0.36, 0.31, 0.28]), scale: 'ratio', spread: 0.12, better: -1 },
  /**
   * Standing height, cm. CDC 2000 growth charts, boys, medians at 10, 12, 14, 16 and 18 years and spread (P95 - P5) / 3.29;
   * 8 years and pro from memory.
   */
  height: { means: each(centimetres, [128, 139, 149, 164, 174, 176, 181]), scale: 'ratio', spread: 0.048, better: 1 },
  /**
   * Firm pass, m/s. 20 to 27 college, 15 to 20 high school, 11 to 15 at 12 to 14 years for a hard pass or skip
   * (from memory); a firm adjacent pass in the lower half of that. Younger and pro: assumption. Spread: assumption.
   */
  passSpeed: { means: each(metres, [8.5, 10, 12, 14, 17.5, 21.5, 23.5]), scale: 'ratio', spread: 0.1, better: 1 },
  /**
   * Direction error of a pass, rad (sd). Common practice, no source: a college pass is on the stick at 12 yd, one at 12U is within
   * a step of it. That scatter grows with speed and shrinks with skill is measured (Tomioka et al. 2025,
   * doi 10.3390/jfmk11010008), its size at 11 m is not in the abstract.
   */
  passScatter: {
    means: each(plain, [0.11, 0.085, 0.06, 0.045, 0.032, 0.022, 0.018]),
    scale: 'ratio',
    spread: 0.25,
    better: -1,
  },
  /** Catch to release of a hurried pass, s. Quick stick .25 to .4, step-down .5 to .9 (from memory); by level: assumption. */
  passRelease: { means: each(plain, [1.4, 1.1, 0.85, 0.65, 0.5, 0.4, 0.35]), scale: 'ratio', spread: 0.18, better: -1 },
  /**
   * Odds that an accurate, unhurried adjacent pass is caught. 97, 93 and 85 % at college, high school and under 14 (common
   * practice, no source). Skilled boys of 11 and 12 complete 84 % of cross-field passes (US Lacrosse Magazine, Nov 2016, p. 40), boys
   * of 8.5 years 47 % on a full field and 22 % on a small one (LADM field-size study, MSSE abstract): those count bad
   * passes too. Spread: assumption.
   */
  catching: { means: each(plain, [0.55, 0.7, 0.82, 0.88, 0.93, 0.97, 0.993]), scale: 'odds', spread: 0.5, better: 1 },
  /**
   * Set shot, mph. Pro 86 +- 4 (138 +- 7 km/h, n = 6) and high school and college together 70 +- 9 (112 +- 15 km/h, n = 33) in
   * the laboratory, overhand (Vincent et al. 2015, doi 10.1080/14763141.2015.1084034); college mean about 80, high school 60 to
   * 70 (thetravelstep.com). 10U 30 to 40, 12U 40 to 50, 14U 50 to 60 (coach lore, from memory). 8U: assumption.
   */
  shotSpeed: { means: each(mph, [26, 34, 43, 53, 66, 78, 86]), scale: 'ratio', spread: 0.09, better: 1 },
  /**
   * Direction error of a shot with time and room, rad (sd, each axis). .619 of all pro shots are on target (231 games, 2011 to
   * 2015); aimed .25 m inside the pipes from 9 m that is .034, rushed shots included. Third-division women miss by
   * 15 cm at 17 m/s (dialnet 4659540), distance not stated. By level: assumption, such that clean shots hit the goal about as
   * often at every level: shares on goal differ little (.58 to .65 from college to pro).
   */
  shotScatter: {
    means: each(plain, [0.06, 0.054, 0.046, 0.04, 0.033, 0.028, 0.026]),
    scale: 'ratio',
    spread: 0.2,
    better: -1,
  },
  /** Catch to release of a shot with the feet set, s. Step-down .5 to .9, quick stick .25 to .4 (from memory); by level: assumption. */
  shotRelease: {
    means: each(plain, [1.25, 1.05, 0.85, 0.7, 0.58, 0.5, 0.45]),
    scale: 'ratio',
    spread: 0.15,
    better: -1,
  },
  /** Scatter with the off hand over scatter with the strong one, less 1. Assumption, no source. */
  offHandLoss: { means: each(plain, [1.6, 1.4, 1.1, 0.8, 0.5, 0.25, 0.15]), scale: 'ratio', spread: 0.4, better: -1 },
  /**
   * Odds that he goes the wrong way on a good fake. Australian footballers, fake against none: right first step 83 against
   * 94 %, 88 against 78 for the better and the lesser level (Henry et al. 2013, JSCR 27:3190). Under 18: assumption.
   */
  bite: { means: each(plain, [0.5, 0.42, 0.34, 0.28, 0.22, 0.15, 0.12]), scale: 'odds', spread: 0.4, better: -1 },
  /**
   * Keeper's first move after he saw the release, s. .18 to .20 from ball to goal can be saved (laxgoaltending.com, coach
   * timing); grown men's simple reaction .213 (Woods et al. 2015, PMC4374455), less what he reads before the release; slowed
   * for age as `reaction`.
   */
  shotReaction: {
    means: each(plain, [0.33, 0.29, 0.26, 0.22, 0.19, 0.17, 0.16]),
    scale: 'ratio',
    spread: 0.12,
    better: -1,
  },
  /**
   * Radius that keeper and stick cover without moving, yd, by size: .55 for a grown man (half a shoulder and a head 10 to 12 in wide beside it; common
   * practice, no source). Boys stand smaller in the same goal.
   */
  bodyReach: {
    means: each(plain, [0.33, 0.36, 0.4, 0.45, 0.51, 0.545, 0.55]),
    scale: 'ratio',
    spread: 0.05,
    better: 1,
  },
  /**
   * Speed at which that radius grows, m/s. Grown men: hands cross 1.1 m in the .25 s of a handball reflex save (assumption, no source).
   * Younger: set so that keepers save about as large a share as grown ones do: .55 of shots on goal at 8.5 years on a full
   * field (LADM field-size study), about .5 to .6 at high school (from memory), .50 at college (72 teams).
   */
  handSpeed: { means: each(metres, [1.1, 1.3, 1.6, 2, 2.9, 4, 4.6]), scale: 'ratio', spread: 0.1, better: 1 },
  /**
   * Keeper's shuffle along his arc, m/s and 1/s: quick off the mark and slow. With the college pair he moves a yard in .40 s; a good
   * keeper goes from crease to crease in under .40 s (laxgoaltending.com, coach timing). Younger: assumption.
   */
  shuffleSpeed: { means: each(metres, [3.2, 3.6, 4, 4.4, 4.8, 5.2, 5.4]), scale: 'ratio', spread: 0.06, better: 1 },
  shuffleDrag: { means: each(plain, [2.4, 2.5, 2.6, 2.8, 3, 3.2, 3.3]), scale: 'ratio', spread: 0.06, better: 1 },
} as const satisfies Record<string, Norm>;

export type Quantity = keyof typeof norms;

/**
 * Usual crosses by level, in inches. Short 37 to 42 at 10U, 40 to 42 above; pole 47 to 54 at 10U (aloapgh.org), up to 60 at
 * 12U (nipmuclax.com, a local rule), 52 to 72 above (ptboyslax.com, yvlacrosse.com); no pole at 8U. Goalkeeper 40 to 72
 * (nipmuclax.com); 52 from high school on is common practice, no source.
 */
export const crosseLengths = {
  short: each(inches, [37, 37, 42, 42, 42, 42, 42]),
  pole: each(inches, [37, 52, 60, 72, 72, 72, 72]),
  goalkeeper: each(inches, [40, 40, 46, 50, 52, 52, 52]),
} as const;

/**
 * Distance from the body's middle at which a crosse of this length, held by the butt in one hand, can touch the ball, yd.
 *
 * Shoulder to grip .38 of the height (Pheasant, British men: 665 mm) and half the shoulders .116 of it, and .10 m of the
 * crosse lost in the hand. Feet still; the outer half yard is low odds, which is the lane model's business.
 */
export function stickReachOf(height: number, crosse: number): number {
  return 0.496 * height + crosse - metres(0.1);
}
